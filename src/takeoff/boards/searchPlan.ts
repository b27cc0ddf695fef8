import type { Solver } from '../solver/mip.ts';
import { checkPlan } from './checkPlan.ts';
import { firstPlan } from './firstPlan.ts';
import { patternSearch } from './patternSearch.ts';
import type { BoardCost, BoardPlan, BoardProblem, NoPlan, Proof } from './plan.ts';
import { type StageEnd, WEIGHED } from './searchStage.ts';
import { spliceSearch } from './spliceSearch.ts';
import { boardsOf, compareCosts, type UsedBoard, writePlan } from './writePlan.ts';

export interface SearchTerms {
  readonly seconds: number;
  /** Seconds, from any moment on. */
  readonly clock: () => number;
  /** Called with each better plan as it is found. */
  readonly onBetter?: (plan: BoardPlan) => void;
}

/** How much of the time that is left each of the four may take. */
const SHARE: BoardCost = { price: 0.5, cuts: 0.7, splices: 0.7, waste: 1 };

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
  let best: { used: readonly UsedBoard[]; cost: BoardCost } | undefined;
  if ('plan' in first) best = { used: boardsOf(problem, first.plan), cost: first.plan.cost };
  const offer = (used: readonly UsedBoard[]) => {
    const plan = writePlan(problem, used, { is: 'first' });
    if (checkPlan(problem, plan).length > 0) return;
    if (best && compareCosts(plan.cost, best.cost) >= 0) return;
    best = { used, cost: plan.cost };
    onBetter?.(plan);
  };
  const spliced = problem.splices && problem.demands.some(({ spliceOn }) => spliceOn.length > 0);
  const look = spliced ? spliceSearch(problem, solver) : patternSearch(problem, solver);
  let open: { of: keyof BoardCost; bound: number } | undefined;
  const limits: Partial<Record<keyof BoardCost, number>> = {};
  for (const of of WEIGHED) {
    const until = took() + (seconds - took()) * SHARE[of];
    const end: StageEnd = look({
      of,
      limits: { ...limits },
      best: () => best,
      seconds: () => Math.max(0, until - took()),
      offer,
    });
    if (!best) break;
    if (end.is === 'open') open ??= { of, bound: end.bound };
    limits[of] = best.cost[of];
  }
  if (!best) return first as { readonly none: NoPlan };
  const proof: Proof = open
    ? { is: 'gap', ...open, seconds: took() }
    : { is: 'proved', seconds: took() };
  return { plan: writePlan(problem, best.used, proof) };
}
