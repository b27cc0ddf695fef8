import type { Grid } from '../../units/grid.ts';
import type { Stretch } from './leastStakes.ts';
import { HALF_STAKE } from './rules.ts';

/** Where boards meet along each run, from its start: by the run's mark. */
export type Splices = ReadonlyMap<string, readonly Grid[]>;

/** The stretch before a splice and the one after it that must each have a stake: a splice is an end of two boards. */
export function spliceSides(splice: Grid, fromEnd: Grid): readonly [Stretch, Stretch] {
  const reach = spliceReach(fromEnd);
  return [
    { from: splice - reach, to: splice - HALF_STAKE },
    { from: splice + HALF_STAKE, to: splice + reach },
  ];
}

/** How far from a splice the middle of the stake on either side of it may be; there is room for one at least. */
export function spliceReach(fromEnd: Grid): Grid {
  return Math.max(fromEnd, 2 * HALF_STAKE);
}
