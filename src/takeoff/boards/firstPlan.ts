import type { BoardCost, BoardDemand, BoardPlan, BoardProblem, NoPlan, Stock } from './plan.ts';
import { Rack, type Way } from './rack.ts';
import { fewestJoints } from './spliceReach.ts';
import { compareCosts, costOf, type UsedBoard, writePlan } from './writePlan.ts';

/** So many runs are served in all the ways together: the answer must come while somebody drags a corner. */
const SERVED = 3000;
const USUAL_WAYS = 12;
/** Each run of a large job looks through as many boards as there are runs, so it has fewer ways still. */
const LOOKED_AT = 400_000;

function mostWays(runs: number): number {
  const usual = Math.max(USUAL_WAYS, Math.floor(SERVED / runs));
  return Math.max(1, Math.min(usual, Math.floor(LOOKED_AT / runs ** 2)));
}

/**
 * A good plan at once: boards served best fit first, the longest run first, in a few dozen ways of which the best is
 * taken. Every plan is good; that none is found although splices are allowed and the yard sells none doesn't prove that
 * there is none.
 */
export function firstPlan(
  problem: BoardProblem,
): { readonly plan: BoardPlan } | { readonly none: NoPlan } {
  const stock = problem.stock.filter(({ length, count }) => length > 0 && (count ?? 1) > 0);
  if (problem.demands.length === 0) return { plan: writePlan(problem, [], { is: 'first' }) };
  if (stock.length === 0) return { none: { is: 'no-boards' } };
  const longest = Math.max(...stock.map(({ length }) => length));
  const tooLong = problem.demands.find((demand) => !fewestJoints(problem, demand, longest));
  if (tooLong) return { none: { is: 'run-too-long', run: tooLong.run, longest } };
  let best: { used: readonly UsedBoard[]; cost: BoardCost } | undefined;
  let fewestBare: readonly number[] | undefined;
  let ways = mostWays(problem.demands.length);
  for (const way of waysOf(problem, stock)) {
    // Nothing was bought: what the yard has first makes no difference.
    if (best?.cost.price === 0 && way.yard !== way.cheapest) continue;
    if (ways-- === 0) break;
    const { used, bare } = serve(problem, stock, way);
    if (bare.length > 0) {
      if (!fewestBare || bare.length < fewestBare.length) fewestBare = bare;
      continue;
    }
    const cost = costOf(problem, used);
    if (!best || compareCosts(cost, best.cost) < 0) best = { used, cost };
  }
  if (best) return { plan: writePlan(problem, best.used, { is: 'first' }) };
  const runs = (fewestBare ?? []).map((at) => problem.demands[at]!.run);
  return { none: { is: 'not-enough', runs } };
}

function* waysOf({ demands, splices }: BoardProblem, stock: readonly Stock[]): Generator<Way> {
  const yard = stock.filter(({ from }) => from === 'yard');
  const byRate = yard.toSorted((a, b) => a.price * b.length - b.price * a.length);
  // The cheapest by its length stands first as it is.
  const others = yard.filter((one) => one !== byRate[0]);
  const yards = [byRate, ...others.map((one) => [one, ...byRate.filter((other) => other !== one)])];
  const all = demands.map((_, at) => at);
  const room = ({ need, most }: BoardDemand) => most - need;
  const orders = [
    all.toSorted((a, b) => demands[b]!.need - demands[a]!.need),
    // Those that can run long pick the boards that they use up first.
    all.toSorted(
      (a, b) => room(demands[b]!) - room(demands[a]!) || demands[b]!.need - demands[a]!.need,
    ),
    all.toSorted(
      (a, b) => demands[a]!.most - demands[b]!.most || demands[b]!.need - demands[a]!.need,
    ),
  ];
  for (const order of orders.filter((one, at) => !orders.slice(0, at).some((b) => alike(one, b)))) {
    for (const list of yards) {
      for (const wholeFirst of [true, false]) {
        for (const spliceFirst of splices ? [true, false] : [false]) {
          yield { order, yard: list, cheapest: byRate, spliceFirst, wholeFirst };
        }
      }
    }
  }
}

function alike(a: readonly number[], b: readonly number[]): boolean {
  return a.every((one, at) => one === b[at]);
}

function serve(problem: BoardProblem, stock: readonly Stock[], way: Way) {
  const rack = new Rack(problem, stock, way);
  const bare = way.order.filter((at) => !rack.serve(at));
  return { used: rack.finished(), bare };
}
