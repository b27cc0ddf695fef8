import type { Point } from '../../geometry/point.ts';
import { setStake } from '../handStakes.ts';
import type { Job } from '../job.ts';
import type { Outcome } from '../refusal.ts';

/** A stake is to stand here, on the inside face of the form, whatever the plan would have. */
export interface PinStake {
  readonly do: 'pin-stake';
  readonly at: Point;
  /** One that was set by hand before, and now stands here. Without: one more. */
  readonly id?: string;
}

export function pinStake(job: Job, { at, id }: PinStake): Outcome {
  return setStake(job, { at, is: 'pinned' }, id);
}
