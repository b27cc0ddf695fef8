import { type Box, boxesMeet, boxOf, boxOfEdge } from '../../geometry/box.ts';
import { type EdgeIndex, edgesNear, indexEdges } from '../../geometry/edgeIndex.ts';
import type { Point, Polygon, Ring } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';
import type { PourEdge } from '../outline/pour.ts';
import type { FormRun } from '../result.ts';
import { inPour, type Obstacle, obstacleAt } from './blocked.ts';
import type { Stretch } from './leastStakes.ts';
import { HALF_STAKE } from './rules.ts';

/** All that a stake must clear: what stands there, and the pour. */
export interface Ground {
  readonly obstacles: readonly Obstacle[];
  readonly polygons: readonly Polygon[];
  /** Every ring of the pour; one with many edges has them sorted. */
  readonly rings: readonly { readonly ring: Ring; readonly box: Box; readonly index?: EdgeIndex }[];
}

/** Fewer edges than this are walked quicker than sorted. */
const MANY = 200;

export function groundOf(obstacles: readonly Obstacle[], polygons: readonly Polygon[]): Ground {
  const rings = polygons
    .flatMap(({ outer, holes }) => [outer, ...holes])
    .map((ring) =>
      ring.length > MANY
        ? { ring, box: boxOf(ring), index: indexEdges(ring, true) }
        : { ring, box: boxOf(ring) },
    );
  return { obstacles, polygons, rings };
}

/** The line that the middles of stakes stand on, along one edge of a run: from `origin` along the unit (dx, dy). */
interface StakeLine {
  readonly origin: Point;
  readonly dx: number;
  readonly dy: number;
  readonly length: number;
}

/** An open stretch of a stake line, floats, along it from its origin. */
type Span = readonly [number, number];

/**
 * The stretches of a straight run, whole grid units along it and in order, on which the middle of a stake can stand: no
 * part of the stake, taken as round, would be in an obstacle or in the pour. In closed form: the line of the stakes
 * against every edge widened by half a stake, and between those whether it lies inside.
 * @param off From the form face to the middles of the stakes.
 */
export function clearStretches(run: FormRun, off: Grid, ground: Ground): readonly Stretch[] {
  const clear: { from: Grid; to: Grid }[] = [];
  let start = 0;
  for (const edge of run.edges) {
    const line = stakeLine(edge, off);
    // Lengths along a run are rounded once an edge.
    const scale = line.length === 0 ? 0 : edge.length / line.length;
    for (const [lo, hi] of clearSpans(line, ground)) {
      const from = start + Math.ceil(lo * scale);
      const to = start + (hi === line.length ? edge.length : Math.floor(hi * scale));
      if (from > to) continue;
      const last = clear.at(-1);
      if (last && last.to === from) last.to = to;
      else clear.push({ from, to });
    }
    start += edge.length;
  }
  return clear;
}

function stakeLine({ from, to }: PourEdge, off: Grid): StakeLine {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const dx = length === 0 ? 1 : (to.x - from.x) / length;
  const dy = length === 0 ? 0 : (to.y - from.y) / length;
  // The pour lies to the left, so outward is to the right.
  return { origin: { x: from.x + off * dy, y: from.y - off * dx }, dx, dy, length };
}

function placeOn({ origin, dx, dy }: StakeLine, along: number): Point {
  return { x: origin.x + along * dx, y: origin.y + along * dy };
}

function clearSpans(line: StakeLine, { obstacles, polygons, rings }: Ground): readonly Span[] {
  const box = boxOfEdge(line.origin, placeOn(line, line.length));
  const near = obstacles.filter((one) => boxesMeet(box, one.box, HALF_STAKE));
  const blocked: Span[] = [];
  const block = (a: Point, b: Point) => {
    const span = blockedBy(line, a, b);
    if (span) blocked.push(span);
  };
  const blockAll = (ring: Ring) => {
    let a = ring[ring.length - 1]!;
    for (const b of ring) {
      block(a, b);
      a = b;
    }
  };
  for (const { ring } of near) blockAll(ring);
  for (const { ring, box: around, index } of rings) {
    if (!boxesMeet(box, around, HALF_STAKE)) continue;
    if (!index) blockAll(ring);
    else edgesNear(index, box, HALF_STAKE, (i) => block(ring[i]!, ring[(i + 1) % ring.length]!));
  }
  blocked.sort((a, b) => a[0] - b[0]);
  const clear: Span[] = [];
  // Between places near an edge the line crosses none, so its middle tells for the whole of it.
  const keep = (lo: number, hi: number) => {
    if (lo > hi) return;
    const middle = placeOn(line, (lo + hi) / 2);
    if (!inPour(middle, polygons) && !obstacleAt(middle, near)) clear.push([lo, hi]);
  };
  let at = 0;
  for (const [lo, hi] of blocked) {
    if (lo >= at) keep(at, Math.min(lo, line.length));
    at = Math.max(at, hi);
  }
  keep(at, line.length);
  return clear;
}

/**
 * The stretch of a line that is nearer than half a stake to the edge a–b: one stretch, as that is a rounded bar. Reckoned
 * along the line (x) and to its left (y).
 */
function blockedBy({ origin, dx, dy, length }: StakeLine, a: Point, b: Point): Span | undefined {
  const ay = (a.y - origin.y) * dx - (a.x - origin.x) * dy;
  const by = (b.y - origin.y) * dx - (b.x - origin.x) * dy;
  if (ay >= HALF_STAKE && by >= HALF_STAKE) return undefined;
  if (ay <= -HALF_STAKE && by <= -HALF_STAKE) return undefined;
  const ax = (a.x - origin.x) * dx + (a.y - origin.y) * dy;
  const bx = (b.x - origin.x) * dx + (b.y - origin.y) * dy;
  if (Math.max(ax, bx) <= -HALF_STAKE || Math.min(ax, bx) >= length + HALF_STAKE) return undefined;
  let lo = Number.POSITIVE_INFINITY;
  let hi = Number.NEGATIVE_INFINITY;
  const widen = (from: number, to: number) => {
    lo = Math.min(lo, from);
    hi = Math.max(hi, to);
  };
  // Its round ends.
  for (const [x, y] of [
    [ax, ay],
    [bx, by],
  ] as const) {
    if (Math.abs(y) >= HALF_STAKE) continue;
    const reach = Math.sqrt(HALF_STAKE * HALF_STAKE - y * y);
    widen(x - reach, x + reach);
  }
  // Its straight sides: where the foot of the perpendicular falls on the edge, and it is short enough.
  const [ex, ey] = [bx - ax, by - ay];
  const long = Math.hypot(ex, ey);
  if (long > 0) {
    const side = within(-ey / long, (ey * ax - ex * ay) / long, -HALF_STAKE, HALF_STAKE);
    const foot = within(ex, -(ax * ex + ay * ey), 0, long * long);
    const from = Math.max(side[0], foot[0]);
    const to = Math.min(side[1], foot[1]);
    if (from < to) widen(from, to);
  }
  return lo < hi ? [lo, hi] : undefined;
}

/** Where slope · x + offset lies between two limits. */
function within(slope: number, offset: number, least: number, most: number): Span {
  if (slope === 0) {
    return offset > least && offset < most
      ? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
      : [1, 0];
  }
  const one = (least - offset) / slope;
  const other = (most - offset) / slope;
  return one < other ? [one, other] : [other, one];
}
