import { boxOfEdge } from './box.ts';
import { edgesNear, indexEdges } from './edgeIndex.ts';
import { turn } from './locate.ts';
import { type Point, type Ring, samePoint } from './point.ts';
import { toGrid } from './round.ts';

/** Fewer edges than this are compared pair by pair; an index costs more than it saves. */
const FEW = 48;

/**
 * Where a ring crosses itself or runs over itself, each place once, to the nearest grid unit. A ring that only touches
 * itself, at a corner or on an edge, doesn't cross. Every decision is exact on the grid.
 */
export function selfCrossings(ring: Ring): Point[] {
  const points = ring.filter((point, i) => !samePoint(point, ring[(i + 1) % ring.length]!));
  const count = points.length;
  const found = new Map<string, Point>();
  if (count < 3) return [];
  const compare = (i: number, j: number): void => {
    const at = crossingOf(points, i, j);
    if (at) found.set(`${at.x} ${at.y}`, at);
  };
  if (count <= FEW) {
    for (let i = 0; i < count; i++) for (let j = i + 1; j < count; j++) compare(i, j);
  } else {
    const index = indexEdges(points, true);
    for (let i = 0; i < count; i++) {
      const a = points[i]!;
      const b = points[i + 1 === count ? 0 : i + 1]!;
      edgesNear(index, boxOfEdge(a, b), 0, (j) => {
        if (j > i) compare(i, j);
      });
    }
  }
  return [...found.values()].sort((a, b) => a.x - b.x || a.y - b.y);
}

/** Whether two straight edges cross with each going from one side of the other to the other side. Exact. */
export function edgesCross(a: Point, b: Point, c: Point, d: Point): boolean {
  const abc = turn(a, b, c);
  const abd = turn(a, b, d);
  if ((abc > 0 && abd > 0) || (abc < 0 && abd < 0) || abc === 0 || abd === 0) return false;
  const cda = turn(c, d, a);
  const cdb = turn(c, d, b);
  return (cda > 0 && cdb < 0) || (cda < 0 && cdb > 0);
}

/** Where the lines of two edges that cross meet, to the nearest grid unit. */
export function meetingPoint(a: Point, b: Point, c: Point, d: Point): Point {
  const toA = turn(c, d, a);
  const t = toA / (toA - turn(c, d, b));
  return { x: a.x + toGrid(t * (b.x - a.x)), y: a.y + toGrid(t * (b.y - a.y)) };
}

function boxesApart(a: Point, b: Point, c: Point, d: Point): boolean {
  return (
    Math.max(a.x, b.x) < Math.min(c.x, d.x) ||
    Math.max(c.x, d.x) < Math.min(a.x, b.x) ||
    Math.max(a.y, b.y) < Math.min(c.y, d.y) ||
    Math.max(c.y, d.y) < Math.min(a.y, b.y)
  );
}

/** Where edges i < j of a ring cross, overlap, or pass through each other at a corner. */
function crossingOf(points: readonly Point[], i: number, j: number): Point | undefined {
  const count = points.length;
  const a = points[i]!;
  const b = points[(i + 1) % count]!;
  const c = points[j]!;
  const d = points[(j + 1) % count]!;
  if (boxesApart(a, b, c, d)) return undefined;
  const abc = turn(a, b, c);
  const abd = turn(a, b, d);
  if (abc === 0 && abd === 0) return overlapStart(a, b, c, d);
  if (j === i + 1 || (i === 0 && j === count - 1)) return undefined;
  if (abc !== 0 && abd !== 0) {
    if (edgesCross(a, b, c, d)) return meetingPoint(a, b, c, d);
  }
  // A corner of one on the other: each corner is looked at once, as the start of its edge.
  if (abc === 0 && between(a, b, c) && !samePoint(c, b) && passesThrough(points, i, j)) return c;
  if (turn(c, d, a) === 0 && between(c, d, a) && !samePoint(a, d) && !samePoint(a, c)) {
    if (passesThrough(points, j, i)) return a;
  }
  return undefined;
}

/** Where the overlap of two edges on one line begins, if it has any length. */
function overlapStart(a: Point, b: Point, c: Point, d: Point): Point | undefined {
  const along = (p: Point) => (b.x - a.x) * (p.x - a.x) + (b.y - a.y) * (p.y - a.y);
  const [near, far] = along(c) < along(d) ? [c, d] : [d, c];
  const start = along(near) > 0 ? near : a;
  const end = along(far) < along(b) ? far : b;
  return along(end) > along(start) ? start : undefined;
}

function between(a: Point, b: Point, p: Point): boolean {
  return (
    Math.min(a.x, b.x) <= p.x &&
    p.x <= Math.max(a.x, b.x) &&
    Math.min(a.y, b.y) <= p.y &&
    p.y <= Math.max(a.y, b.y)
  );
}

/**
 * Whether the ring, going through corner `corner` (which lies on edge `edge`), goes from one side of the ring's other
 * pass to the other side: the two ways in and out of one pass separate those of the other.
 */
function passesThrough(points: readonly Point[], edge: number, corner: number): boolean {
  const count = points.length;
  const at = points[corner]!;
  const before = points[(corner + count - 1) % count]!;
  const after = points[(corner + 1) % count]!;
  const start = points[edge]!;
  const end = points[(edge + 1) % count]!;
  const from = samePoint(start, at) ? points[(edge + count - 1) % count]! : start;
  return isLeftOf(from, at, end, before) !== isLeftOf(from, at, end, after);
}

/** Whether p lies to the left of the way from → at → to, looking out from `at`. */
function isLeftOf(from: Point, at: Point, to: Point, p: Point): boolean {
  const leftOfIn = turn(from, at, p) > 0;
  const leftOfOut = turn(at, to, p) > 0;
  return turn(from, at, to) >= 0 ? leftOfIn && leftOfOut : leftOfIn || leftOfOut;
}
