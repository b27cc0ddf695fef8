import { boxesMeet, boxOfEdge } from '../../geometry/box.ts';
import { type Chain, edgeCount } from '../../geometry/chain.ts';
import { edgesCross, meetingPoint } from '../../geometry/crossings.ts';
import { distanceToRing, locate } from '../../geometry/locate.ts';
import { edgeEnd, edgeStart, visitEdgesNear } from '../../geometry/nearby.ts';
import { type Point, samePoint } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';

/** Where the edges of two chains cross, each going clear through the other. */
export function chainCrossings(a: Chain, b: Chain): Point[] {
  const places: Point[] = [];
  const count = edgeCount(a);
  for (let i = 0; i < count; i++) {
    const from = edgeStart(a, i);
    const to = edgeEnd(a, i);
    visitEdgesNear(b, boxOfEdge(from, to), 0, (e) => {
      const c = edgeStart(b, e);
      const d = edgeEnd(b, e);
      if (!edgesCross(from, to, c, d)) return;
      const at = meetingPoint(from, to, c, d);
      if (!places.some((place) => samePoint(place, at))) places.push(at);
    });
  }
  return places;
}

/** Corners of a chain, and middles of its edges, that lie inside a closed chain and more than `depth` from its line. */
export function placesInside(chain: Chain, other: Chain, depth: Grid): Point[] {
  if (!boxesMeet(chain.box, other.box, 0)) return [];
  const places: Point[] = [];
  const look = (point: Point): void => {
    const { minX, minY, maxX, maxY } = other.box;
    if (point.x < minX || point.x > maxX || point.y < minY || point.y > maxY) return;
    if (locate(point, other.points) !== 'inside') return;
    if (distanceToRing(point, other.points) > depth) places.push(point);
  };
  const count = edgeCount(chain);
  for (let i = 0; i < count; i++) {
    const a = edgeStart(chain, i);
    const b = edgeEnd(chain, i);
    look(a);
    look({ x: Math.round((a.x + b.x) / 2), y: Math.round((a.y + b.y) / 2) });
  }
  const last = chain.points[chain.points.length - 1];
  if (!chain.closed && last) look(last);
  return places;
}

/** Places that show that two closed chains overlap by more than a strip `depth` wide along their lines. */
export function overlapPlaces(a: Chain, b: Chain, depth: Grid): Point[] {
  const inside = [...placesInside(a, b, depth), ...placesInside(b, a, depth)];
  if (inside.length > 0 || isSameRing(a, b)) return inside.length > 0 ? inside : [a.points[0]!];
  // Like the bars of a plus sign: lines that cross with no corner of either inside the other.
  return chainCrossings(a, b).filter((at) =>
    [a, b].every((chain) => chain.points.every((p) => Math.hypot(p.x - at.x, p.y - at.y) > depth)),
  );
}

function isSameRing(a: Chain, b: Chain): boolean {
  return (
    a.points.every((p) => locate(p, b.points) === 'on') &&
    b.points.every((p) => locate(p, a.points) === 'on')
  );
}

/** Whether two welded chains share a corner, cross, or lie one in the other. */
export function chainsTouch(a: Chain, b: Chain): boolean {
  if (!boxesMeet(a.box, b.box, 0)) return false;
  const corners = new Set(a.points.map(({ x, y }) => `${x} ${y}`));
  if (b.points.some(({ x, y }) => corners.has(`${x} ${y}`))) return true;
  if (chainCrossings(a, b).length > 0) return true;
  return holds(a, b) || holds(b, a);
}

function holds(outer: Chain, inner: Chain): boolean {
  return (
    outer.closed &&
    outer.points.length > 2 &&
    inner.points.some((p) => locate(p, outer.points) === 'inside')
  );
}
