import { type Box, boxesMeet, boxOf } from '../../geometry/box.ts';
import { edgesNear } from '../../geometry/edgeIndex.ts';
import { isInsideAny } from '../../geometry/inside.ts';
import { locate } from '../../geometry/locate.ts';
import type { Point } from '../../geometry/point.ts';
import type { Grid } from '../../units/grid.ts';
import type { Ground } from '../stakes/clearOf.ts';

/** Something that no board can lie in or go through. */
export interface Bar {
  readonly points: readonly Point[];
  /** An open one is a line: the face of a wall. */
  readonly closed: boolean;
  readonly box: Box;
  /** The run whose board it is. */
  readonly run?: string;
}

/** What a strip may run into: bars at least all those near it. */
export interface Around extends Pick<Ground, 'polygons' | 'rings'> {
  readonly bars: readonly Bar[];
}

/** The ground that a board lies on where it goes on past its corner. */
export interface Strip {
  /** The corner of the inside face. */
  readonly at: Point;
  /** The way the board goes on, and the way out from the face: units. */
  readonly along: { readonly x: number; readonly y: number };
  readonly out: { readonly x: number; readonly y: number };
  /** From the face outward. */
  readonly width: Grid;
}

export function barOf(points: readonly Point[], run: string): Bar {
  return { points, closed: true, box: boxOf(points), run };
}

/**
 * How far a strip is clear from its start, grid units rounded down, `reach` at most. In closed form: the first place
 * where an edge of anything comes into the strip; up to there it lies wholly inside or wholly outside of each thing.
 * @param slack What only comes into the strip's sides by this isn't in the way: readings of one line differ.
 */
export function clearPast(strip: Strip, reach: Grid, slack: Grid, around: Around): Grid {
  const low = Math.min(slack, strip.width / 4);
  const high = strip.width - low;
  const box = boxOf(boxIn(strip, 0, reach));
  let first: number = reach;
  // An edge that only touches the start bounds what lies behind it, but a wall's face there is what the board ends at.
  const cross = (from: number) => (a: Point, b: Point) => {
    first = Math.min(first, entersAt(strip, a, b, low, high, from));
  };
  for (const { points, closed } of around.bars) walk(points, closed, cross(closed ? low : -low));
  for (const { ring, box: ringBox, index } of around.rings) {
    if (!boxesMeet(ringBox, box, 0)) continue;
    if (!index) walk(ring, true, cross(low));
    else edgesNear(index, box, 0, (i) => cross(low)(ring[i]!, ring[(i + 1) % ring.length]!));
  }
  if (first <= low) return 0;
  const middle = placeIn(strip, (low + first) / 2, strip.width / 2);
  const inside =
    isInsideAny(middle, around.polygons) ||
    around.bars.some(({ points, closed }) => closed && locate(middle, points) !== 'outside');
  return inside ? 0 : Math.floor(first);
}

/** A place by how far along a strip and how far out it is. */
export function placeIn({ at, along, out }: Strip, u: number, v: number): Point {
  return { x: at.x + u * along.x + v * out.x, y: at.y + u * along.y + v * out.y };
}

/** The corners of a part of a strip. */
export function boxIn(strip: Strip, from: number, to: number): readonly Point[] {
  const { width } = strip;
  return [
    placeIn(strip, from, 0),
    placeIn(strip, to, 0),
    placeIn(strip, to, width),
    placeIn(strip, from, width),
  ];
}

function walk(points: readonly Point[], closed: boolean, edge: (a: Point, b: Point) => void) {
  for (let i = closed ? 0 : 1; i < points.length; i++) {
    edge(points[i === 0 ? points.length - 1 : i - 1]!, points[i]!);
  }
}

/** Where along a strip an edge first comes in between `low` and `high` of its width, past `start`; else infinity. */
function entersAt(
  { at, along, out }: Strip,
  a: Point,
  b: Point,
  low: number,
  high: number,
  start: number,
): number {
  const av = (a.x - at.x) * out.x + (a.y - at.y) * out.y;
  const bv = (b.x - at.x) * out.x + (b.y - at.y) * out.y;
  if ((av <= low && bv <= low) || (av >= high && bv >= high)) return Number.POSITIVE_INFINITY;
  const au = (a.x - at.x) * along.x + (a.y - at.y) * along.y;
  const bu = (b.x - at.x) * along.x + (b.y - at.y) * along.y;
  // The part of the edge that lies between the two.
  const t = (v: number) => Math.min(1, Math.max(0, (v - av) / (bv - av)));
  const [one, other] = av === bv ? [0, 1] : [t(low), t(high)];
  const oneU = au + one * (bu - au);
  const otherU = au + other * (bu - au);
  if (Math.max(oneU, otherU) <= start) return Number.POSITIVE_INFINITY;
  return Math.max(start, Math.min(oneU, otherU));
}
