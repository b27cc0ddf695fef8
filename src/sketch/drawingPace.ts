/** How much of the drawing is made anew: all of it, all but its dimensions, or nothing (the last one stays). */
export type Detail = 'full' | 'plain' | 'last';

/** What making the drawing cost the last two times, ms, newest first; none where it isn't known. */
export interface DrawingCost {
  readonly full: readonly number[];
  readonly plain: readonly number[];
}

export const UNKNOWN_COST: DrawingCost = { full: [], plain: [] };

export function withCost(
  cost: DrawingCost,
  detail: Exclude<Detail, 'last'>,
  ms: number,
): DrawingCost {
  return { ...cost, [detail]: [ms, ...cost[detail].slice(0, 1)] };
}

/** Half a frame at 60 a second: the takeoff needs the other half. */
const BUDGET_MS = 8;

/** Marks above which nothing is tried in the middle of a gesture that isn't known to fit. */
const MANY_MARKS = 1000;

/** What a drawing costs without its dimensions, more or less: a first guess, until it was tried. */
const PLAIN_SHARE = 0.5;

/**
 * While something moves, no more is drawn than fits in a frame: placing dimensions is most of the work. What is moved is
 * shown by its own outline above the drawing in any case, and the whole drawing comes back when all is settled.
 * @param marks How many the last drawing has.
 */
export function detailFor(settled: boolean, { full, plain }: DrawingCost, marks: number): Detail {
  const fits = marks > MANY_MARKS ? surelyFits : mayFit;
  if (settled || fits(full)) return 'full';
  const guess = plain.length > 0 ? plain : full.map((ms) => ms * PLAIN_SHARE);
  return fits(guess) ? 'plain' : 'last';
}

/** One slow time may have been the browser's own business; two are the drawing's. */
function mayFit(times: readonly number[]): boolean {
  return times.length < 2 || surelyFits(times);
}

function surelyFits(times: readonly number[]): boolean {
  return times.some((ms) => ms <= BUDGET_MS);
}
