import { boxOf } from '../geometry/box.ts';
import { type Point, samePoint } from '../geometry/point.ts';
import { onGrid } from './edge.ts';
import { withCorners, withFeature } from './find.ts';
import type { Feature, Job, Shape } from './job.ts';
import { placedAt } from './settle.ts';

/** The job with every place of one shape moved. Its own corners let go of edges that they leave. */
export function withPlaces(job: Job, feature: Feature, move: (place: Point) => Point): Job {
  const { shape } = feature;
  if (shape.form === 'outline') {
    const corners = shape.corners.map((corner) => placedAt(job, corner, move(corner)));
    return withCorners(job, { feature, outline: shape }, corners);
  }
  const center = move(shape.center);
  if (samePoint(center, shape.center)) return job;
  return withFeature(job, { ...feature, shape: { ...shape, center } } as Feature);
}

/**
 * The middle of a shape, on the grid, for turning it. The middle of its box as seen from its first corner, halves
 * rounded away from that corner: so the middle of the shape turned by a quarter is the same place again.
 */
export function middleOf(shape: Shape): Point {
  if (shape.form === 'round') return shape.center;
  const first = shape.corners[0] ?? { x: 0, y: 0 };
  const { minX, minY, maxX, maxY } = boxOf(shape.corners);
  const off = onGrid((minX + maxX) / 2 - first.x, (minY + maxY) / 2 - first.y);
  return { x: first.x + off.x, y: first.y + off.y };
}
