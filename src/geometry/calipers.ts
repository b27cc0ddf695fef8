import type { Point, Ring } from './point.ts';

/** How a shape measures: its least rectangle, by girth, and the least it measures across in any direction. Floats. */
export interface Girth {
  readonly length: number;
  readonly width: number;
  readonly narrowest: number;
  /** Direction of the length, radians. */
  readonly way: number;
}

/**
 * The rectangle of least girth round a ring, which lies along an edge of its hull, and the least width of the ring, which
 * is square to one. (Of least area there may be several of quite other proportions: a right triangle has three.)
 */
export function girthOf(ring: Ring): Girth {
  const hull = hullOf(ring);
  let best = { length: 0, width: 0, way: 0 };
  let girth = Number.POSITIVE_INFINITY;
  let narrowest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < hull.length; i++) {
    const a = hull[i]!;
    const b = hull[(i + 1) % hull.length]!;
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    if (long === 0) continue;
    const dx = (b.x - a.x) / long;
    const dy = (b.y - a.y) / long;
    let low = 0;
    let high = long;
    let depth = 0;
    for (const { x, y } of hull) {
      const along = dx * (x - a.x) + dy * (y - a.y);
      const off = dx * (y - a.y) - dy * (x - a.x);
      if (along < low) low = along;
      if (along > high) high = along;
      if (off > depth) depth = off;
    }
    const across = high - low;
    if (depth < narrowest) narrowest = depth;
    if (across + depth >= girth) continue;
    girth = across + depth;
    best = {
      length: Math.max(across, depth),
      width: Math.min(across, depth),
      way: across < depth ? Math.atan2(dx, -dy) : Math.atan2(dy, dx),
    };
  }
  return { ...best, narrowest: hull.length > 2 ? narrowest : 0 };
}

/** The corners of the least convex shape round a ring, counter-clockwise. */
function hullOf(ring: Ring): readonly Point[] {
  const sorted = ring.toSorted((a, b) => a.x - b.x || a.y - b.y);
  const half = (places: readonly Point[]): Point[] => {
    const kept: Point[] = [];
    for (const place of places) {
      while (kept.length > 1 && !turnsLeft(kept.at(-2)!, kept.at(-1)!, place)) kept.pop();
      kept.push(place);
    }
    kept.pop();
    return kept;
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}

function turnsLeft(a: Point, b: Point, c: Point): boolean {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) > 0;
}
