import type { Point } from '../../geometry/point.ts';
import type { PourEdge } from '../outline/pour.ts';

/** A place on the inside face of a form, and the way out of it. */
export interface FacePlace extends Point {
  /** Direction from the face outward, radians. */
  readonly outward: number;
}

/**
 * The place `along` grid units from the start of a run of edges (floats: nothing here is stored before it is rounded).
 * The pour lies to the left of the way, so outward is to the right.
 */
export function placeAlong(edges: readonly PourEdge[], along: number): FacePlace {
  let rest = along;
  let at = 0;
  while (at < edges.length - 1 && rest > edges[at]!.length) {
    rest -= edges[at]!.length;
    at++;
  }
  const { from, to, arc, length } = edges[at]!;
  const t = length === 0 ? 0 : rest / length;
  if (!arc) {
    return {
      x: from.x + t * (to.x - from.x),
      y: from.y + t * (to.y - from.y),
      outward: Math.atan2(from.x - to.x, to.y - from.y),
    };
  }
  const { cx, cy, radius, sweep } = arc;
  const angle = Math.atan2(from.y - cy, from.x - cx) + t * sweep;
  return {
    x: cx + radius * Math.cos(angle),
    y: cy + radius * Math.sin(angle),
    outward: sweep > 0 ? angle : angle + Math.PI,
  };
}
