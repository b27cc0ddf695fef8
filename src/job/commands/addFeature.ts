import { fieldProblems } from '../fields.ts';
import { featureIds, raisedNextId, usedIds } from '../ids.ts';
import type { Feature, Job } from '../job.ts';
import { type Outcome, refuse } from '../refusal.ts';
import { featureSchema } from '../schema.ts';

/** Ids must be new (`f7`, `c12`, from the job's nextId on); nextId is raised beyond them. */
export interface AddFeature {
  readonly do: 'add-feature';
  readonly feature: Feature;
}

export function addFeature(job: Job, { feature }: AddFeature): Outcome {
  const [problem] = fieldProblems(featureSchema, feature, '');
  if (problem) return { ok: false, problems: { ...problem, where: feature.id } };
  const added = featureIds([feature]);
  const used = new Set(usedIds(job));
  for (const id of added) {
    if (used.has(id)) return refuse('id-taken', feature.id, { facts: { id } });
    used.add(id);
  }
  const features = [...job.features, feature];
  return { ok: true, value: { ...job, features, nextId: raisedNextId(job.nextId, added) } };
}
