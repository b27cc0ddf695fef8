import { turn } from './locate.ts';
import type { Point, Polygon } from './point.ts';

/** Edges of polygons by the level bands that they pass through. */
interface Bands {
  readonly low: number;
  readonly height: number;
  readonly bands: readonly (readonly Edge[])[];
}

interface Edge {
  readonly lower: Point;
  readonly upper: Point;
}

const MOST_BANDS = 1024;

/** One sorting a list of polygons: lists never change, so this only saves sorting them again for every place. */
const sorted = new WeakMap<readonly Polygon[], Bands>();

/**
 * Whether a place lies inside polygons that don't overlap, holes left out; on an edge is not inside. Exact on the grid,
 * and quick for many places in the same polygons: it looks only at the edges at the place's own height.
 */
export function isInsideAny(place: Point, polygons: readonly Polygon[]): boolean {
  let bands = sorted.get(polygons);
  if (!bands) {
    bands = bandsOf(polygons);
    sorted.set(polygons, bands);
  }
  const edges = bands.bands[Math.floor((place.y - bands.low) / bands.height)];
  if (!edges) return false;
  let inside = false;
  for (const { lower, upper } of edges) {
    if (place.y < lower.y || place.y > upper.y) continue;
    const side = turn(lower, upper, place);
    if (side === 0) {
      if (isBetween(place.x, lower.x, upper.x)) return false;
      continue;
    }
    // A ray to the right meets the edge; its upper end belongs to the edge above.
    if (side > 0 && place.y < upper.y) inside = !inside;
  }
  return inside;
}

function isBetween(x: number, a: number, b: number): boolean {
  return Math.min(a, b) <= x && x <= Math.max(a, b);
}

function bandsOf(polygons: readonly Polygon[]): Bands {
  const edges: Edge[] = [];
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const ring of polygons.flatMap(({ outer, holes }) => [outer, ...holes])) {
    let a = ring[ring.length - 1]!;
    for (const b of ring) {
      edges.push(a.y < b.y ? { lower: a, upper: b } : { lower: b, upper: a });
      low = Math.min(low, b.y);
      high = Math.max(high, b.y);
      a = b;
    }
  }
  const count = Math.min(MOST_BANDS, Math.max(1, edges.length));
  const height = Math.max(1, (high - low) / count);
  const bands: Edge[][] = Array.from({ length: count + 1 }, () => []);
  for (const edge of edges) {
    const last = Math.floor((edge.upper.y - low) / height);
    for (let k = Math.floor((edge.lower.y - low) / height); k <= last; k++) bands[k]?.push(edge);
  }
  return { low, height, bands };
}
