import type { ArcOf, Point } from './point.ts';

/** The nearest place on an edge to a point. Floats: only for choosing, the chosen place is put on the grid. */
export interface Near {
  readonly x: number;
  readonly y: number;
  /** Along the edge: 0 at its start, 1 at its end. */
  readonly t: number;
  readonly distance: number;
}

/** The place on an edge, straight or an arc, that is nearest to a point. */
export function nearestOnEdge(
  from: Point,
  to: Point,
  arc: ArcOf | null | undefined,
  at: Point,
): Near {
  return arc ? nearestOnArc(from, arc, at) : nearestOnStraight(from, to, at);
}

function nearestOnStraight(from: Point, to: Point, at: Point): Near {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((at.x - from.x) * dx + (at.y - from.y) * dy) / square;
  const t = Math.min(1, Math.max(0, along));
  const x = from.x + t * dx;
  const y = from.y + t * dy;
  return { x, y, t, distance: Math.hypot(at.x - x, at.y - y) };
}

function nearestOnArc(from: Point, arc: ArcOf, at: Point): Near {
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
