import polygonClipping from 'polygon-clipping';
import { fail, ok, type Problem, type Result } from '../units/result.ts';
import { doubledArea } from './area.ts';
import { type Box, boxOf } from './box.ts';
import type { Engine, EngineName, LooseRing, LooseShape } from './engine.ts';
import { settledCorner } from './exactCrossing.ts';
import { distanceToEdge } from './locate.ts';
import type { Point, Polygon, Ring } from './point.ts';
import { toGrid } from './round.ts';
import { bySecondEngine } from './secondEngine.ts';
import { tidyRing } from './tidy.ts';

/** One try: an engine, and the grid (a whole number of grid units) that its input is first rounded to. */
export interface Attempt {
  readonly name: EngineName;
  readonly grid: number;
  readonly engine: Engine;
}

/** What is cut out: all inside `outer` that isn't inside a ring of `kept`. Either way round. */
export interface Cutter {
  readonly outer: Ring;
  readonly kept: readonly Ring[];
}

export interface Clipped {
  readonly polygons: readonly Polygon[];
  /**
   * Twice the area before corners were rounded to the grid, square grid units, a float: within float error of the exact
   * area of the input. The polygons' own areas differ from it by what rounding moved.
   */
  readonly doubledAreaUnrounded: number;
  readonly engine: EngineName;
  /** The grid that the input was rounded to, grid units: 1 unless a try on it failed. */
  readonly grid: number;
  /** Failed tries before this result. */
  readonly retries: number;
}

/** Plain grid, then a coarser one (1/20 mm), then the other engine. */
export const SAFE_SEQUENCE: readonly Attempt[] = [
  { name: 'polygon-clipping', grid: 1, engine: byPolygonClipping },
  { name: 'polygon-clipping', grid: 16, engine: byPolygonClipping },
  { name: 'clipper2', grid: 1, engine: bySecondEngine },
];

/**
 * All inside any subject ring and inside no cutter, on the grid: outer rings counter-clockwise, holes clockwise.
 *
 * One difference call (uniting the cutters first fails where one call doesn't). Each result is checked against what any
 * true result must keep to; a failed one is tried again on a coarser grid, then by the second engine. When all fail the
 * problem says so and there is no result.
 *
 * Corners must be whole numbers (grid units) and rings simple; see geometry/weld.ts, which must run first where rings
 * share edges. The library was never seen to hang on whole numbers within the extent limit, but nothing on the same
 * thread can stop it if it does: jobs that come from outside are run in the worker first.
 */
export function clip(
  subjects: readonly Ring[],
  cutters: readonly Cutter[],
  sequence: readonly Attempt[] = SAFE_SEQUENCE,
): Result<Clipped> {
  const rings = subjects.filter(enclosesSome);
  if (rings.length === 0) {
    const { name, grid } = sequence[0]!;
    return ok({ polygons: [], doubledAreaUnrounded: 0, engine: name, grid, retries: 0 });
  }
  const cuts = cutters.filter((cutter) => enclosesSome(cutter.outer));
  const origin = middleOf(rings);
  const bounds = boundsOf(rings, cuts);
  const problems: Problem[] = [];
  for (let retries = 0; retries < sequence.length; retries++) {
    const { name, grid, engine } = sequence[retries]!;
    try {
      const given = rings.map((ring) => [loose(ring, origin, grid)]);
      const taken = cuts.map(({ outer, kept }) =>
        [outer, ...kept].map((ring) => loose(ring, origin, grid)),
      );
      const shapes = engine(given, taken);
      const area = doubledLooseArea(shapes);
      // Rounding the input moves each of its corners by less than one step of the attempt's grid.
      const slack = grid * bounds.girth;
      const isBelievable = area <= bounds.most + slack && area >= bounds.least - slack;
      // Nothing left is the one wrong answer that bounds may let pass: the other library has to say so as well.
      if (isBelievable && (area > slack || isEmptyToOther(name, given, taken, slack))) {
        const polygons = onGrid(shapes, origin, [...given, ...taken]);
        return ok({ polygons, doubledAreaUnrounded: area, engine: name, grid, retries });
      }
      problems.push({ code: 'clip-wrong-area', where: name, facts: { grid } });
    } catch (cause) {
      problems.push({ code: 'clip-threw', where: name, facts: { grid, cause: String(cause) } });
    }
  }
  return fail(...problems);
}

function isEmptyToOther(
  name: EngineName,
  given: readonly LooseShape[],
  taken: readonly LooseShape[],
  slack: number,
): boolean {
  const other = name === 'clipper2' ? byPolygonClipping : bySecondEngine;
  return doubledLooseArea(other(given, taken)) <= slack;
}

function byPolygonClipping(
  subjects: readonly LooseShape[],
  clips: readonly LooseShape[],
): readonly LooseShape[] {
  // The shapes of one argument are taken as one area, whether or not they overlap.
  return clips.length === 0
    ? polygonClipping.union(subjects as LooseShape[])
    : polygonClipping.difference(subjects as LooseShape[], clips as LooseShape[]);
}

function enclosesSome(ring: Ring): boolean {
  return ring.length > 2 && doubledArea(ring) !== 0;
}

function middleOf(rings: readonly Ring[]): Point {
  const { minX, minY, maxX, maxY } = boxOf(rings.flat());
  return { x: Math.floor((minX + maxX) / 2), y: Math.floor((minY + maxY) / 2) };
}

/** What twice the area of any true result lies between, and the length of all that was given. */
function boundsOf(
  subjects: readonly Ring[],
  cuts: readonly Cutter[],
): { least: number; most: number; girth: number } {
  let most = 0;
  let largest = 0;
  let girth = 0;
  for (const ring of subjects) {
    const area = Math.abs(doubledArea(ring));
    most += area;
    largest = Math.max(largest, area);
    girth += girthOf(ring);
  }
  // A cutter takes no more than its own area, and no more than lies in the box round the subjects.
  const box = boxOf(subjects.flat());
  let least = largest;
  for (const { outer, kept } of cuts) {
    least -= Math.min(Math.abs(doubledArea(outer)), 2 * sharedArea(box, boxOf(outer)));
    girth += girthOf(outer);
    for (const ring of kept) girth += girthOf(ring);
  }
  return { least: Math.max(0, least), most, girth };
}

/** Area that two boxes share. */
function sharedArea(a: Box, b: Box): number {
  const width = Math.min(a.maxX, b.maxX) - Math.max(a.minX, b.minX);
  const height = Math.min(a.maxY, b.maxY) - Math.max(a.minY, b.minY);
  return Math.max(0, width) * Math.max(0, height);
}

/** The length round a ring measured along the grid's two ways: no less than the true one. */
function girthOf(ring: Ring): number {
  let sum = 0;
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    sum += Math.abs(b.x - a.x) + Math.abs(b.y - a.y);
    a = b;
  }
  return sum;
}

function loose(ring: Ring, origin: Point, grid: number): LooseRing {
  const pairs: LooseRing = new Array(ring.length);
  for (let i = 0; i < ring.length; i++) {
    const x = ring[i]!.x - origin.x;
    const y = ring[i]!.y - origin.y;
    pairs[i] = grid === 1 ? [x, y] : [toGrid(x / grid) * grid, toGrid(y / grid) * grid];
  }
  return pairs;
}

/** Twice the area of shapes, holes taken off. NaN when a coordinate is not a number, which fails every comparison. */
function doubledLooseArea(shapes: readonly LooseShape[]): number {
  let sum = 0;
  for (const shape of shapes) {
    for (let k = 0; k < shape.length; k++) {
      const area = Math.abs(doubledLooseRing(shape[k]!));
      sum += k === 0 ? area : -area;
    }
  }
  return sum;
}

function doubledLooseRing(ring: LooseRing): number {
  const [ox, oy] = ring[0]!;
  let sum = 0;
  for (let i = 2; i < ring.length; i++) {
    const a = ring[i - 1]!;
    const b = ring[i]!;
    sum += (a[0] - ox) * (b[1] - oy) - (a[1] - oy) * (b[0] - ox);
  }
  return sum;
}

function onGrid(
  shapes: readonly LooseShape[],
  origin: Point,
  sources: readonly LooseShape[],
): Polygon[] {
  const polygons: Polygon[] = [];
  for (const [first, ...rest] of shapes) {
    const outer = gridRing(first!, origin, 1, sources);
    if (!outer) continue;
    const holes: Ring[] = [];
    for (const hole of rest) {
      const ring = gridRing(hole, origin, -1, sources);
      if (ring) holes.push(ring);
    }
    polygons.push({ outer, holes });
  }
  return polygons;
}

/** A ring rounded to the grid, run the way asked for; nothing when nothing is left of it. */
function gridRing(
  ring: LooseRing,
  origin: Point,
  way: 1 | -1,
  sources: readonly LooseShape[],
): Ring | undefined {
  const points: Point[] = [];
  const made: number[] = [];
  for (const pair of ring) {
    const [x, y] = settledCorner(pair[0], pair[1], sources);
    points.push({ x: origin.x + x, y: origin.y + y });
    made.push(x === pair[0] && y === pair[1] ? 0 : 1);
  }
  tidyRing(points, made);
  straighten(points, made);
  const area = doubledArea(points);
  if (area === 0) return undefined;
  if (area * way < 0) points.reverse();
  return points;
}

/**
 * Drops, in place, corners that the clipper made where the line goes straight on to within rounding: whether it leaves
 * such a corner hangs on float error.
 */
function straighten(points: Point[], made: readonly number[]): void {
  for (let i = points.length - 1; i >= 0 && points.length > 3; i--) {
    if (!made[i]) continue;
    const before = points[i === 0 ? points.length - 1 : i - 1]!;
    const after = points[i + 1 === points.length ? 0 : i + 1]!;
    if (distanceToEdge(points[i]!, before, after) <= 1) points.splice(i, 1);
  }
}
