import { locate } from '../geometry/locate.ts';
import type { Point } from '../geometry/point.ts';
import type { SiteEdge, SiteGround } from './site.ts';

/** The nearest place on an edge to a point. Floats: only for choosing, the chosen place is put on the grid. */
export interface Near {
  readonly x: number;
  readonly y: number;
  /** Along the edge: 0 at its start, 1 at its end. */
  readonly t: number;
  readonly distance: number;
}

export function nearestOn(edge: SiteEdge, at: Point): Near {
  return edge.arc ? nearestOnArc(edge, at) : nearestOnStraight(edge.from, edge.to, at);
}

export function nearestOnStraight(from: Point, to: Point, at: Point): Near {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((at.x - from.x) * dx + (at.y - from.y) * dy) / square;
  const t = Math.min(1, Math.max(0, along));
  const x = from.x + t * dx;
  const y = from.y + t * dy;
  return { x, y, t, distance: Math.hypot(at.x - x, at.y - y) };
}

function nearestOnArc({ from, to, arc }: SiteEdge, at: Point): Near {
  if (!arc) return nearestOnStraight(from, to, at);
  const start = Math.atan2(from.y - arc.cy, from.x - arc.cx);
  const here = Math.atan2(at.y - arc.cy, at.x - arc.cx);
  const turn = 2 * Math.PI;
  const way = arc.sweep < 0 ? -1 : 1;
  const swept = ((((here - start) * way) % turn) + turn) % turn;
  const size = Math.abs(arc.sweep);
  // Past the end: the nearer of the two ends.
  const t = swept <= size ? swept / size : swept - size < turn - swept ? 1 : 0;
  const angle = start + t * arc.sweep;
  const x = arc.cx + arc.radius * Math.cos(angle);
  const y = arc.cy + arc.radius * Math.sin(angle);
  return { x, y, t, distance: Math.hypot(at.x - x, at.y - y) };
}

/** Whether a point is on what a feature covers. Crossing outlines count by odd and even. */
export function covers(ground: SiteGround, at: Point): boolean {
  if (ground.round) {
    const { center, diameter } = ground.round;
    return Math.hypot(at.x - center.x, at.y - center.y) <= diameter / 2;
  }
  return locate(at, ground.ring) !== 'outside';
}
