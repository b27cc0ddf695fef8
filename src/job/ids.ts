import type { Feature, Job } from './job.ts';

/** The ids of features and their corners, in order. */
export function featureIds(features: readonly Feature[]): readonly string[] {
  return features.flatMap(({ id, shape }) =>
    shape.form === 'outline' ? [id, ...shape.corners.map((corner) => corner.id)] : [id],
  );
}

/** Every id that is numbered from the job's `nextId`: of features, corners, stakes set by hand, and ground readings. */
export function usedIds({
  features,
  handStakes,
  ground,
}: Pick<Job, 'features' | 'handStakes' | 'ground'>): readonly string[] {
  return [...featureIds(features), ...[...handStakes, ...ground.readings].map(({ id }) => id)];
}

/** The least number beyond `nextId - 1` and every number in these ids (`f7`, `c12`, `s3`). */
export function raisedNextId(nextId: number, ids: readonly string[]): number {
  return ids.reduce((next, id) => {
    const number = Number(/^[a-z](\d{1,15})$/.exec(id)?.[1] ?? 0);
    return number >= next ? number + 1 : next;
  }, nextId);
}
