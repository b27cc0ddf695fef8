import type { Point, Ring } from './point.ts';

/**
 * Which way a → b → c turns: positive = left, negative = right, 0 = straight on. It is twice the triangle's area, and
 * exact for whole numbers no farther apart than the extent limit.
 */
export function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

export type Whereabouts = 'inside' | 'outside' | 'on';

/** Where a point lies against a ring, whichever way it runs. Exact on the grid: 'on' means exactly on its line. */
export function locate(point: Point, ring: Ring): Whereabouts {
  let inside = false;
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    const above = a.y > point.y;
    if (above !== b.y > point.y) {
      const side = above ? turn(b, a, point) : turn(a, b, point);
      if (side === 0) return 'on';
      if (side > 0) inside = !inside;
    } else if (
      (a.y === point.y || b.y === point.y) &&
      Math.min(a.x, b.x) <= point.x &&
      point.x <= Math.max(a.x, b.x) &&
      Math.min(a.y, b.y) <= point.y &&
      point.y <= Math.max(a.y, b.y) &&
      turn(a, b, point) === 0
    ) {
      return 'on';
    }
    a = b;
  }
  return inside ? 'inside' : 'outside';
}

/** Distance from a point to a straight edge, grid units, a float. */
export function distanceToEdge(point: Point, a: Point, b: Point): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const px = point.x - a.x;
  const py = point.y - a.y;
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy) / square));
  const ox = px - t * dx;
  const oy = py - t * dy;
  return Math.sqrt(ox * ox + oy * oy);
}

/** Distance from a point to the nearest edge of a ring, grid units, a float. */
export function distanceToRing(point: Point, ring: Ring): number {
  let least = Number.POSITIVE_INFINITY;
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    const distance = distanceToEdge(point, a, b);
    if (distance < least) least = distance;
    a = b;
  }
  return least;
}
