import type { BoardProblem, Stock } from './plan.ts';
import { mostPieces } from './spliceReach.ts';

/** How many of each board a plan may come to use at most, and what the yard must be paid at least. */
export interface Reach {
  readonly counts: ReadonlyMap<Stock, number>;
  /** Of all ways to buy enough within the price, the least paid; Infinity when there is none. */
  readonly leastPrice: number;
}

/** Ways to buy are gone through up to so many; past that each board of the yard is bounded by the price alone. */
const MOST_WAYS = 50_000;

/**
 * What can be bought for no more than `limit` (for any price when there is none) and still comes, with the whole truck, to
 * what the runs need: every way to buy is gone through. Pieces too short to use are left out of it, so that nothing
 * possible is.
 */
export function reachOf(problem: BoardProblem, limit: number | undefined): Reach {
  const usable = problem.stock.filter(({ length, count }) => length > 0 && (count ?? 1) > 0);
  const { kerf } = problem;
  // Every piece takes its kerf, and every board has one more than its length.
  const needs = problem.demands.reduce((sum, { need }) => sum + need + kerf, 0);
  const trucks = usable.filter(({ price: paid }) => paid === 0);
  // No plan has more pieces than this, and no board without a piece.
  const pieces = problem.demands.reduce((sum, one) => sum + mostPieces(problem, one), 0);
  const price = limit ?? pieces * Math.max(0, ...usable.map((one) => one.price));
  const most = ({ count, price: paid }: Stock) =>
    Math.min(count ?? pieces, pieces, paid > 0 ? Math.floor(price / paid) : pieces);
  const counts = new Map(usable.map((one) => [one, 0]));
  for (const one of trucks) counts.set(one, most(one));
  const there = trucks.reduce((sum, one) => sum + (one.length + kerf) * most(one), 0);
  const yard = usable
    .filter(({ price: paid }) => paid > 0)
    .sort((a, b) => a.price * (b.length + kerf) - b.price * (a.length + kerf));
  let leastPrice = Number.POSITIVE_INFINITY;
  let ways = 0;
  const bought = yard.map(() => 0);
  const buy = (at: number, short: number, left: number): void => {
    if (ways > MOST_WAYS) return;
    const one = yard[at];
    if (!one) {
      ways++;
      if (short > 0) return;
      leastPrice = Math.min(leastPrice, price - left);
      for (const [nth, stock] of yard.entries()) {
        counts.set(stock, Math.max(counts.get(stock)!, bought[nth]!));
      }
      return;
    }
    // What is still short can't be had for less than the best rate from here on.
    if (short > 0 && (short / (one.length + kerf)) * one.price > left * (1 + 1e-9)) {
      ways++;
      return;
    }
    const limit = Math.min(most(one), Math.floor(left / one.price));
    for (let count = 0; count <= limit; count++) {
      bought[at] = count;
      buy(at + 1, short - count * (one.length + kerf), left - count * one.price);
    }
    bought[at] = 0;
  };
  buy(0, needs - there, price);
  if (ways > MOST_WAYS) {
    for (const one of yard) counts.set(one, most(one));
    const rates = yard.map((one) => one.price / (one.length + kerf));
    leastPrice = Math.ceil(Math.max(0, needs - there) * Math.min(...rates) - 1e-6);
  }
  return { counts, leastPrice };
}
