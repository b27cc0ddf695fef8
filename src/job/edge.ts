import { arcOf } from '../geometry/arc.ts';
import type { Point } from '../geometry/point.ts';
import { toGrid } from '../geometry/round.ts';
import type { Corner } from './job.ts';

/** The nearest place on the grid. (Adding nothing makes -0 plain 0.) */
export function onGrid(x: number, y: number): Point {
  return { x: toGrid(x) + 0, y: toGrid(y) + 0 };
}

/** The place at `t` of an edge, 0 its start and 1 its end, along the chord or along the arc; on the grid. */
export function alongEdge(start: Corner, end: Point, t: number): Point {
  if (t === 0 || t === 1) return t === 0 ? { x: start.x, y: start.y } : { x: end.x, y: end.y };
  if (start.rise === 0) {
    return onGrid(start.x + t * (end.x - start.x), start.y + t * (end.y - start.y));
  }
  const { cx, cy, sweep } = arcOf(start, end, start.rise);
  const cos = Math.cos(t * sweep);
  const sin = Math.sin(t * sweep);
  const dx = start.x - cx;
  const dy = start.y - cy;
  return onGrid(cx + cos * dx - sin * dy, cy + sin * dx + cos * dy);
}

/** Where along an edge a point lies, or would if it were moved onto it: 0 at the start or before, 1 at the end or beyond. */
export function nearestAlong(start: Corner, end: Point, point: Point): number {
  const bounded = (t: number) => Math.min(1, Math.max(0, t));
  if (start.rise === 0) {
    const dx = end.x - start.x;
    const dy = end.y - start.y;
    return bounded(((point.x - start.x) * dx + (point.y - start.y) * dy) / (dx * dx + dy * dy));
  }
  const { cx, cy, sweep } = arcOf(start, end, start.rise);
  const turned = Math.atan2(point.y - cy, point.x - cx) - Math.atan2(start.y - cy, start.x - cx);
  const full = 2 * Math.PI;
  // The turn from the start in the direction of the sweep, from 0 to a full turn.
  const along = (((turned * Math.sign(sweep)) % full) + full) % full;
  const span = Math.abs(sweep);
  // Beyond the end, whichever end is nearer.
  if (along > span) return along - span < full - along ? 1 : 0;
  return bounded(along / span);
}

/** The rise of a part of an arc that takes up `share` of its sweep, on the grid. */
export function riseOfPart(start: Corner, end: Point, share: number): number {
  if (start.rise === 0) return 0;
  const { radius, sweep } = arcOf(start, end, start.rise);
  const rise = radius * (1 - Math.cos((share * sweep) / 2));
  return toGrid(Math.sign(sweep) * rise) + 0;
}

/**
 * The rise of the arc from `start` over `middle` to `end`, on the grid, and 0 where the three lie in line.
 * For two chords that meet at `middle`, both on one circle.
 */
export function riseThrough(start: Point, middle: Point, end: Point): number {
  const dx = end.x - start.x;
  const dy = end.y - start.y;
  const px = middle.x - start.x;
  const py = middle.y - start.y;
  const cross = dx * py - dy * px;
  const chord = Math.hypot(dx, dy);
  if (cross === 0 || chord === 0) return 0;
  // The angle at `middle` is half of what the rest of the circle sweeps: rise = c/2 · cot(angle/2).
  const angle = Math.acos(
    Math.min(
      1,
      Math.max(
        -1,
        (px * (px - dx) + py * (py - dy)) / (Math.hypot(px, py) * Math.hypot(px - dx, py - dy)),
      ),
    ),
  );
  const rise = chord / 2 / Math.tan(angle / 2);
  // A middle to the right of the way is a positive rise.
  return toGrid(cross < 0 ? rise : -rise) + 0;
}
