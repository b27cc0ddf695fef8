import type { Polygon } from '../../geometry/point.ts';

/** A length of mesh that one row needs, in the rows' own frame: u along them, v across, grid units, floats. */
export interface Strip {
  readonly row: number;
  readonly from: number;
  readonly to: number;
  readonly bottom: number;
  readonly width: number;
}

/** The sides of one polygon turned into the rows' frame, four numbers each: u, v of either end. */
interface Sides {
  readonly ends: Float64Array;
  readonly bottom: number;
  readonly top: number;
}

/**
 * The strips that cover polygons in rows: each row as wide as a sheet (the last one of a polygon ripped to what is left),
 * lapped on the one before it, and cut to what the shape spans beyond that one. A row that the shape crosses in two places
 * has a strip in each.
 * @param angle Direction of the rows, radians.
 * @param width Of a sheet. More than `lap`.
 * @param closeness What pokes into a row by less than this is left to the row beside it.
 */
export function stripsAlong(
  polygons: readonly Polygon[],
  angle: number,
  width: number,
  lap: number,
  closeness: number,
): readonly Strip[] {
  const strips: Strip[] = [];
  let row = 0;
  for (const polygon of polygons) {
    const sides = sidesOf(polygon, angle);
    const { bottom, top } = sides;
    const rows = rowCount(top - bottom, width, lap, closeness);
    for (let i = 0; i < rows; i++) {
      const low = bottom + i * (width - lap);
      const high = Math.min(low + width, top);
      const lapped = i === 0 ? low : low + lap;
      for (const [from, to] of spans(sides, lapped + closeness, high - closeness, closeness)) {
        strips.push({ row, from, to, bottom: low, width: high - low });
      }
      row++;
    }
  }
  return strips;
}

/**
 * Rows that it takes to cover `across`: ⌈(across − lap) ÷ (width − lap)⌉, one at least. What is short by less than
 * `closeness` is close enough.
 */
export function rowCount(across: number, width: number, lap: number, closeness: number): number {
  return Math.max(1, Math.ceil((across - lap - closeness) / (width - lap)));
}

function sidesOf({ outer, holes }: Polygon, angle: number): Sides {
  const rings = [outer, ...holes];
  const [cos, sin] = directionOf(angle);
  const ends = new Float64Array(4 * rings.reduce((sum, ring) => sum + ring.length, 0));
  let [bottom, top] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let at = 0;
  for (const ring of rings) {
    const last = ring[ring.length - 1]!;
    let u = last.x * cos + last.y * sin;
    let v = last.y * cos - last.x * sin;
    for (const { x, y } of ring) {
      ends[at++] = u;
      ends[at++] = v;
      u = x * cos + y * sin;
      v = y * cos - x * sin;
      ends[at++] = u;
      ends[at++] = v;
      if (v < bottom) bottom = v;
      if (v > top) top = v;
    }
  }
  return { ends, bottom, top };
}

/** Cosine and sine, exact for the directions of the axes. */
export function directionOf(angle: number): readonly [number, number] {
  const quarters = angle / (Math.PI / 2);
  if (Number.isInteger(quarters)) {
    return (
      [
        [1, 0],
        [0, 1],
        [-1, 0],
        [0, -1],
      ] as const
    )[((quarters % 4) + 4) % 4]!;
  }
  return [Math.cos(angle), Math.sin(angle)];
}

/**
 * What the shape spans along the row between two heights: every u at which some part of it lies between them. Those are
 * the reaches of its sides within the band, and what is inside along the band's middle.
 */
function spans(
  { ends }: Sides,
  low: number,
  high: number,
  closeness: number,
): readonly (readonly [number, number])[] {
  const middle = (low + high) / 2;
  const bandLow = Math.min(low, middle);
  const bandHigh = Math.max(high, middle);
  const reaches: [number, number][] = [];
  const crossings: number[] = [];
  for (let i = 0; i < ends.length; i += 4) {
    const [u1, v1, u2, v2] = [ends[i]!, ends[i + 1]!, ends[i + 2]!, ends[i + 3]!];
    if ((v1 < bandLow && v2 < bandLow) || (v1 > bandHigh && v2 > bandHigh)) continue;
    const slope = v1 === v2 ? 0 : (u2 - u1) / (v2 - v1);
    const a = v1 === v2 ? u1 : u1 + (Math.min(bandHigh, Math.max(bandLow, v1)) - v1) * slope;
    const b = v1 === v2 ? u2 : u1 + (Math.min(bandHigh, Math.max(bandLow, v2)) - v1) * slope;
    reaches.push(a < b ? [a, b] : [b, a]);
    if (v1 > middle !== v2 > middle) crossings.push(u1 + (middle - v1) * slope);
  }
  crossings.sort((a, b) => a - b);
  for (let i = 0; i + 1 < crossings.length; i += 2)
    reaches.push([crossings[i]!, crossings[i + 1]!]);
  reaches.sort((a, b) => a[0] - b[0]);
  const merged: [number, number][] = [];
  for (const [from, to] of reaches) {
    const last = merged[merged.length - 1];
    if (last && from <= last[1] + closeness) last[1] = Math.max(last[1], to);
    else merged.push([from, to]);
  }
  return merged.filter(([from, to]) => to - from > closeness);
}
