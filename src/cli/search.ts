import { searchPlan } from '../takeoff/boards/searchPlan.ts';
import type { Takeoff } from '../takeoff/result.ts';
import type { Searched } from '../takeoff/searched.ts';
import { loadSolver } from '../takeoff/solver/highs.ts';

/** What the slow searches find for a takeoff in so many seconds. */
export async function search({ boards }: Takeoff, seconds: number): Promise<Searched> {
  if (!boards || boards.problem.demands.length === 0) return {};
  const solver = await loadSolver();
  // The command's own room is the only one of these with a clock.
  const clock = () => performance.now() / 1000;
  const found = searchPlan(boards.problem, solver, { seconds, clock });
  return 'plan' in found ? { boards: { key: boards.key, plan: found.plan } } : {};
}
