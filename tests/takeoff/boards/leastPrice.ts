import { checkPlan } from '../../../src/takeoff/boards/checkPlan.ts';
import { firstPlan } from '../../../src/takeoff/boards/firstPlan.ts';
import { patternSearch } from '../../../src/takeoff/boards/patternSearch.ts';
import type { BoardProblem } from '../../../src/takeoff/boards/plan.ts';
import type { StageEnd } from '../../../src/takeoff/boards/searchStage.ts';
import { boardsOf, writePlan } from '../../../src/takeoff/boards/writePlan.ts';
import type { Solver } from '../../../src/takeoff/solver/mip.ts';

/** The price alone of a problem without splices, looked into to the end: what the first plan pays, and the least. */
export function leastPrice(
  problem: BoardProblem,
  solver: Solver,
): { readonly first: number; readonly least: number; readonly end: StageEnd['is'] } {
  const first = firstPlan(problem);
  if ('none' in first) throw new Error('No first plan.');
  let best = { used: boardsOf(problem, first.plan), cost: first.plan.cost };
  const end = patternSearch(
    problem,
    solver,
  )({
    of: 'price',
    limits: {},
    best: () => best,
    seconds: () => 60,
    offer: (used) => {
      const plan = writePlan(problem, used, { is: 'first' });
      const faults = checkPlan(problem, plan);
      if (faults.length > 0) throw new Error(`A plan with faults: ${JSON.stringify(faults)}`);
      if (plan.cost.price < best.cost.price) best = { used, cost: plan.cost };
    },
  });
  return { first: first.plan.cost.price, least: best.cost.price, end: end.is };
}
