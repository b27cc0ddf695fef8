import { type Grid, INCH } from '../../units/grid.ts';

/** More strips than this are a board typed wrong. Our own limit. */
export const MOST_STRIPS = 200;
/** More batches than this aren't timed one by one: that is a truck's job. Our own limit. */
export const MOST_BATCHES = 2_000;
/** Lines this near to each other are one, grid units. */
export const SAME_LINE: Grid = 16;
/** Places along a strip at which the age of its open edge is looked at. */
export const SAMPLES = 8;
/** A gap that a person gets through. Our own, no source. */
export const LEAST_WAY_OUT: Grid = 18 * INCH;
/** Hands that finish one strip side by side once all concrete lies. Our own, no source. */
export const MOST_FINISHERS = 2;
