import type { Polygon } from '../../geometry/point.ts';

/** A length of mesh that one row needs, in the rows' own frame: u along them, v across, grid units, floats. */
export interface Strip {
  readonly row: number;
  readonly from: number;
  readonly to: number;
  readonly bottom: number;
  readonly width: number;
}

/** A polygon turned into the rows' frame, four numbers a side: u, v of either end. */
export interface Turned {
  readonly ends: Float64Array;
  readonly bottom: number;
  readonly top: number;
}

/** How wide rows are, and how far each lies over the one before. */
export interface RowSize {
  readonly width: number;
  /** Less than `width`. */
  readonly lap: number;
  readonly leastPiece: number;
  /** What pokes into a row by less than this is left to the row beside it. */
  readonly closeness: number;
}

/** @param angle Direction of the rows, radians. */
export function turned({ outer, holes }: Polygon, angle: number): Turned {
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
 * Rows that it takes to cover `across`: ⌈(across − lap) ÷ (width − lap)⌉, one at least. What is short by less than
 * `closeness` is close enough.
 */
export function rowCount(across: number, width: number, lap: number, closeness: number): number {
  return Math.max(1, Math.ceil((across - lap - closeness) / (width - lap)));
}

/**
 * Where rows begin, from the bottom up, the first `shift` below the shape: each lies over the one before by the lap, the
 * last one reaches the top.
 * @param shift From 0 to less than what a row adds.
 */
export function rowStarts(shape: Turned, { width, lap, closeness }: RowSize, shift = 0): number[] {
  const start = shape.bottom - shift;
  const rows = rowCount(shape.top - start, width, lap, closeness);
  return Array.from({ length: rows }, (_, i) => start + i * (width - lap));
}

/**
 * The strips that cover a shape in rows. Each is cut to what the shape spans beyond the row before, and ripped to what it
 * reaches across; one that would be smaller than the least piece reaches farther over what is beside it. A row that the
 * shape crosses in two places, or that a hole takes the whole of, has a strip in each.
 * @param starts Where rows begin across, rising by no more than the width less the lap.
 * @param firstRow Number of the first of them.
 */
export function stripsIn(
  shape: Turned,
  starts: readonly number[],
  size: RowSize,
  firstRow = 0,
): readonly Strip[] {
  const { lap, closeness } = size;
  const strips: Strip[] = [];
  for (let i = 0; i < starts.length; i++) {
    const low = Math.max(starts[i]!, shape.bottom);
    const high = Math.min(starts[i]! + size.width, shape.top);
    // What the row before covers up to; rows may lie over each other by more than the lap.
    const before = i === 0 ? low : Math.min(starts[i - 1]! + size.width, shape.top);
    if (i > 0 && before - starts[i]! < lap - 1e-6) {
      throw new Error(`stripsIn: row ${i} laps ${before - starts[i]!}, less than ${lap}`);
    }
    const near = sidesBetween(shape, low, high);
    const spanned = spans(near, before + closeness, high - closeness, closeness);
    if (spanned.length === 0) continue;
    const below = inside(near, low + closeness);
    for (const [from, to] of spanned) {
      strips.push(ripped(near, firstRow + i, from, to, low, high, below, size));
    }
  }
  return strips;
}

/** A strip as wide as the shape reaches across within its span, and never smaller than the least piece. */
function ripped(
  ends: Float64Array,
  row: number,
  from: number,
  to: number,
  low: number,
  high: number,
  below: readonly (readonly [number, number])[],
  { width, leastPiece }: RowSize,
): Strip {
  let [bottom, top] = [high, low];
  for (let i = 0; i < ends.length; i += 4) {
    const [u1, v1, u2, v2] = [ends[i]!, ends[i + 1]!, ends[i + 2]!, ends[i + 3]!];
    if ((v1 <= low && v2 <= low) || (v1 >= high && v2 >= high)) continue;
    if ((u1 < from && u2 < from) || (u1 > to && u2 > to)) continue;
    bottom = Math.min(bottom, Math.max(low, Math.min(v1, v2)));
    top = Math.max(top, Math.min(high, Math.max(v1, v2)));
  }
  // Where the shape goes on below the row, the sides that it widens to may lie beside this span.
  if (below.some(([a, b]) => a < to && b > from)) bottom = low;
  const least = Math.min(leastPiece, width);
  if (top - bottom < least) {
    bottom = top - least;
  }
  const short = least - (to - from);
  return short > 0
    ? { row, from: from - short / 2, to: to + short / 2, bottom, width: top - bottom }
    : { row, from, to, bottom, width: top - bottom };
}

/** Sides that reach into a band between two heights. */
export function sidesBetween({ ends }: Turned, low: number, high: number): Float64Array {
  const near = new Float64Array(ends.length);
  let count = 0;
  for (let i = 0; i < ends.length; i += 4) {
    const [v1, v2] = [ends[i + 1]!, ends[i + 3]!];
    if ((v1 < low && v2 < low) || (v1 > high && v2 > high)) continue;
    near[count++] = ends[i]!;
    near[count++] = v1;
    near[count++] = ends[i + 2]!;
    near[count++] = v2;
  }
  return near.subarray(0, count);
}

/** Stretches of a line along the rows that lie inside the shape, of which these are the sides that cross the line. */
export function inside(ends: Float64Array, v: number): readonly (readonly [number, number])[] {
  const crossings: number[] = [];
  for (let i = 0; i < ends.length; i += 4) {
    const [u1, v1, u2, v2] = [ends[i]!, ends[i + 1]!, ends[i + 2]!, ends[i + 3]!];
    if (v1 > v !== v2 > v) crossings.push(u1 + ((v - v1) * (u2 - u1)) / (v2 - v1));
  }
  crossings.sort((a, b) => a - b);
  const stretches: [number, number][] = [];
  for (let i = 0; i + 1 < crossings.length; i += 2) {
    stretches.push([crossings[i]!, crossings[i + 1]!]);
  }
  return stretches;
}

/**
 * What the shape spans along the row between two heights: every u at which some part of it lies between them. Those are
 * the reaches of its sides within the band, and what is inside along the band's middle.
 */
function spans(
  ends: Float64Array,
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
