import { FOOT, type Grid, MILLIMETRE, SIXTEENTH } from './grid.ts';
import type { LengthStyle } from './writtenLength.ts';

/** The smallest difference between two lengths as they are printed (see formatLength), grid units. */
export const PRINTED_STEP: Readonly<Record<LengthStyle, number>> = {
  'feet-inches': SIXTEENTH,
  'decimal-feet': FOOT / 1000,
  metric: MILLIMETRE,
};

/** How many printed steps a length is, rounded once from its true value. */
export function printedSteps(length: Grid, style: LengthStyle): number {
  return Math.round(length / PRINTED_STEP[style]);
}

/** A length as whoever reads the print will build it, grid units; in decimal feet between two of them. */
export function printedLength(length: Grid, style: LengthStyle): number {
  return printedSteps(length, style) * PRINTED_STEP[style];
}
