import { distanceToEdge } from '../../geometry/locate.ts';
import type { Point, Polygon, Ring } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import type { BlockOutSpot, JointLine } from './layout.ts';

type Line = Pick<JointLine, 'from' | 'to'>;

export function lengthOf({ from, to }: Line): number {
  return Math.hypot(to.x - from.x, to.y - from.y);
}

export function endsAt({ from, to }: Line, place: Point, closeness: number): boolean {
  return isNear(from, place, closeness) || isNear(to, place, closeness);
}

export function isNear(a: Point, b: Point, closeness: number): boolean {
  const dx = a.x - b.x;
  const dy = a.y - b.y;
  return dx * dx + dy * dy <= closeness * closeness;
}

export function isOnRing(place: Point, ring: Ring, closeness: number): boolean {
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    if (isByEdge(place, a, b, closeness)) return true;
    a = b;
  }
  return false;
}

/** Within so much of a straight edge; most edges are seen to be farther by their box. */
function isByEdge({ x, y }: Point, a: Point, b: Point, closeness: number): boolean {
  if (x < a.x - closeness && x < b.x - closeness) return false;
  if (x > a.x + closeness && x > b.x + closeness) return false;
  if (y < a.y - closeness && y < b.y - closeness) return false;
  if (y > a.y + closeness && y > b.y + closeness) return false;
  return distanceToEdge({ x, y }, a, b) <= closeness;
}

/** Whether a joint comes to a block-out at one of its corners, or in line with its middle. */
export function meets({ ring, middle, corners }: BlockOutSpot, joint: Line, closeness: number) {
  const inLine = distanceToLine(middle, joint) <= closeness;
  return [joint.from, joint.to].some(
    (end) =>
      isOnRing(end, ring, closeness) &&
      (inLine || corners.some((corner) => isNear(corner, end, closeness))),
  );
}

function distanceToLine(place: Point, { from, to }: Line): number {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  return Math.abs(dx * (place.y - from.y) - dy * (place.x - from.x)) / Math.hypot(dx, dy);
}

/** Where two joints meet, and the least angle there between one of them and the other, degrees. */
export interface Meeting {
  readonly at: Point;
  readonly angle: number;
}

export function meetingOf(a: Line, b: Line, closeness: number): Meeting | undefined {
  const at = meetingPlace(a, b, closeness);
  if (!at) return undefined;
  let angle = 180;
  for (const one of raysFrom(at, a, closeness)) {
    for (const other of raysFrom(at, b, closeness)) {
      angle = Math.min(angle, degreesApart(one, other));
    }
  }
  return { at, angle };
}

function meetingPlace(a: Line, b: Line, closeness: number): Point | undefined {
  for (const end of [a.from, a.to]) if (isByEdge(end, b.from, b.to, closeness)) return end;
  for (const end of [b.from, b.to]) if (isByEdge(end, a.from, a.to, closeness)) return end;
  const dx = b.to.x - b.from.x;
  const dy = b.to.y - b.from.y;
  const fromSide = dx * (a.from.y - b.from.y) - dy * (a.from.x - b.from.x);
  const toSide = dx * (a.to.y - b.from.y) - dy * (a.to.x - b.from.x);
  if (fromSide > 0 === toSide > 0) return undefined;
  const ex = a.to.x - a.from.x;
  const ey = a.to.y - a.from.y;
  const one = ex * (b.from.y - a.from.y) - ey * (b.from.x - a.from.x);
  const other = ex * (b.to.y - a.from.y) - ey * (b.to.x - a.from.x);
  if (one > 0 === other > 0) return undefined;
  const share = fromSide / (fromSide - toSide);
  return { x: toGrid(a.from.x + share * ex), y: toGrid(a.from.y + share * ey) };
}

/** The ways that a joint goes from a place on it, radians: one at its end, else two. */
export function raysFrom(at: Point, { from, to }: Line, closeness: number): readonly number[] {
  const ahead = Math.atan2(to.y - from.y, to.x - from.x);
  const back = Math.atan2(from.y - to.y, from.x - to.x);
  if (isNear(at, from, closeness)) return [ahead];
  if (isNear(at, to, closeness)) return [back];
  return [ahead, back];
}

/**
 * The least angle, degrees, between a joint and the edges that its end lies on; at a corner, with the edge on either side.
 * Nothing when it lies on none.
 */
export function angleAtEdge(
  { outer, holes }: Polygon,
  end: Point,
  other: Point,
  closeness: number,
): number | undefined {
  let least: number | undefined;
  const out = Math.atan2(other.y - end.y, other.x - end.x);
  const look = (ring: Ring) => {
    let a = ring[ring.length - 1]!;
    for (const b of ring) {
      if (isByEdge(end, a, b, closeness)) {
        least ??= 90;
        for (const far of [a, b]) {
          if (isNear(far, end, closeness)) continue;
          least = Math.min(least, degreesApart(out, Math.atan2(far.y - end.y, far.x - end.x)));
        }
      }
      a = b;
    }
  };
  look(outer);
  holes.forEach(look);
  return least;
}

export function degreesApart(a: number, b: number): number {
  const turned = Math.abs(a - b) % (2 * Math.PI);
  return (Math.min(turned, 2 * Math.PI - turned) * 180) / Math.PI;
}

/** Readings of an angle off the grid differ by less than this, degrees. */
const ANGLE_SLACK = 0.1;

export function isSharp(angle: number, least: number): boolean {
  return angle < least - ANGLE_SLACK;
}
