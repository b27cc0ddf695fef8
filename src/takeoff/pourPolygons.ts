import type { Point, Polygon, Ring } from '../geometry/point.ts';
import { toGrid } from '../geometry/round.ts';
import type { Grid } from '../units/grid.ts';
import type { NetPour, PourEdge, PourRing } from './outline/pour.ts';

/** The pour as polygons on the grid, arcs as chords that leave them by no more than `tolerance`. */
export function pourPolygons(pour: NetPour, tolerance: Grid): readonly Polygon[] {
  return pour.pieces.map(({ rings: [outer, ...holes] }) => ({
    outer: ringPoints(outer!, tolerance),
    holes: holes.map((hole) => ringPoints(hole, tolerance)),
  }));
}

function ringPoints({ edges }: PourRing, tolerance: Grid): Ring {
  return edges.flatMap((edge) => pointsFrom(edge, tolerance));
}

/** An edge's start, and on an arc the points between its ends, on the grid. */
export function pointsFrom({ from, arc }: PourEdge, tolerance: Grid): readonly Point[] {
  const points: Point[] = [from];
  if (!arc) return points;
  const { cx, cy, radius, sweep } = arc;
  const step =
    radius > tolerance ? Math.min(2 * Math.acos(1 - tolerance / radius), Math.PI / 4) : Math.PI / 4;
  const chords = Math.ceil(Math.abs(sweep) / step);
  const start = Math.atan2(from.y - cy, from.x - cx);
  for (let i = 1; i < chords; i++) {
    const angle = start + (sweep * i) / chords;
    points.push({
      x: toGrid(cx + radius * Math.cos(angle)),
      y: toGrid(cy + radius * Math.sin(angle)),
    });
  }
  return points;
}
