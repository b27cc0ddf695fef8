import { type Point, samePoint } from '../geometry/point.ts';
import type { Corner, Feature, Outline } from '../job/job.ts';

/** The corner that the edge leaving `cornerId` comes to; null at the end of an open line. */
export function cornerAfter({ corners, closed }: Outline, cornerId: string): Corner | null {
  const index = corners.findIndex(({ id }) => id === cornerId);
  if (index < 0) return null;
  return corners[index + 1] ?? (closed ? corners[0] : null) ?? null;
}

/** Straight from corner to corner, also under an arc: what a tape reads. */
export function lengthOf({ shape }: Feature, cornerId: string): number | null {
  if (shape.form === 'round') return null;
  const from = shape.corners.find(({ id }) => id === cornerId);
  const to = cornerAfter(shape, cornerId);
  return from && to ? Math.hypot(to.x - from.x, to.y - from.y) : null;
}

/** Direction from one place to another, degrees counter-clockwise from east, 0 to 360. */
export function bearingOf(from: Point, to: Point): number {
  if (samePoint(from, to)) return 0;
  const degrees = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  return degrees < 0 ? degrees + 360 : degrees;
}
