import { FOOT, type Grid, INCH, MILLIMETRE, SIXTEENTH } from '../../units/grid.ts';

/** Diagonals may be off by this much on a form whose longer one is 20 ft or less. Source: common practice. */
const BAND: Grid = INCH / 4;
const BAND_UP_TO: Grid = 20 * FOOT;

/**
 * How far the diagonals may differ from what they should: 1/4 in up to 20 ft (common practice), in proportion beyond
 * (our own extension, no source).
 */
export function passBand(longestDiagonal: number): number {
  return BAND * Math.max(1, longestDiagonal / BAND_UP_TO);
}

/** Two arcs that cross at less than this, or at more than STEEPEST, fix no place. Degrees. Source: common practice. */
export const FLATTEST = 30;
export const STEEPEST = 150;

/** How far a person is off who reads a tape to the nearest eighth with the tape a little slack: ± this. */
export const READING_ERROR: Grid = INCH / 8;

/** A corner is taken as square when its shorter side's end lies no farther than this from the square line. */
export const SQUARE_WITHIN: Grid = SIXTEENTH;

/** Feet first; where three and four of them don't fit, three inches (9-12-15 in). */
export const TRIANGLE_FEET: readonly Grid[] = [FOOT, 3 * INCH];
/** 300-400-500 mm and its multiples. @source metric-set-out-triangle */
export const TRIANGLE_METRIC: readonly Grid[] = [100 * MILLIMETRE];

/**
 * Both diagonals together may leave what the sides allow by this much each. Sides alone decide how long the diagonals
 * are together, so more than this is a tape that was read wrong, or a side that isn't its length. No source: twice what
 * the pass band allows.
 */
export const MISCLOSURE_MOST: Grid = INCH / 2;

/** A form that leans more than this at a corner isn't a tape's error. Degrees, no source. */
export const LEAN_MOST = 20;

/** More corners than this are no form that is set out by tape ties. */
export const CORNERS_MOST = 60;
/** Marks to look through for the best two. */
export const MARKS_MOST = 40;
