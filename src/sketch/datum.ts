import type { Point } from '../geometry/point.ts';
import type { Job } from '../job/job.ts';

/** Where offsets are measured from: the first pad's first corner, or the zero of the site. */
export function datumOf({ features }: Job): Point {
  for (const { kind, shape } of features) {
    const first = kind === 'pad' && shape.form === 'outline' ? shape.corners[0] : undefined;
    if (first) return { x: first.x, y: first.y };
  }
  return { x: 0, y: 0 };
}
