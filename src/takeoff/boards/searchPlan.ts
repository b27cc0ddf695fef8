import type { Solver } from '../solver/mip.ts';
import { checkPlan } from './checkPlan.ts';
import { firstPlan } from './firstPlan.ts';
import { givenPieces } from './givenPieces.ts';
import { patternSearch } from './patternSearch.ts';
import type { BoardCost, BoardPlan, BoardProblem, NoPlan, Proof } from './plan.ts';
import { type Stage, type StageEnd, WEIGHED } from './searchStage.ts';
import { spliceSearch } from './spliceSearch.ts';
import { boardsOf, compareCosts, costOf, type UsedBoard, writePlan } from './writePlan.ts';

export interface SearchTerms {
  readonly seconds: number;
  /** Seconds, from any moment on. */
  readonly clock: () => number;
  /** Called with each better plan as it is found. */
  readonly onBetter?: (plan: BoardPlan) => void;
}

interface Best {
  readonly used: readonly UsedBoard[];
  readonly cost: BoardCost;
}

/** How much of the time that is left each of the four may take. */
const SHARE: BoardCost = { price: 0.5, cuts: 0.6, splices: 0.6, waste: 1 };
/** How much of the time may go into plans that divide only the runs that must be, and divide them as the best so far. */
const GIVEN = 0.25;

/**
 * The best plan that can be found in the time, and how sure that is: price, then cuts, then splices, then waste, each
 * with those before it held. Every plan is held against its problem before it counts.
 */
export function searchPlan(
  problem: BoardProblem,
  solver: Solver,
  { seconds, clock, onBetter }: SearchTerms,
): { readonly plan: BoardPlan } | { readonly none: NoPlan } {
  const begun = clock();
  const took = () => clock() - begun;
  const first = firstPlan(problem);
  if ('none' in first && first.none.is !== 'not-enough') return first;
  let best: Best | undefined;
  if ('plan' in first) best = { used: boardsOf(problem, first.plan), cost: first.plan.cost };
  const offer = (used: readonly UsedBoard[]) => {
    const plan = writePlan(problem, used, { is: 'first' });
    if (checkPlan(problem, plan).length > 0) return;
    if (best && compareCosts(plan.cost, best.cost) >= 0) return;
    best = { used, cost: plan.cost };
    onBetter?.(plan);
  };
  const spliced = problem.splices && problem.demands.some(({ spliceOn }) => spliceOn.length > 0);
  if (spliced && best) {
    const longest = Math.max(...problem.stock.map(({ length }) => length));
    const until = seconds * GIVEN;
    const left = () => until - took();
    // First every run in one piece that a board is long enough for; then as the best plan divides them.
    lookGiven(problem, solver, best, (at) => problem.demands[at]!.need > longest, left, offer);
    lookGiven(problem, solver, best, () => true, left, offer);
  }
  const search = spliced ? spliceSearch(problem, solver) : patternSearch(problem, solver);
  const open = lookInto(
    search,
    () => seconds - took(),
    () => best,
    offer,
  );
  if (!best) return first as { readonly none: NoPlan };
  const proof: Proof = open
    ? { is: 'gap', ...open, seconds: took() }
    : { is: 'proved', seconds: took() };
  return { plan: writePlan(problem, best.used, proof) };
}

/** The four looked into one after the other; the first that wasn't proved, and what no plan comes below in it. */
function lookInto(
  search: (stage: Stage) => StageEnd,
  left: () => number,
  best: () => Best | undefined,
  offer: (used: readonly UsedBoard[]) => void,
): { readonly of: keyof BoardCost; readonly bound: number } | undefined {
  let open: { of: keyof BoardCost; bound: number } | undefined;
  const limits: Partial<Record<keyof BoardCost, number>> = {};
  for (const of of WEIGHED) {
    const rest = left() * (1 - SHARE[of]);
    const seconds = () => Math.max(0, left() - rest);
    const end = search({ of, limits: { ...limits }, best, seconds, offer });
    const found = best();
    if (!found) return open;
    if (end.is === 'open') open ??= { of, bound: end.bound };
    limits[of] = found.cost[of];
  }
  return open;
}

/** Better plans that divide runs as a plan does: a problem without splices, which is soon solved. */
function lookGiven(
  problem: BoardProblem,
  solver: Solver,
  plan: Best,
  divided: (demand: number) => boolean,
  left: () => number,
  offer: (used: readonly UsedBoard[]) => void,
): void {
  const given = left() > 0 ? givenPieces(problem, plan.used, divided) : undefined;
  if (!given) return;
  let best: Best = { used: given.start, cost: costOf(given.problem, given.start) };
  offer(given.back(best.used));
  lookInto(
    patternSearch(given.problem, solver),
    left,
    () => best,
    (used) => {
      const cost = costOf(given.problem, used);
      if (compareCosts(cost, best.cost) >= 0) return;
      best = { used, cost };
      offer(given.back(used));
    },
  );
}
