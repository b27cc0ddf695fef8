import type { Result } from '../units/result.ts';
import type { Corner, Feature, Job, Outline } from './job.ts';
import { type Refusal, refuse } from './refusal.ts';

export function findFeature(job: Job, id: string): Result<Feature, Refusal> {
  const feature = job.features.find((one) => one.id === id);
  return feature ? { ok: true, value: feature } : refuse('no-such-feature', id);
}

export interface OutlineOf {
  readonly feature: Feature;
  readonly outline: Outline;
}

export function findOutline(job: Job, id: string): Result<OutlineOf, Refusal> {
  const found = findFeature(job, id);
  if (!found.ok) return found;
  const { shape } = found.value;
  if (shape.form !== 'outline') return refuse('not-an-outline', id);
  return { ok: true, value: { feature: found.value, outline: shape } };
}

export interface CornerOf extends OutlineOf {
  readonly index: number;
  readonly corner: Corner;
}

export function findCorner(job: Job, id: string, corner: string): Result<CornerOf, Refusal> {
  const found = findOutline(job, id);
  if (!found.ok) return found;
  const index = found.value.outline.corners.findIndex((one) => one.id === corner);
  const at = found.value.outline.corners[index];
  if (!at) return refuse('no-such-corner', id, { facts: { corner } });
  return { ok: true, value: { ...found.value, index, corner: at } };
}

export interface EdgeOf extends CornerOf {
  /** Where the edge ends. */
  readonly endIndex: number;
  readonly end: Corner;
}

/** The edge that leaves a corner. An open line has none after its last. */
export function findEdge(job: Job, id: string, corner: string): Result<EdgeOf, Refusal> {
  const found = findCorner(job, id, corner);
  if (!found.ok) return found;
  const { outline, index } = found.value;
  const end = edgeEnd(outline, index);
  if (!end) return refuse('no-such-edge', id, { facts: { corner } });
  return { ok: true, value: { ...found.value, endIndex: outline.corners.indexOf(end), end } };
}

/** The corner at which the edge from corner `index` ends, if there is such an edge. */
export function edgeEnd({ corners, closed }: Outline, index: number): Corner | undefined {
  if (index < 0 || corners.length < 2) return undefined;
  return corners[index + 1] ?? (closed && index === corners.length - 1 ? corners[0] : undefined);
}

/** The corner whose edge ends at corner `index`, if there is such an edge. */
export function edgeStart({ corners, closed }: Outline, index: number): Corner | undefined {
  if (corners.length < 2) return undefined;
  return index > 0 ? corners[index - 1] : closed ? corners.at(-1) : undefined;
}

/** The job with one feature in place of the one of the same id. */
export function withFeature(job: Job, feature: Feature): Job {
  return {
    ...job,
    features: job.features.map((one) => (one.id === feature.id ? feature : one)),
  };
}

/** The job with other corners for one outline; the same job when they are the very same. */
export function withCorners(
  job: Job,
  { feature, outline }: OutlineOf,
  corners: readonly Corner[],
): Job {
  const same =
    corners.length === outline.corners.length &&
    corners.every((corner, index) => corner === outline.corners[index]);
  return same ? job : withFeature(job, { ...feature, shape: { ...outline, corners } } as Feature);
}
