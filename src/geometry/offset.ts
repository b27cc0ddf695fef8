import {
  Clipper,
  ClipperOffset,
  ClipType,
  EndType,
  FillRule,
  JoinType,
  type Path64,
  PolyTree64,
} from 'clipper2-ts';
import type { Grid } from '../units/grid.ts';
import { doubledArea } from './area.ts';
import { boxOf } from './box.ts';
import type { Point, Polygon, Ring } from './point.ts';

/** A mitred corner reaches no farther than this many times the distance from the corner that it came from. */
const MITRE_LIMIT = 2;

/**
 * Everything inside the polygons that is at least `distance` from their boundaries, on the grid, square (mitred)
 * corners: outer rings counter-clockwise, holes clockwise. A part narrower than twice the distance vanishes, and what it
 * joined comes apart. With a negative distance: everything up to that far outside as well, sharp corners cut off.
 */
export function insetPolygons(polygons: readonly Polygon[], distance: Grid): Polygon[] {
  if (polygons.length === 0) return [];
  const box = boxOf(polygons.flatMap(({ outer }) => outer));
  const x = Math.floor((box.minX + box.maxX) / 2);
  const y = Math.floor((box.minY + box.maxY) / 2);
  const paths = polygons.flatMap(({ outer, holes }) => [
    pathOf(outer, 1, x, y),
    ...holes.map((hole) => pathOf(hole, -1, x, y)),
  ]);
  const tree = new PolyTree64();
  if (distance === 0) {
    Clipper.booleanOpWithPolyTree(ClipType.Union, paths, null, tree, FillRule.Positive);
  } else {
    const offset = new ClipperOffset(MITRE_LIMIT);
    offset.addPaths(paths, JoinType.Miter, EndType.Polygon);
    offset.execute(-distance, tree);
  }
  const result: Polygon[] = [];
  collect(tree, x, y, result);
  return result;
}

function pathOf(ring: Ring, way: 1 | -1, x: Grid, y: Grid): Path64 {
  const path = ring.map((point) => ({ x: point.x - x, y: point.y - y }));
  return doubledArea(ring) * way < 0 ? path.reverse() : path;
}

function collect(node: PolyTree64, x: Grid, y: Grid, into: Polygon[]): void {
  const ringOf = (path: Path64 | null): Point[] =>
    (path ?? []).map((point) => ({ x: point.x + x, y: point.y + y }));
  for (let i = 0; i < node.count; i++) {
    const outer = node.child(i);
    const holes: Ring[] = [];
    for (let j = 0; j < outer.count; j++) {
      holes.push(ringOf(outer.child(j).poly));
      collect(outer.child(j), x, y, into);
    }
    into.push({ outer: ringOf(outer.poly), holes });
  }
}
