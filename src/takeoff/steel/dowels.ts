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

/** A dowel, half of it in the old slab: where it crosses the edge, and which way the old slab lies, radians. */
export interface Dowel {
  readonly at: Point;
  readonly outward: number;
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
 * Where dowels go into the old slab: along each straight edge against it, evenly, no farther apart than the spacing, and
 * kept from the ends of that edge, where a corner would break off. An edge too short for one has none.
 */
export function dowelPlaces(
  pour: NetPour,
  { spacing }: DowelSize,
  fromCorner: Grid,
  closeness: Grid,
): readonly Dowel[] {
  return pour.pieces.flatMap(({ rings }) =>
    rings.flatMap(({ edges }) =>
      straights(edges, closeness).flatMap(([from, to]) => along(from, to, spacing, fromCorner)),
    ),
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

function along(from: Point, to: Point, spacing: Grid, fromCorner: Grid): readonly Dowel[] {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy);
  const usable = length - 2 * fromCorner;
  if (usable < 0) return [];
  const gaps = Math.ceil(usable / spacing);
  // The pour lies left of its edges, the old slab right.
  const outward = Math.atan2(-dx, dy);
  return Array.from({ length: gaps + 1 }, (_, i) => {
    const at = gaps === 0 ? length / 2 : fromCorner + (i * usable) / gaps;
    return {
      at: { x: toGrid(from.x + (dx * at) / length), y: toGrid(from.y + (dy * at) / length) },
      outward,
    };
  });
}
