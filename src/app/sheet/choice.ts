import type { UnitStyle } from '../../job/job.ts';
import type { PaperName, Turn } from '../../sheet/papers.ts';

/** What the sheet is printed on. `scale` by name; null: the largest that fits. */
export interface SheetChoice {
  readonly paper: PaperName;
  readonly turn: Turn;
  readonly scale: string | null;
}

export function firstChoice(units: UnitStyle): SheetChoice {
  return { paper: units === 'metric' ? 'a4' : 'letter', turn: 'sideways', scale: null };
}
