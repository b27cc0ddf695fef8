import { type Box, boxOfEdge } from '../../geometry/box.ts';
import { distanceToEdge } from '../../geometry/locate.ts';
import type { ArcOf, Point } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';
import type { PourEdge } from '../outline/pour.ts';

/** An open span of a track, floats, along it from its start. */
export type TrackSpan = readonly [number, number];

/** What the middles of stakes stand on along one edge of a run: a straight, or an arc about the edge's own centre. */
export type Track = Straight | Arc;

interface Straight {
  readonly is: 'straight';
  readonly length: number;
  readonly box: Box;
  readonly origin: Point;
  /** The way it goes, a unit. */
  readonly dx: number;
  readonly dy: number;
}

interface Arc {
  readonly is: 'arc';
  readonly length: number;
  readonly box: Box;
  readonly center: Point;
  readonly radius: number;
  /** Direction of its start from the centre, and of how much it turns: counter-clockwise 1, clockwise -1. */
  readonly start: number;
  readonly way: number;
  readonly sweep: number;
}

/** The track `off` outside of an edge; nothing where a curve is too tight for one. */
export function trackOf(edge: PourEdge, off: Grid): Track | undefined {
  if (edge.arc) return arcTrack(edge.from, edge.arc, off);
  const { from, to } = edge;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const dx = length === 0 ? 1 : (to.x - from.x) / length;
  const dy = length === 0 ? 0 : (to.y - from.y) / length;
  // The pour lies to its left, so outward is to the right.
  return straightTrack({ x: from.x + off * dy, y: from.y - off * dx }, dx, dy, length);
}

/** From `origin` along the unit (dx, dy). */
export function straightTrack(origin: Point, dx: number, dy: number, length: number): Track {
  const end = { x: origin.x + length * dx, y: origin.y + length * dy };
  return { is: 'straight', origin, dx, dy, length, box: boxOfEdge(origin, end) };
}

function arcTrack(from: Point, arc: ArcOf, off: Grid): Track | undefined {
  const { cx, cy } = arc;
  const radius = arc.radius + (arc.sweep > 0 ? off : -off);
  if (!(radius > 0)) return undefined;
  const sweep = Math.abs(arc.sweep);
  return {
    is: 'arc',
    length: radius * sweep,
    // Of the whole circle: a little more is looked at than there is.
    box: { minX: cx - radius, minY: cy - radius, maxX: cx + radius, maxY: cy + radius },
    center: { x: cx, y: cy },
    radius,
    start: Math.atan2(from.y - cy, from.x - cx),
    way: Math.sign(arc.sweep),
    sweep,
  };
}

/** A place so far along a track. */
export function placeOn(track: Track, along: number): Point {
  if (track.is === 'straight') {
    const { origin, dx, dy } = track;
    return { x: origin.x + along * dx, y: origin.y + along * dy };
  }
  const { center, radius, start, way } = track;
  const angle = start + (way * along) / radius;
  return { x: center.x + radius * Math.cos(angle), y: center.y + radius * Math.sin(angle) };
}

/** Adds to `spans` those of a track that are nearer than `reach` to the edge a–b. */
export function addNear(track: Track, a: Point, b: Point, reach: Grid, spans: TrackSpan[]): void {
  if (track.is === 'arc') addNearArc(track, a, b, reach, spans);
  else addNearStraight(track, a, b, reach, spans);
}

function addNearStraight(
  { origin, dx, dy, length }: Straight,
  a: Point,
  b: Point,
  reach: Grid,
  spans: TrackSpan[],
): void {
  // Reckoned along the track (x) and to its left (y).
  const ay = (a.y - origin.y) * dx - (a.x - origin.x) * dy;
  const by = (b.y - origin.y) * dx - (b.x - origin.x) * dy;
  if (ay >= reach && by >= reach) return;
  if (ay <= -reach && by <= -reach) return;
  const ax = (a.x - origin.x) * dx + (a.y - origin.y) * dy;
  const bx = (b.x - origin.x) * dx + (b.y - origin.y) * dy;
  if (Math.max(ax, bx) <= -reach || Math.min(ax, bx) >= length + reach) return;
  const span = nearBar(ax, ay, bx, by, reach);
  if (span) spans.push(span);
}

/** The stretch of the line y = 0 nearer than `reach` to a straight edge: one stretch, as that is a rounded bar. */
function nearBar(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  reach: number,
): TrackSpan | undefined {
  let lo = Number.POSITIVE_INFINITY;
  let hi = Number.NEGATIVE_INFINITY;
  // Its round ends.
  if (Math.abs(ay) < reach) {
    const half = Math.sqrt(reach * reach - ay * ay);
    lo = ax - half;
    hi = ax + half;
  }
  if (Math.abs(by) < reach) {
    const half = Math.sqrt(reach * reach - by * by);
    lo = Math.min(lo, bx - half);
    hi = Math.max(hi, bx + half);
  }
  // Its straight sides: where the foot of the perpendicular falls on the edge, and it is short enough.
  const ex = bx - ax;
  const ey = by - ay;
  const long = Math.hypot(ex, ey);
  if (long > 0) {
    const side = within(-ey / long, (ey * ax - ex * ay) / long, -reach, reach);
    const foot = within(ex, -(ax * ex + ay * ey), 0, long * long);
    const from = Math.max(side[0], foot[0]);
    const to = Math.min(side[1], foot[1]);
    if (from < to) {
      lo = Math.min(lo, from);
      hi = Math.max(hi, to);
    }
  }
  return lo < hi ? [lo, hi] : undefined;
}

/** Where slope · x + offset lies between two limits. */
function within(slope: number, offset: number, least: number, most: number): TrackSpan {
  if (slope === 0) {
    return offset > least && offset < most
      ? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
      : [1, 0];
  }
  const one = (least - offset) / slope;
  const other = (most - offset) / slope;
  return one < other ? [one, other] : [other, one];
}

function addNearArc(track: Arc, a: Point, b: Point, reach: Grid, spans: TrackSpan[]): void {
  const { center, radius, start, way, sweep } = track;
  const da = Math.hypot(a.x - center.x, a.y - center.y);
  const db = Math.hypot(b.x - center.x, b.y - center.y);
  if (Math.max(da, db) <= radius - reach) return;
  if (distanceToEdge(center, a, b) >= radius + reach) return;
  // Where the circle comes as near as that or leaves again: it may do so twice.
  const turns = [0, sweep];
  for (const angle of meetings(center, radius, a, b, reach)) {
    const turned = (way * (angle - start)) % (2 * Math.PI);
    const turn = turned < 0 ? turned + 2 * Math.PI : turned;
    if (turn < sweep) turns.push(turn);
  }
  turns.sort((one, other) => one - other);
  for (let i = 1; i < turns.length; i++) {
    const middle = (radius * (turns[i - 1]! + turns[i]!)) / 2;
    if (distanceToEdge(placeOn(track, middle), a, b) < reach) {
      spans.push([radius * turns[i - 1]!, radius * turns[i]!]);
    }
  }
}

/** Directions from a circle's centre in which it meets the outline of an edge widened by `reach`, and some more. */
function meetings(
  { x: cx, y: cy }: Point,
  radius: number,
  a: Point,
  b: Point,
  reach: number,
): readonly number[] {
  const angles: number[] = [];
  for (const { x, y } of [a, b]) {
    const apart = Math.hypot(x - cx, y - cy);
    if (apart === 0) continue;
    const cos = (radius * radius + apart * apart - reach * reach) / (2 * radius * apart);
    if (Math.abs(cos) > 1) continue;
    const toward = Math.atan2(y - cy, x - cx);
    angles.push(toward - Math.acos(cos), toward + Math.acos(cos));
  }
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  if (long === 0) return angles;
  // The edge's own line lies `away` to the left of the centre as one looks along it.
  const away = ((b.x - a.x) * (a.y - cy) - (b.y - a.y) * (a.x - cx)) / long;
  const along = Math.atan2(b.y - a.y, b.x - a.x);
  for (const side of [away - reach, away + reach]) {
    if (Math.abs(side) > radius) continue;
    const lift = Math.asin(side / radius);
    angles.push(along + lift, along + Math.PI - lift);
  }
  return angles;
}
