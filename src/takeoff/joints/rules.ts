import type { Practices } from '../../job/job.ts';
import type { EdgeKind } from '../outline/pour.ts';

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

/** Whether an edge of this kind gets isolation strip. */
export function getsStrip(kind: EdgeKind, practices: Practices): boolean {
  const choice = CHOICE[kind];
  return choice !== undefined && practices.isolation[choice] === true;
}
