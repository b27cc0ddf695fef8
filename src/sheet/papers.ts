import type { Rect } from './page.ts';

/** Inches in mm, exact. */
const INCH_MM = 25.4;

export type PaperName = 'letter' | 'a4';
export type Turn = 'upright' | 'sideways';

interface Paper {
  /** Upright, mm. */
  readonly width: number;
  readonly height: number;
}

/** US Letter (ANSI A) and ISO 216 A4. */
export const PAPERS: Readonly<Record<PaperName, Paper>> = {
  letter: { width: 8.5 * INCH_MM, height: 11 * INCH_MM },
  a4: { width: 210, height: 297 },
};

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
