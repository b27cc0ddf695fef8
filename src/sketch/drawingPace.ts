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

/**
 * While something moves, no more is drawn than fits in a frame: placing dimensions is most of the work. What is moved is
 * shown by its own outline above the drawing in any case, and the whole drawing comes back when the hand rests.
 */
export function detailFor(resting: boolean, { full, plain }: DrawingCost): Detail {
  if (resting || fits(full)) return 'full';
  return fits(plain) ? 'plain' : 'last';
}

/** One slow time may have been the browser's own business; two are the drawing's. */
function fits(times: readonly number[]): boolean {
  return times.length < 2 || Math.min(...times) <= BUDGET_MS;
}
