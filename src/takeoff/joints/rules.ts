import { toGrid } from '../../geometry/round.ts';
import type { Practices } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import type { EdgeKind, PourEdge } from '../outline/pour.ts';

/**
 * Which of the practices' choices puts strip on which edge. New concrete is kept apart from what stays in place (walls,
 * steps, posts, older slabs) so that it can move on its own. A wall that can't be poured against is formed, so there is
 * nothing to keep apart while the concrete is placed.
 * @source ready-mix-joints
 */
const CHOICE: Readonly<Partial<Record<EdgeKind, keyof Practices['isolation']>>> = {
  'existing-slab': 'existing',
  wall: 'wall',
  steps: 'steps',
  'block-out': 'blockOut',
};

/** Whether an edge gets isolation strip. */
export function getsStrip(edge: PourEdge, practices: Practices): boolean {
  const choice = CHOICE[edge.kind];
  if (choice === undefined || practices.isolation[choice] !== true) return false;
  return !(practices.isolation.bondAtPatch && isPatchInSlab(edge));
}

/** The edge of a missing piece, where the new concrete may be bonded to the old. */
export function isPatchInSlab({ kind, patch }: PourEdge): boolean {
  return patch && kind === 'existing-slab';
}

/**
 * The longest that a panel may be, grid units: so many times the thickness (24 for small stone, 30 for larger, 36 for a
 * stiff mix), and never more than the cap, however thick the slab is.
 * @source joint-spacing-table
 */
export function panelMost(thickness: Grid, factor: number, cap: Grid): Grid {
  return Math.min(toGrid(factor * thickness), cap);
}
