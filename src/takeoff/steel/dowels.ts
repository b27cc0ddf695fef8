import { edgesCross } from '../../geometry/crossings.ts';
import type { Point } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import type { Practices } from '../../job/job.ts';
import { type Grid, INCH } from '../../units/grid.ts';
import type { NetPour, PourEdge } from '../outline/pour.ts';
import { goesStraightOn } from './longestWay.ts';

export interface DowelSize {
  readonly diameter: Grid;
  readonly length: Grid;
  readonly spacing: Grid;
}

/** A dowel, half of it in the old slab: how far along its seam, and where it crosses the edge. */
export interface Dowel {
  readonly along: Grid;
  readonly at: Point;
}

/** A straight edge against the old slab, and the holes that are drilled along it. */
export interface DowelSeam {
  /** 'D1', 'D2'… */
  readonly mark: string;
  /** Distances are measured from here. */
  readonly from: Point;
  readonly to: Point;
  readonly length: Grid;
  /** Which way the old slab lies, radians. */
  readonly outward: number;
  readonly holes: readonly Dowel[];
}

/** What holes are kept from. */
export interface DowelRule {
  readonly spacing: Grid;
  /** The least from a corner, and from a joint that ends at the seam. */
  readonly fromEnds: Grid;
  /** Ends of joints, of the new slab or of the old one; those that lie on no seam don't matter. */
  readonly jointEnds: readonly Point[];
  /** How near to a seam an end lies that is on it. */
  readonly closeness: Grid;
}

/** Slabs of at least so many inches: diameter, length, inches. All at 12 in. */
const TABLE: readonly (readonly [number, number, number])[] = [
  [9.5, 1.25, 16],
  [8.5, 1.125, 16],
  [7.5, 1, 14],
  [6.5, 0.875, 14],
  [5.5, 0.75, 14],
  [4.5, 0.625, 12],
];

/**
 * Dowels by the slab's thickness. Thinner than the table, an eighth of the thickness and 18 in long, as for pavements.
 * Other tables say 3/4 by 16 for anything under 8 in: a setting.
 * @source dowel-tables
 */
export function dowelsByThickness(thickness: Grid): DowelSize {
  const row = TABLE.find(([least]) => thickness >= least * INCH);
  if (row) return { diameter: row[1] * INCH, length: row[2] * INCH, spacing: 12 * INCH };
  const eighths = Math.max(3, Math.ceil(thickness / INCH));
  return { diameter: (eighths * INCH) / 8, length: 18 * INCH, spacing: 12 * INCH };
}

export function dowelSize({ thickness, steel: { dowels } }: Practices): DowelSize {
  return dowels.by === 'own' ? dowels.own : dowelsByThickness(thickness);
}

/**
 * Where dowels go into the old slab: along each straight edge against it, between its corners and the joints that end at
 * it, evenly, no farther apart than the spacing, and kept from corners and joints, where an edge would break off or a
 * joint be locked. A stretch too short for one has none; a seam without any isn't there.
 */
export function dowelSeams(pour: NetPour, rule: DowelRule): readonly DowelSeam[] {
  return pour.pieces
    .flatMap(({ rings }) =>
      rings.flatMap(({ edges }) =>
        straights(edges, rule.closeness).map(([from, to]) => seam(from, to, rule)),
      ),
    )
    .filter(({ holes }) => holes.length > 0)
    .map((one, i) => ({ mark: `D${i + 1}`, ...one }));
}

/** Places where dowels of one seam meet those of another in the old slab, as at a corner broken off. */
export function dowelsMeeting(
  seams: readonly DowelSeam[],
  { length }: Pick<DowelSize, 'length'>,
): readonly Point[] {
  const half = length / 2;
  const dowels = seams.flatMap(({ outward, holes }, seam) =>
    holes.map(({ at }) => {
      const [dx, dy] = [toGrid(Math.cos(outward) * half), toGrid(Math.sin(outward) * half)];
      return { seam, at, to: { x: at.x + dx, y: at.y + dy } };
    }),
  );
  return dowels.flatMap((one, i) =>
    dowels.slice(i + 1).flatMap((other) => {
      if (one.seam === other.seam) return [];
      if (Math.hypot(one.at.x - other.at.x, one.at.y - other.at.y) > length) return [];
      return edgesCross(one.at, one.to, other.at, other.to) ? [one.at] : [];
    }),
  );
}

/** Straight stretches against an old slab, from corner to corner. */
function straights(
  edges: readonly PourEdge[],
  closeness: Grid,
): readonly (readonly [Point, Point])[] {
  const isOld = (edge: PourEdge) => edge.kind === 'existing-slab' && !edge.arc;
  const goesOn = (a: PourEdge, b: PourEdge) =>
    isOld(a) && isOld(b) && goesStraightOn(a, b, closeness);
  // Begun at an edge that nothing runs into, so that no stretch is cut where the ring is written from.
  const start = edges.findIndex((edge, i) => isOld(edge) && !goesOn(edges.at(i - 1)!, edge));
  if (start < 0) return [];
  const found: [Point, Point][] = [];
  let before: PourEdge | undefined;
  for (let i = 0; i < edges.length; i++) {
    const edge = edges[(start + i) % edges.length]!;
    if (!isOld(edge)) before = undefined;
    else {
      if (before && goesOn(before, edge)) found[found.length - 1]![1] = edge.to;
      else found.push([edge.from, edge.to]);
      before = edge;
    }
  }
  return found;
}

function seam(from: Point, to: Point, rule: DowelRule): Omit<DowelSeam, 'mark'> {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy);
  const stops = [0, ...jointsOn(from, [dx / length, dy / length], length, rule), length];
  const holes = stops.slice(1).flatMap((stop, i) => evenly(stops[i]!, stop, rule));
  return {
    from,
    to,
    length: toGrid(length),
    // The pour lies left of its edges, the old slab right.
    outward: Math.atan2(-dx, dy),
    holes: holes.map((along) => ({
      along: toGrid(along),
      at: { x: toGrid(from.x + (dx * along) / length), y: toGrid(from.y + (dy * along) / length) },
    })),
  };
}

/** How far along a seam joints end at it, in order. */
function jointsOn(
  from: Point,
  [ux, uy]: readonly [number, number],
  length: number,
  { jointEnds, closeness }: DowelRule,
): readonly number[] {
  return jointEnds
    .flatMap(({ x, y }) => {
      const along = (x - from.x) * ux + (y - from.y) * uy;
      const off = Math.abs((y - from.y) * ux - (x - from.x) * uy);
      return off <= closeness && along > 0 && along < length ? [along] : [];
    })
    .sort((a, b) => a - b);
}

/** Places between two stops, both kept clear of. */
function evenly(low: number, high: number, { spacing, fromEnds }: DowelRule): readonly number[] {
  const usable = high - low - 2 * fromEnds;
  if (usable < 0) return [];
  const gaps = Math.ceil(usable / spacing);
  if (gaps === 0) return [(low + high) / 2];
  return Array.from({ length: gaps + 1 }, (_, i) => low + fromEnds + (i * usable) / gaps);
}
