import type { Feature, Job } from '../job/job.ts';
import { cornerLetter } from '../job/letters.ts';
import type { SketchWords } from './words/en.ts';

/** A feature's own name; without one, its kind, with a number where there are several without a name. */
export function featureName(job: Job, feature: Feature, words: SketchWords): string {
  if (feature.name) return feature.name;
  const kind = words.kinds[feature.kind];
  const alike = job.features.filter((one) => one.kind === feature.kind && !one.name);
  return alike.length > 1 ? `${kind} ${alike.findIndex(({ id }) => id === feature.id) + 1}` : kind;
}

/** The letters at the ends of the edge that leaves a corner; null where no edge leaves it. */
export function edgeLetters(
  feature: Feature,
  cornerId: string,
): { readonly from: string; readonly to: string } | null {
  const { shape } = feature;
  if (shape.form === 'round') return null;
  const index = shape.corners.findIndex(({ id }) => id === cornerId);
  if (index < 0) return null;
  const isLast = index === shape.corners.length - 1;
  if (isLast && !shape.closed) return null;
  return { from: cornerLetter(index), to: cornerLetter(isLast ? 0 : index + 1) };
}
