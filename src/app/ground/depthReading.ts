import type { UnitStyle } from '../../job/job.ts';
import { FOOT, type Grid, INCH } from '../../units/grid.ts';
import { lengthReading, type Reading } from '../practices/reading.ts';

/** Less is no slab, and more is within what a job may hold. */
const LEAST: Grid = INCH / 4;
const DEEPEST: Grid = 6 * FOOT;

/** A taped depth. */
export function depthReading(units: UnitStyle, depth: Grid = LEAST): Reading {
  return lengthReading(depth, LEAST, DEEPEST, units);
}
