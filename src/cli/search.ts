import { searchPlan } from '../takeoff/boards/searchPlan.ts';
import { searchAll } from '../takeoff/joints/searchAll.ts';
import type { Takeoff } from '../takeoff/result.ts';
import type { Searched } from '../takeoff/searched.ts';
import { loadSolver } from '../takeoff/solver/highs.ts';
import { searchMesh } from '../takeoff/steel/searchMesh.ts';

/** What the slow searches find for a takeoff in so many seconds, shared evenly among those that there are. */
export async function search(
  { boards, steel, joints }: Takeoff,
  seconds: number,
): Promise<Searched> {
  const lumber = boards && boards.problem.demands.length > 0 ? boards : undefined;
  const { bars, mesh } = steel ?? {};
  const layout = joints?.layout?.by === 'proposed' ? joints.layout : undefined;
  const each = seconds / Math.max(1, [lumber, bars, mesh, layout].filter(Boolean).length);
  // The command's own room is the only one of these with a clock.
  const clock = () => performance.now() / 1000;
  const solver = lumber || bars ? await loadSolver() : undefined;
  const cut = (asked: Pick<NonNullable<typeof boards>, 'problem' | 'key'> | undefined) => {
    const found = solver && asked && searchPlan(asked.problem, solver, { seconds: each, clock });
    return found && 'plan' in found ? { key: asked.key, plan: found.plan } : undefined;
  };
  const [foundBoards, foundBars] = [cut(lumber), cut(bars?.cuts)];
  const laid = mesh && searchMesh(mesh.problem, { seconds: each, clock });
  const onBetter = () => {};
  const jointed = layout && searchAll(layout.problems, { seconds: each, clock, onBetter });
  return {
    ...(foundBoards ? { boards: foundBoards } : {}),
    ...(foundBars ? { bars: foundBars } : {}),
    ...(layout && jointed ? { joints: { key: layout.key, plan: jointed } } : {}),
    ...(mesh && laid ? { mesh: { key: mesh.key, plan: laid } } : {}),
  };
}
