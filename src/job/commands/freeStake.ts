import { findHandStake } from '../handStakes.ts';
import type { Job } from '../job.ts';
import type { Outcome } from '../refusal.ts';

/** A stake that was pinned or left out by hand goes back to the plan. */
export interface FreeStake {
  readonly do: 'free-stake';
  readonly id: string;
}

/** All stakes go back to the plan. */
export interface FreeStakes {
  readonly do: 'free-stakes';
}

export function freeStake(job: Job, { id }: FreeStake): Outcome {
  const found = findHandStake(job, id);
  if (!found.ok) return found;
  const handStakes = job.handStakes.filter((one) => one !== found.value);
  return { ok: true, value: { ...job, handStakes } };
}

export function freeStakes(job: Job): Outcome {
  return { ok: true, value: job.handStakes.length > 0 ? { ...job, handStakes: [] } : job };
}
