import { searchPlan } from '../takeoff/boards/searchPlan.ts';
import type { Takeoff } from '../takeoff/result.ts';
import type { Searched } from '../takeoff/searched.ts';
import { loadSolver } from '../takeoff/solver/highs.ts';
import { searchMesh } from '../takeoff/steel/searchMesh.ts';

/** What the slow searches find for a takeoff in so many seconds, shared evenly among those that there are. */
export async function search({ boards, steel }: Takeoff, seconds: number): Promise<Searched> {
  const lumber = boards && boards.problem.demands.length > 0 ? boards : undefined;
  const { bars, mesh } = steel ?? {};
  const each = seconds / Math.max(1, [lumber, bars, mesh].filter(Boolean).length);
  // The command's own room is the only one of these with a clock.
  const clock = () => performance.now() / 1000;
  const solver = lumber || bars ? await loadSolver() : undefined;
  const cut = (asked: Pick<NonNullable<typeof boards>, 'problem' | 'key'> | undefined) => {
    const found = solver && asked && searchPlan(asked.problem, solver, { seconds: each, clock });
    return found && 'plan' in found ? { key: asked.key, plan: found.plan } : undefined;
  };
  const [foundBoards, foundBars] = [cut(lumber), cut(bars?.cuts)];
  const laid = mesh && searchMesh(mesh.problem, { seconds: each, clock });
  return {
    ...(foundBoards ? { boards: foundBoards } : {}),
    ...(foundBars ? { bars: foundBars } : {}),
    ...(mesh && laid ? { mesh: { key: mesh.key, plan: laid } } : {}),
  };
}
