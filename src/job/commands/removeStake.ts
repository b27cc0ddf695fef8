import type { Point } from '../../geometry/point.ts';
import { setStake } from '../handStakes.ts';
import type { Job } from '../job.ts';
import type { Outcome } from '../refusal.ts';

/** No stake is to stand here, on the inside face of the form, though the plan would have one. */
export interface RemoveStake {
  readonly do: 'remove-stake';
  readonly at: Point;
  /** One that was set by hand before. Without: one of the plan. */
  readonly id?: string;
}

export function removeStake(job: Job, { at, id }: RemoveStake): Outcome {
  return setStake(job, { at, is: 'removed' }, id);
}
