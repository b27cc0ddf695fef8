import { Clipper, ClipType, FillRule, type Path64, type Paths64 } from 'clipper2-ts';
import type { Grid } from '../units/grid.ts';
import { doubledArea } from './area.ts';
import { boxOf } from './box.ts';
import type { ArcOf, Point, Polygon } from './point.ts';
import { toGrid } from './round.ts';

/** An edge with what it bounds on its left: its ends, and on an arc the points between them as well. */
export interface StripEdge {
  readonly points: readonly Point[];
  readonly arc?: ArcOf;
}

/** Edges that follow each other, the end of one the start of the next. A closed way has no ends. */
export interface EdgeWay {
  readonly edges: readonly StripEdge[];
  readonly closed: boolean;
}

/** A corner is filled to a point when that lies no farther off than this many strip widths; else it is cut off. */
const MITRE_LIMIT = 2;
/** Normals that differ by less than this (sine) make no corner. */
const STRAIGHT = 1e-9;

/**
 * Area of what lies inside polygons and within `reach` of the left side of edges, square grid units: square ends, mitred
 * inside corners, what two strips share counted once. Right to the rounding of the strips' corners to the grid.
 */
export function areaAlong(
  polygons: readonly Polygon[],
  ways: readonly EdgeWay[],
  reach: number,
): number {
  if (!(reach > 0) || polygons.length === 0 || ways.length === 0) return 0;
  const box = boxOf(polygons.flatMap(({ outer }) => outer));
  const x = Math.floor((box.minX + box.maxX) / 2);
  const y = Math.floor((box.minY + box.maxY) / 2);
  const shape = polygons.flatMap(({ outer, holes }) => [
    turnedTo(outer, 1, x, y),
    ...holes.map((hole) => turnedTo(hole, -1, x, y)),
  ]);
  const strips = ways
    .flatMap((way) => stripsOf(way, reach))
    .filter((strip) => doubledArea(strip) !== 0)
    .map((strip) => turnedTo(strip, 1, x, y));
  const shared = Clipper.booleanOp(ClipType.Intersection, shape, strips, FillRule.NonZero);
  return doubledSum(shared) / 2;
}

/** Twice the area of rings that the clipper gave back, holes taken off. */
function doubledSum(paths: Paths64): number {
  return paths.reduce((sum, path) => sum + doubledArea(path), 0);
}

/** A ring about the middle, run counter-clockwise (1) or clockwise (-1). */
function turnedTo(ring: readonly Point[], way: 1 | -1, x: Grid, y: Grid): Path64 {
  const path = ring.map((point) => ({ x: point.x - x, y: point.y - y }));
  return doubledArea(ring) * way < 0 ? path.reverse() : path;
}

function stripsOf({ edges, closed }: EdgeWay, reach: number): readonly (readonly Point[])[] {
  return edges.flatMap((edge, i) => {
    const strip = edge.arc ? arcStrip(edge, edge.arc, reach) : straightStrip(edge, reach);
    const next = edges[i + 1] ?? (closed ? edges[0] : undefined);
    const fill = next ? cornerFill(edge, next, reach) : [];
    return fill.length > 0 ? [strip, fill] : [strip];
  });
}

function straightStrip({ points }: StripEdge, reach: number): readonly Point[] {
  const [a, b] = [points[0]!, points.at(-1)!];
  const off = straightNormal(a, b);
  return [a, b, moved(b, off, reach), moved(a, off, reach)];
}

/** A band along an arc. Where it turns round what it bounds, no farther than to its centre. */
function arcStrip(
  { points }: StripEdge,
  { cx, cy, radius, sweep }: ArcOf,
  reach: number,
): readonly Point[] {
  const inner = sweep > 0 ? Math.max(0, radius - reach) : radius + reach;
  const grow = inner / radius;
  const back = points.map((point) => ({
    x: toGrid(cx + (point.x - cx) * grow),
    y: toGrid(cy + (point.y - cy) * grow),
  }));
  return [...points, ...back.reverse()];
}

/** What two strips leave open between them at an inside corner: a kite to the mitre, or a triangle where that is too far. */
function cornerFill(before: StripEdge, after: StripEdge, reach: number): readonly Point[] {
  const a = normalAt(before, 'end');
  const b = normalAt(after, 'start');
  const corner = after.points[0]!;
  // Strips lie over each other where the edges turn to the left.
  if (a.x * b.y - a.y * b.x > -STRAIGHT) return [];
  const along = 1 + a.x * b.x + a.y * b.y;
  const [one, other] = [moved(corner, a, reach), moved(corner, b, reach)];
  if (2 > along * MITRE_LIMIT ** 2) return [corner, other, one];
  const tip = moved(corner, { x: (a.x + b.x) / along, y: (a.y + b.y) / along }, reach);
  return [corner, other, tip, one];
}

/** To the left of an edge at one of its ends, of length 1. */
function normalAt({ points, arc }: StripEdge, end: 'start' | 'end'): Normal {
  const [first, last] = [points[0]!, points.at(-1)!];
  if (!arc) return straightNormal(first, last);
  const at = end === 'start' ? first : last;
  const toCentre = { x: arc.cx - at.x, y: arc.cy - at.y };
  const length = Math.hypot(toCentre.x, toCentre.y) * Math.sign(arc.sweep);
  return { x: toCentre.x / length, y: toCentre.y / length };
}

interface Normal {
  readonly x: number;
  readonly y: number;
}

function straightNormal(a: Point, b: Point): Normal {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return { x: -(b.y - a.y) / length, y: (b.x - a.x) / length };
}

function moved({ x, y }: Point, way: Normal, reach: number): Point {
  return { x: toGrid(x + way.x * reach), y: toGrid(y + way.y * reach) };
}
