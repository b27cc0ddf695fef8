import { findFeature } from '../find.ts';
import type { Job } from '../job.ts';
import type { Outcome } from '../refusal.ts';
import { withAttachmentsTo } from '../settle.ts';

/** Corners that were on its edges stay where they are. */
export interface RemoveFeature {
  readonly do: 'remove-feature';
  readonly feature: string;
}

export function removeFeature(job: Job, { feature }: RemoveFeature): Outcome {
  const found = findFeature(job, feature);
  if (!found.ok) return found;
  const free = withAttachmentsTo(job, feature, () => null);
  return {
    ok: true,
    value: { ...free, features: free.features.filter(({ id }) => id !== feature) },
  };
}
