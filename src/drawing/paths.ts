import { arcOf } from '../geometry/arc.ts';
import type { ArcOf, Point } from '../geometry/point.ts';
import type { Outline, Shape } from '../job/job.ts';
import type { PourEdge, PourRing } from '../takeoff/outline/pour.ts';
import type { Path, Segment } from './marks.ts';

/** An edge to be drawn or measured: straight, or an arc. */
export interface Side {
  readonly from: Point;
  readonly to: Point;
  readonly arc?: ArcOf;
}

export function plain({ x, y }: Point): Point {
  return { x, y };
}

function segment(to: Point, arc: ArcOf | undefined): Segment {
  return arc ? { to: plain(to), arc } : { to: plain(to) };
}

export function edgePath({ from, to, arc }: Side): Path {
  return { start: plain(from), segments: [segment(to, arc)], closed: false };
}

export function ringPath({ edges }: PourRing): Path {
  const first = edges[0]!;
  return {
    start: plain(first.from),
    segments: edges.map(({ to, arc }: PourEdge) => segment(to, arc)),
    closed: true,
  };
}

/** The edges of an outline as it was drawn; edge i leaves corner i. */
export function sidesOf({ corners, closed }: Outline): readonly Side[] {
  const last = closed ? corners.length : corners.length - 1;
  return corners.slice(0, Math.max(0, last)).map((corner, index) => {
    const next = corners[index + 1] ?? corners[0]!;
    const hasArc = corner.rise !== 0 && (corner.x !== next.x || corner.y !== next.y);
    const side = { from: plain(corner), to: plain(next) };
    return hasArc ? { ...side, arc: arcOf(corner, next, corner.rise) } : side;
  });
}

export function circlePath(center: Point, radius: number): Path {
  const start = { x: center.x + radius, y: center.y };
  const far = { x: center.x - radius, y: center.y };
  const arc = { cx: center.x, cy: center.y, radius, sweep: Math.PI };
  return {
    start,
    segments: [
      { to: far, arc },
      { to: start, arc },
    ],
    closed: true,
  };
}

/** A shape as a path; nothing for one with no corner, or with a number that can't be drawn. */
export function shapePath(shape: Shape): Path | undefined {
  if (shape.form === 'round') {
    const { center, diameter } = shape;
    const drawable = [center.x, center.y, diameter].every(Number.isFinite) && diameter > 0;
    return drawable ? circlePath(center, diameter / 2) : undefined;
  }
  const first = shape.corners[0];
  if (!first) return undefined;
  const drawable = shape.corners.every(({ x, y, rise }) => [x, y, rise].every(Number.isFinite));
  if (!drawable) return undefined;
  return {
    start: plain(first),
    segments: sidesOf(shape).map(({ to, arc }) => segment(to, arc)),
    closed: shape.closed,
  };
}

export function polyline(points: readonly Point[], closed = false): Path {
  const [start, ...rest] = points;
  return { start: start!, segments: rest.map((to) => ({ to })), closed };
}

/** Points along a path: its corners, and its arcs as chords of at most an eighth of a turn over `parts`. */
export function pathPoints({ start, segments }: Path, parts = 2): Point[] {
  const points = [start];
  let from = start;
  for (const { to, arc } of segments) {
    if (arc) points.push(...arcPoints(from, arc, parts));
    points.push(to);
    from = to;
  }
  return points;
}

/** Points on an arc between its ends, its ends left out. */
export function arcPoints(
  from: Point,
  arc: NonNullable<Segment['arc']>,
  parts: number,
): readonly Point[] {
  const count = Math.max(2, Math.ceil((Math.abs(arc.sweep) / (Math.PI / 4)) * parts));
  const begin = Math.atan2(from.y - arc.cy, from.x - arc.cx);
  return Array.from({ length: count - 1 }, (_, i) => {
    const angle = begin + (arc.sweep * (i + 1)) / count;
    return {
      x: arc.cx + arc.radius * Math.cos(angle),
      y: arc.cy + arc.radius * Math.sin(angle),
    };
  });
}

/** A side moved to its right by a distance (the pour lies to the left of its edges). */
export function movedRight({ from, to, arc }: Side, distance: number): Side {
  if (arc) {
    // To the right of a counter-clockwise arc is away from its centre.
    const radius = arc.radius + distance * Math.sign(arc.sweep);
    const grow = radius / arc.radius;
    const move = (point: Point): Point => ({
      x: arc.cx + (point.x - arc.cx) * grow,
      y: arc.cy + (point.y - arc.cy) * grow,
    });
    return { from: move(from), to: move(to), arc: { ...arc, radius } };
  }
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length === 0) return { from, to };
  const dx = (distance * (to.y - from.y)) / length;
  const dy = (-distance * (to.x - from.x)) / length;
  return { from: { x: from.x + dx, y: from.y + dy }, to: { x: to.x + dx, y: to.y + dy } };
}

/** The band between a side and itself moved to its right. */
export function bandPath(side: Side, distance: number): Path {
  const moved = movedRight(side, distance);
  const back = moved.arc && { ...moved.arc, sweep: -moved.arc.sweep };
  return {
    start: plain(side.from),
    segments: [segment(side.to, side.arc), { to: moved.to }, segment(moved.from, back)],
    closed: true,
  };
}
