import { FOOT, type Grid, INCH } from '../../units/grid.ts';

/** A stake ripped from 2x lumber, 1 1/2 in square: half of that from its face to its middle. Common practice, no source. */
export const HALF_STAKE: Grid = 0.75 * INCH;

/** More stakes than this on one job, or on one run, is a spacing typed wrong. Our own limits. */
export const MOST_STAKES = 20_000;
export const MOST_ON_RUN = 2_000;

/** A stake set by hand belongs to the form run that it is no farther from than this. Our own limit. */
export const HAND_REACH: Grid = FOOT;

/**
 * Where no stake can be driven behind a form it is held otherwise, by the first of these that there is room for. Common
 * practice, from memory; the order is our own, each for its reason.
 *
 * 1. Spreader: a strut to a wall, steps, a slab or the form opposite, where one stands within 3 ft. Nothing is driven,
 *    and nothing stands in the concrete.
 * 2. Kicker: a brace from the form down to a stake driven beyond what is in the way, 1 to 4 ft out. Nearer it has no
 *    slant to push with, and a longer one buckles.
 * 3. Inside stake: in the pour, to be pulled as the concrete stiffens, and its hole packed: one more thing to see to
 *    while the concrete sets.
 * 4. Weight: bags or blocks against the form, on whatever is there. It slides, so it comes last.
 */
export const SPREADER_REACH: Grid = 3 * FOOT;
export const KICKER_LEAST: Grid = FOOT;
export const KICKER_REACH: Grid = 4 * FOOT;

/** Where the stakes of one run stand, measured along it. */
export interface Places {
  readonly count: number;
  /** From either end to the first and last stake. */
  readonly fromEnd: Grid;
  /** From one stake to the next; 0 when there is one alone. */
  readonly gap: Grid;
}

/**
 * Stakes along a run with two ends: one near each end, no farther from it than `fromEnd`, and between them as many gaps
 * as it takes for none to be wider than `spacing`: one stake more than gaps (the fence-post rule). With fromEnd = 0
 * that is the published rule: 28 ft at 24 in is 15, and 24 ft at 14 in is 22.
 *
 * A run no longer than `fromEnd` has one stake, in its middle; otherwise there are two at least, a quarter of the run
 * from its ends where `fromEnd` would bring them closer to each other than that.
 * @param closeness A gap may be wider than `spacing` by this in all, so that rounding a slanting run adds no stake.
 * @source en5151-support-count
 */
export function stakePlaces(length: Grid, spacing: Grid, fromEnd: Grid, closeness: Grid): Places {
  if (length <= fromEnd) return { count: 1, fromEnd: length / 2, gap: 0 };
  const end = Math.min(fromEnd, length / 4);
  const between = length - 2 * end;
  const gaps = Math.max(1, Math.ceil((between - closeness) / spacing));
  return { count: gaps + 1, fromEnd: end, gap: between / gaps };
}

/** Stakes round a run that closes on itself: no ends, so as many stakes as gaps. */
export function stakePlacesRound(length: Grid, spacing: Grid, closeness: Grid): Places {
  const count = Math.max(3, Math.ceil((length - closeness) / spacing));
  return { count, fromEnd: 0, gap: length / count };
}
