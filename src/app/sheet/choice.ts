import type { UnitStyle } from '../../job/job.ts';
import type { PaperName, Turn } from '../../sheet/papers.ts';

/** What the sheet is printed on. Turn and scale: null for what fits largest; a scale by its name. */
export interface SheetChoice {
  readonly paper: PaperName;
  readonly turn: Turn | null;
  readonly scale: string | null;
}

export function firstChoice(units: UnitStyle): SheetChoice {
  return { paper: units === 'metric' ? 'a4' : 'letter', turn: null, scale: null };
}
