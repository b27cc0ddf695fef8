import type { UnitStyle } from '../../job/job.ts';
import { type Grid, METRE } from '../../units/grid.ts';
import { lengthReading, type Reading } from '../practices/reading.ts';

/** Of the schema. */
const DEEPEST: Grid = 2 * METRE;

/** A taped depth: more than nothing. */
export function depthReading(units: UnitStyle, depth: Grid = 1): Reading {
  return lengthReading(depth, 1, DEEPEST, units);
}
