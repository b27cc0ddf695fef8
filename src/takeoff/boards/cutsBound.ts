import type { Grid } from '../../units/grid.ts';
import { MipWriter, type Solver, type Term } from '../solver/mip.ts';
import type { BoardDemand, BoardProblem, Stock } from './plan.ts';

/** Sums of board lengths, and ways to make up a run, are gone through up to so many; past that the bound is 0. */
const MOST_SUMS = 100_000;
const MOST_WAYS = 20_000;

/**
 * The least cuts that any plan has.
 *
 * Runs hang together by the boards that were cut for more than one of them. A group of k runs and b boards has at least
 * k + b - 1 pieces, and of its boards at most b need no last cut: at least k - 1 cuts, and k unless every board is used
 * up. So a run costs at least (k - 1)/k of a cut where k is the fewest runs that come out even with whole boards, it
 * among them; and nothing only when whole boards make it up alone, of which there are so many.
 */
export function cutsBound(
  problem: BoardProblem,
  counts: ReadonlyMap<Stock, number>,
  solver: Solver,
  seconds: number,
): number {
  const sums = sumsOf(problem, counts);
  if (!sums) return 0;
  const shares = sharesOf(problem, sums);
  const stocks = [...counts].filter(([, count]) => count > 0);
  const model = new MipWriter();
  const saved: Term[] = [];
  const uses = stocks.map((): Term[] => []);
  let ways = 0;
  for (const [at, demand] of problem.demands.entries()) {
    const alone: Term[] = [];
    for (const taken of waysToMakeUp(demand, stocks)) {
      if (++ways > MOST_WAYS) return 0;
      const column = model.whole(0, 1);
      alone.push([column, 1]);
      saved.push([column, -shares[at]!]);
      for (const [nth, count] of taken.entries()) if (count > 0) uses[nth]!.push([column, count]);
    }
    if (alone.length > 0) model.atMost(alone, 1);
  }
  for (const [nth, [, count]] of stocks.entries()) {
    if (uses[nth]!.length > 0) model.atMost(uses[nth]!, count);
  }
  const all = shares.reduce((sum, share) => sum + share, 0);
  if (saved.length === 0) return Math.ceil(all - 1e-6);
  const found = solver.least(model, saved, { seconds });
  const most = found.is === 'least' ? found.cost : found.is === 'none' ? 0 : found.bound;
  return Math.max(0, Math.ceil(all + most - 1e-6));
}

/** What each run costs of a cut, when whole boards don't make it up alone. */
function sharesOf({ demands, kerf }: BoardProblem, sums: Float64Array): readonly number[] {
  const even = (need: Grid, most: Grid) => {
    let low = 0;
    let high = sums.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (sums[middle]! < need) low = middle + 1;
      else high = middle;
    }
    return low < sums.length && sums[low]! <= most;
  };
  const shares = demands.map(() => 3 / 4);
  for (const [a, one] of demands.entries()) {
    for (let b = a + 1; b < demands.length; b++) {
      const need = one.need + demands[b]!.need + kerf;
      const most = one.most + demands[b]!.most + kerf;
      if (even(need, most)) shares[a] = shares[b] = 1 / 2;
      for (let c = b + 1; c < demands.length; c++) {
        if (Math.max(shares[a]!, shares[b]!, shares[c]!) < 3 / 4) continue;
        const third = demands[c]!;
        if (!even(need + third.need + kerf, most + third.most + kerf)) continue;
        for (const at of [a, b, c]) shares[at] = Math.min(shares[at]!, 2 / 3);
      }
    }
  }
  return shares;
}

/** Every length that whole boards make up together, in order, as far as three runs may reach. */
function sumsOf(
  { demands, kerf }: BoardProblem,
  counts: ReadonlyMap<Stock, number>,
): Float64Array | undefined {
  const longest = demands.map(({ most }) => most).sort((a, b) => b - a);
  const limit = longest.slice(0, 3).reduce((sum, most) => sum + most, 2 * kerf);
  let sums = new Set([0]);
  for (const [{ length }, count] of counts) {
    const wider = new Set(sums);
    for (const sum of sums) {
      for (let nth = 1; nth <= count && sum + nth * length <= limit; nth++) {
        wider.add(sum + nth * length);
      }
    }
    sums = wider;
    if (sums.size > MOST_SUMS) return undefined;
  }
  return Float64Array.from(sums).sort();
}

/** The ways in which whole boards make up a run: how many of each. */
function* waysToMakeUp(
  { need, most }: BoardDemand,
  stocks: readonly (readonly [Stock, number])[],
  at = 0,
  sum = 0,
): Generator<readonly number[]> {
  const one = stocks[at];
  if (!one) {
    if (sum >= need) yield [];
    return;
  }
  const [{ length }, count] = one;
  for (let taken = 0; taken <= count && sum + taken * length <= most; taken++) {
    for (const rest of waysToMakeUp(
      { need, most } as BoardDemand,
      stocks,
      at + 1,
      sum + taken * length,
    )) {
      yield [taken, ...rest];
    }
  }
}
