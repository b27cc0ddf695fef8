import { edgesNear, indexEdges } from '../../geometry/edgeIndex.ts';
import { distanceToEdge, turn } from '../../geometry/locate.ts';
import type { Point } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';

/** A ring of the pour made straight, with the number of the side that each of its bits belongs to. */
export interface SidedRing {
  readonly points: readonly Point[];
  readonly sides: readonly number[];
}

/** Bits that are joined by less boundary than this many tolerances are a corner, not a neck. */
const APART = 16;

/** With fewer bits than this, walking them all is quicker than an index. */
const FEW = 96;

/**
 * Places where the pour is narrower than `tolerance`: a corner of its boundary that comes that near to another side with
 * concrete between, down to touching it.
 */
export function neckPlaces(rings: readonly SidedRing[], tolerance: Grid): Point[] {
  const starts: Point[] = [];
  const ends: Point[] = [];
  const ringOf: number[] = [];
  const position: number[] = [];
  rings.forEach(({ points }, r) => {
    points.forEach((point, i) => {
      starts.push(point);
      ends.push(points[i + 1 === points.length ? 0 : i + 1]!);
      ringOf.push(r);
      position.push(i);
    });
  });
  const index = starts.length > FEW ? indexEdges(starts, ends) : undefined;
  const places: Point[] = [];
  for (let v = 0; v < starts.length; v++) {
    const at = starts[v]!;
    let narrow = false;
    const look = (e: number): void => {
      if (narrow) return;
      const a = starts[e]!;
      const b = ends[e]!;
      if (at.x < a.x - tolerance && at.x < b.x - tolerance) return;
      if (at.x > a.x + tolerance && at.x > b.x + tolerance) return;
      if (at.y < a.y - tolerance && at.y < b.y - tolerance) return;
      if (at.y > a.y + tolerance && at.y > b.y + tolerance) return;
      if (turn(a, b, at) < 0 || distanceToEdge(at, a, b) >= tolerance) return;
      const r = ringOf[v]!;
      narrow = ringOf[e] !== r || areApart(rings[r]!, position[v]!, position[e]!, tolerance);
    };
    if (index) edgesNear(index, at.x, at.y, at.x, at.y, tolerance, look);
    else for (let e = 0; e < starts.length; e++) look(e);
    if (narrow) places.push(at);
  }
  return places;
}

/** Whether a corner and a bit of the same ring belong to sides that aren't neighbours, with boundary between them. */
function areApart(
  { points, sides }: SidedRing,
  corner: number,
  bit: number,
  tolerance: Grid,
): boolean {
  const count = points.length;
  const into = sides[(corner + count - 1) % count]!;
  const out = sides[corner]!;
  const side = sides[bit]!;
  if (side === into || side === out) return false;
  return (
    walked(points, corner, bit, APART * tolerance) &&
    walked(points, (bit + 1) % count, corner, APART * tolerance)
  );
}

/** Whether the boundary from one corner on to another is at least `least` long. */
function walked(points: readonly Point[], from: number, to: number, least: Grid): boolean {
  const count = points.length;
  let sum = 0;
  for (let i = from; i !== to; i = (i + 1) % count) {
    const a = points[i]!;
    const b = points[(i + 1) % count]!;
    sum += Math.hypot(b.x - a.x, b.y - a.y);
    if (sum >= least) return true;
  }
  return false;
}
