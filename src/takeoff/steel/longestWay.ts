import type { Grid } from '../../units/grid.ts';
import type { NetPour, PourEdge } from '../outline/pour.ts';

/**
 * Direction of the longest straight side of the pour, radians: the way that mesh is laid along. A side goes on
 * through joints where only what it meets changes. Of sides as long as each other (within `closeness`) the first counts,
 * so that turning the job doesn't choose another.
 */
export function longestWay(pour: NetPour, closeness: Grid): number {
  let longest = -closeness;
  let way = 0;
  for (const { rings } of pour.pieces) {
    for (const { edges } of rings) {
      for (let i = 0; i < edges.length; i++) {
        const first = edges[i]!;
        if (first.arc || goesStraightOn(edges.at(i - 1)!, first, closeness)) continue;
        let last = first;
        for (let j = 1; j < edges.length; j++) {
          const next = edges[(i + j) % edges.length]!;
          if (!goesStraightOn(last, next, closeness)) break;
          last = next;
        }
        const dx = last.to.x - first.from.x;
        const dy = last.to.y - first.from.y;
        const long = Math.sqrt(dx * dx + dy * dy);
        if (long > longest + closeness) {
          longest = long;
          way = Math.atan2(dy, dx);
        }
      }
    }
  }
  return way;
}

/** Whether b carries on in the direction of a, leaving a's line by no more than `closeness`. */
export function goesStraightOn(a: PourEdge, b: PourEdge, closeness: Grid): boolean {
  if (a === b || a.arc || b.arc) return false;
  const ax = a.to.x - a.from.x;
  const ay = a.to.y - a.from.y;
  const bx = b.to.x - b.from.x;
  const by = b.to.y - b.from.y;
  if (ax * bx + ay * by <= 0) return false;
  const off = Math.abs(ax * by - ay * bx);
  // Twice the triangle's area over the longer side: how far the joint lies off a line through both.
  return off <= closeness * Math.max(Math.hypot(ax, ay), Math.hypot(bx, by));
}
