import type { Point, Polygon } from './point.ts';

/** A direction as a unit vector; floats. */
export interface Heading {
  readonly x: number;
  readonly y: number;
}

/** Degrees counter-clockwise from east. Quarter turns are exact. */
export function headingOf(degrees: number): Heading {
  const quarter = ((degrees % 360) + 360) % 360;
  if (quarter === 0) return { x: 1, y: 0 };
  if (quarter === 90) return { x: 0, y: 1 };
  if (quarter === 180) return { x: -1, y: 0 };
  if (quarter === 270) return { x: 0, y: -1 };
  const angle = (degrees * Math.PI) / 180;
  return { x: Math.cos(angle), y: Math.sin(angle) };
}

/** How far along a heading a place lies, from the origin; a float. */
export function alongOf({ x, y }: Point, heading: Heading): number {
  return x * heading.x + y * heading.y;
}

/** The least and the most that polygons reach along a heading. */
export function reachOf(polygons: readonly Polygon[], heading: Heading): readonly [number, number] {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const { outer } of polygons) {
    for (const corner of outer) {
      const along = alongOf(corner, heading);
      if (along < least) least = along;
      if (along > most) most = along;
    }
  }
  return [least, most];
}

/**
 * What of a ring lies behind the line `along` a heading, corners as floats. A ring that the line cuts into several pieces
 * comes back as one, its pieces joined along the line: its area and its fill are right all the same.
 */
export function ringBehind(
  ring: readonly Point[],
  heading: Heading,
  along: number,
): readonly Point[] {
  const kept: Point[] = [];
  let a = ring.at(-1);
  if (!a) return kept;
  let aOver = alongOf(a, heading) - along;
  for (const b of ring) {
    const bOver = alongOf(b, heading) - along;
    if (aOver <= 0 !== bOver <= 0) {
      const t = aOver / (aOver - bOver);
      kept.push({ x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) });
    }
    if (bOver <= 0) kept.push(b);
    a = b;
    aOver = bOver;
  }
  return kept;
}

/** Area of polygons behind the line `along` a heading, square grid units; a float. Source: geometry. */
export function areaBehind(polygons: readonly Polygon[], heading: Heading, along: number): number {
  return polygons.reduce(
    (sum, { outer, holes }) =>
      holes.reduce(
        (rest, hole) => rest - Math.abs(floatArea(ringBehind(hole, heading, along))),
        sum + Math.abs(floatArea(ringBehind(outer, heading, along))),
      ),
    0,
  );
}

/** Length of a straight line behind `along` a heading; a float. */
export function lengthBehind(from: Point, to: Point, heading: Heading, along: number): number {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [a, b] = [alongOf(from, heading) - along, alongOf(to, heading) - along];
  if (a <= 0 && b <= 0) return length;
  if (a > 0 && b > 0) return 0;
  const share = a <= 0 ? a / (a - b) : b / (b - a);
  return length * share;
}

/** Signed area of a ring, counter-clockwise positive, about its first corner; a float. */
export function floatArea(ring: readonly Point[]): number {
  const [origin] = ring;
  if (!origin) return 0;
  let doubled = 0;
  for (let i = 1; i + 1 < ring.length; i++) {
    const [a, b] = [ring[i]!, ring[i + 1]!];
    doubled += (a.x - origin.x) * (b.y - origin.y) - (a.y - origin.y) * (b.x - origin.x);
  }
  return doubled / 2;
}
