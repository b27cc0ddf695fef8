import type { UnitStyle } from '../job/job.ts';
import type { Rect } from './page.ts';

/** Inches in mm, exact. */
const INCH_MM = 25.4;

export type PaperName = 'letter' | 'tabloid' | 'a4' | 'a3';
export type Turn = 'upright' | 'sideways';

interface Paper {
  /** Upright, mm. */
  readonly width: number;
  readonly height: number;
}

/** US Letter and Tabloid (ANSI A and B), ISO 216 A4 and A3. */
export const PAPERS: Readonly<Record<PaperName, Paper>> = {
  letter: { width: 8.5 * INCH_MM, height: 11 * INCH_MM },
  tabloid: { width: 11 * INCH_MM, height: 17 * INCH_MM },
  a4: { width: 210, height: 297 },
  a3: { width: 297, height: 420 },
};

export const PAPER_NAMES = Object.keys(PAPERS) as readonly PaperName[];
export const TURNS: readonly Turn[] = ['upright', 'sideways'];

/** Half an inch all round: what every printer can do, and room for a clip. */
export const MARGIN = INCH_MM / 2;

export function paperSize(name: PaperName, turn: Turn): Paper {
  const { width, height } = PAPERS[name];
  return turn === 'upright' ? { width, height } : { width: height, height: width };
}

/** What may be printed on. */
export function printArea({ width, height }: Paper): Rect {
  return { x: MARGIN, y: MARGIN, width: width - 2 * MARGIN, height: height - 2 * MARGIN };
}

/** The paper that there is where a job's units are used. */
export function usualPaper(units: UnitStyle): PaperName {
  return units === 'metric' ? 'a4' : 'letter';
}
