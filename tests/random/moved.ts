import type { Point } from '../../src/geometry/point.ts';
import type { Feature, Job } from '../../src/job/job.ts';

/** The same job with every place of it sent elsewhere: shifted or turned by quarter turns, never resized. */
export function moved(job: Job, place: (point: Point) => Point): Job {
  const features = job.features.map((feature): Feature => {
    const { shape } = feature;
    const next =
      shape.form === 'round'
        ? { ...shape, center: place(shape.center) }
        : { ...shape, corners: shape.corners.map((corner) => ({ ...corner, ...place(corner) })) };
    return { ...feature, shape: next } as Feature;
  });
  return { ...job, features };
}

export const MOVES: Readonly<Record<string, (point: Point) => Point>> = {
  shifted: ({ x, y }) => ({ x: x + 1_234_567, y: y - 7_654_321 }),
  'a quarter turn': ({ x, y }) => ({ x: -y, y: x }),
  'half a turn': ({ x, y }) => ({ x: -x, y: -y }),
  'three quarter turns': ({ x, y }) => ({ x: y, y: -x }),
};
