import type { Feature } from './job.ts';

/** Every feature's and corner's id, in order. They share one set of numbers. */
export function usedIds(features: readonly Feature[]): readonly string[] {
  return features.flatMap(({ id, shape }) =>
    shape.form === 'outline' ? [id, ...shape.corners.map((corner) => corner.id)] : [id],
  );
}

/** The least number beyond `nextId - 1` and every number in an id of these features (`f7`, `c12`). */
export function raisedNextId(nextId: number, features: readonly Feature[]): number {
  return usedIds(features).reduce((next, id) => {
    const number = Number(/^[a-z](\d{1,15})$/.exec(id)?.[1] ?? 0);
    return number >= next ? number + 1 : next;
  }, nextId);
}
