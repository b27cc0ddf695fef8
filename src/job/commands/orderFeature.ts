import { findFeature } from '../find.ts';
import type { Job } from '../job.ts';
import { type Outcome, refuse } from '../refusal.ts';

/** To another place in the drawing order; 0 is lowest. Beyond the ends: the end. */
export interface OrderFeature {
  readonly do: 'order-feature';
  readonly feature: string;
  readonly to: number;
}

export function orderFeature(job: Job, { feature: id, to }: OrderFeature): Outcome {
  const found = findFeature(job, id);
  if (!found.ok) return found;
  if (Number.isNaN(to)) return refuse('not-on-grid', id);
  const others = job.features.filter((one) => one !== found.value);
  const place = Math.round(Math.min(others.length, Math.max(0, to)));
  if (job.features[place] === found.value) return { ok: true, value: job };
  return { ok: true, value: { ...job, features: others.toSpliced(place, 0, found.value) } };
}
