import { type Point, samePoint } from './point.ts';

/**
 * Removes from a closed walk, in place, corners that repeat the one before and spikes (a → b → a) until none is left.
 * `tags`, when given, runs beside `points`: tags[i] goes with the edge that leaves points[i].
 * What encloses nothing comes out with fewer than three corners.
 */
export function tidyRing(points: Point[], tags?: number[]): void {
  const drop = (i: number, count: number): void => {
    points.splice(i, count);
    tags?.splice(i, count);
  };
  let clean = 0;
  // Until a whole round has found nothing to remove.
  for (let i = 0; points.length > 2 && clean < points.length; ) {
    const count = points.length;
    i = ((i % count) + count) % count;
    const at = points[i]!;
    if (samePoint(at, points[(i + 1) % count]!)) {
      drop(i, 1);
      clean = 0;
      i -= 2;
    } else if (samePoint(at, points[(i + 2) % count]!)) {
      // at → b → at: the way out and back goes, the second `at` stays.
      if (i + 1 < count) drop(i, 2);
      else {
        drop(i, 1);
        drop(0, 1);
      }
      clean = 0;
      i -= 2;
    } else {
      clean++;
      i++;
    }
  }
  if (points.length < 3) {
    points.length = 0;
    if (tags) tags.length = 0;
  }
}
