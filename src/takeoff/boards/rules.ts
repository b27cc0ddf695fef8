import { FOOT, type Grid, INCH } from '../../units/grid.ts';

/**
 * Where the way turns less than this (20°) two form boards are both cut to the corner; neither passes. Common practice,
 * no source.
 */
export const FLAT_TURN = Math.PI / 9;

/** A board is lapped onto what stands there by this at least, or it isn't held by it. Common practice, no source. */
export const LEAST_LAP: Grid = 4 * INCH;

/** Farther than this from the board, `LEAST_LAP` on, the side of what stands there doesn't hold it. Our own limit. */
export const LAP_GAP: Grid = INCH / 2;

/** A form that takes less board than this is closed by the boards on either side of it. Our own limit. */
export const LEAST_BOARD: Grid = INCH / 2;

/** How much longer than a curved run the strip that is bent to it is cut, at either end. Common practice, no source. */
export const CURVE_END: Grid = FOOT / 2;
