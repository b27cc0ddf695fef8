import { MipWriter, type Solver, type Term } from '../solver/mip.ts';
import { evenGroups } from './evenGroups.ts';
import type { BoardCost, BoardProblem, Stock } from './plan.ts';

interface Asked {
  readonly problem: BoardProblem;
  readonly counts: ReadonlyMap<Stock, number>;
  readonly solver: Solver;
  readonly of: keyof BoardCost;
  readonly limits: Partial<BoardCost>;
  readonly seconds: number;
}

/**
 * What no plan comes below in one of the four, with those before it held.
 *
 * Runs hang together by the boards that are cut for more than one of them, or that meet in one. A group of k runs and b
 * boards has at least k + b - 1 pieces, and no more than b boards that need no last cut. So it comes to k - 1 cuts and
 * b - 1 splices when its boards come out even with its runs, and to k cuts at least when they don't. The model divides
 * the runs into groups that come out even (listed) and a rest, of which it knows only that its boards must be long enough
 * together. Every plan is one of its answers, so its best is no worse than any plan.
 */
export function groupBound({ problem, counts, solver, of, limits, seconds }: Asked): number {
  const { demands, kerf } = problem;
  const stocks = [...counts].filter(([, count]) => count > 0);
  const longest = Math.max(1, ...stocks.map(([{ length }]) => length));
  const { groups, share } = evenGroups(problem, stocks);
  const model = new MipWriter();
  const used = stocks.map(([, count]) => model.whole(0, count));
  const even = groups.map(() => model.whole(0, 1));
  const rest = demands.map(() => model.whole(0, 1));
  const restSplices = model.real(0, Number.POSITIVE_INFINITY);
  for (const at of demands.keys()) {
    const own = groups.flatMap((group, nth) => (group.demands.includes(at) ? [even[nth]!] : []));
    model.row(
      1,
      [...own, rest[at]!].map((column): Term => [column, 1]),
      1,
    );
  }
  // What of the boards is left for the rest, and for the groups whose boards aren't listed.
  const restBoards = stocks.map((_, stock): readonly Term[] => [
    [used[stock]!, 1],
    ...groups.flatMap(({ boards }, nth): Term[] =>
      boards?.[stock] ? [[even[nth]!, -boards[stock]!]] : [],
    ),
  ]);
  for (const boards of restBoards) model.atLeast(boards, 0);
  const unlisted = groups.flatMap((group, nth) =>
    group.boards ? [] : [{ group, column: even[nth]! }],
  );
  const sawn = (at: number) => (demands[at]!.need + kerf) / longest;
  model.atLeast(
    [
      ...restBoards.flatMap((boards, stock) => {
        const whole = (stocks[stock]![0].length + kerf) / longest;
        return boards.map(([column, times]): Term => [column, times * whole]);
      }),
      ...rest.map((column, at): Term => [column, -sawn(at)]),
      ...unlisted.map(
        ({ group, column }): Term => [
          column,
          -group.demands.reduce((sum, at) => sum + sawn(at), 0),
        ],
      ),
    ].reduce(gathered, []),
    0,
  );
  // Each group in the rest has one splice less than boards; a run longer than any board has one at least.
  model.atLeast(
    [
      [restSplices, 1] as Term,
      ...restBoards.flat().map(([column, times]): Term => [column, -times]),
      ...rest.map((column): Term => [column, 1]),
      ...unlisted.map(({ column }): Term => [column, 1]),
    ].reduce(gathered, []),
    0,
  );
  const spliced = (at: number) => Math.ceil(demands[at]!.need / longest) - 1;
  model.atLeast([[restSplices, 1], ...rest.map((column, at): Term => [column, -spliced(at)])], 0);
  const costs: Record<keyof BoardCost, readonly Term[]> = {
    price: used.map((column, stock): Term => [column, stocks[stock]![0].price]),
    cuts: [
      ...groups.map((group, nth): Term => [even[nth]!, group.demands.length - 1]),
      ...rest.map((column): Term => [column, share]),
    ],
    splices: [
      ...groups.map(
        ({ boards }, nth): Term => [
          even[nth]!,
          boards ? boards.reduce((sum, count) => sum + count, 0) - 1 : 0,
        ],
      ),
      [restSplices, 1],
    ],
    waste: used.map((column, stock): Term => [column, stocks[stock]![0].length / longest]),
  };
  const needs = demands.reduce((sum, { need }) => sum + need, 0);
  if (limits.price !== undefined) model.atMost(costs.price, limits.price);
  if (limits.cuts !== undefined) model.atMost(costs.cuts, limits.cuts);
  if (limits.splices !== undefined) model.atMost(costs.splices, limits.splices);
  const found = solver.least(model, costs[of], { seconds });
  if (found.is === 'none') return Number.POSITIVE_INFINITY;
  const least = found.is === 'least' ? found.cost : found.bound;
  if (!Number.isFinite(least)) return 0;
  // Lengths are whole grid units, and far enough from the sixth digit.
  return of === 'waste'
    ? Math.max(0, Math.ceil((least - 1e-7) * longest - needs))
    : Math.max(0, Math.ceil(least - 1e-6));
}

/** Terms with each column once. */
function gathered(all: Term[], [column, times]: Term): Term[] {
  const nth = all.findIndex((one) => one[0] === column);
  if (nth < 0) all.push([column, times]);
  else all[nth] = [column, all[nth]![1] + times];
  return all;
}
