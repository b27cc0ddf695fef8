import type { Point } from '../../geometry/point.ts';
import type { Axes } from '../../takeoff/layout/printedAcross.ts';
import { isLineFree, OUTLINE, type Place } from '../clearance.ts';
import { along, type Board, dot, lengthText, toGridPoint, toMm, wayFrom } from './board.ts';
import { type Bay, baysOf } from './chains.ts';
import { keep, keepInLane, middleOf } from './keyed.ts';
import { drawInLane, type Lane } from './linear.ts';
import type { Loop, MeasuredSide } from './loops.ts';

/** Edges turned less than this (sine) from an axis stand in its strings; their length is theirs, not their shadow's. */
const ALONG_AXIS = 0.002;
const LEVELS = 9;

interface Extent {
  readonly min: number;
  readonly max: number;
  readonly least: Place;
  readonly most: Place;
}

/** How far a loop reaches along a way, and where. Arcs by their circle. */
function extentAlong(board: Board, { sides }: Loop, way: Place): Extent {
  let min = Number.POSITIVE_INFINITY;
  let max = Number.NEGATIVE_INFINITY;
  let least: Place = { x: 0, y: 0 };
  let most: Place = least;
  const take = (place: Place): void => {
    const reach = dot(place, way);
    if (reach < min) {
      min = reach;
      least = place;
    }
    if (reach > max) {
      max = reach;
      most = place;
    }
  };
  for (const { from, arc } of sides) {
    take(toMm(board, from));
    if (!arc) continue;
    const centre = toMm(board, { x: arc.cx, y: arc.cy });
    const radius = arc.radius / board.gridPerMm;
    const begin = Math.atan2(from.y - arc.cy, from.x - arc.cx);
    for (const sign of [1, -1]) {
      const turn = Math.atan2(way.y * sign, way.x * sign) - begin;
      const full = 2 * Math.PI;
      const ahead = (((arc.sweep > 0 ? turn : -turn) % full) + full) % full;
      if (ahead < Math.abs(arc.sweep)) take(along(centre, way, sign * radius));
    }
  }
  return { min, max, least, most };
}

/**
 * Dimensions of the edges along the axes, in strings outside the outline: short ones nearest, the whole outermost. On paper
 * the edges of a side make a chain with what lies between them, so that its figures add up to the overall.
 * Gives back the edges that found no place there.
 */
export function drawStrings(
  board: Board,
  loop: Loop,
  sides: readonly MeasuredSide[],
  { u, v }: Axes,
  overall: boolean,
): readonly MeasuredSide[] {
  const left = new Map(sides.map((side) => [side, side]));
  const used = new Map<Place, number>();
  const outward = [v, { x: -v.x, y: -v.y }, u, { x: -u.x, y: -u.y }];
  const wholes = overall
    ? [wholeOf(board, loop, sides, u, outward), wholeOf(board, loop, sides, v, outward)]
    : [];
  for (const [i, off] of outward.entries()) {
    const facing = sides.filter((side) => facesOut(side, off));
    facing.sort((a, b) => a.length - b.length);
    const edge = extentAlong(board, loop, off).max;
    const seen = facing.filter((side) => seesOut(board, side, off, edge));
    const whole = wholes[i < 2 ? 0 : 1];
    const chain = whole && seen.length > 0 ? chainOf(board, loop, seen, off, whole) : undefined;
    for (const { side, text } of chain ?? []) if (side) left.set(side, { ...side, text });
    const mark = (level: number | undefined) => {
      if (level !== undefined) used.set(off, Math.max(used.get(off) ?? -1, level));
      return level !== undefined;
    };
    for (const side of seen) {
      const one = left.get(side)!;
      if (!mark(drawInString(board, one, off, edge, 0))) continue;
      left.delete(side);
      const text = one.text ?? lengthText(board, one.length);
      board.sizes.push({ what: 'edge', text, from: one.from, to: one.to });
    }
    for (const bay of (chain ?? []).filter(({ side }) => !side)) {
      board.sizes.push({ what: 'bay', text: bay.text, from: bay.from, to: bay.to });
      if (!mark(drawInString(board, bay, off, edge, 0))) keepBay(board, bay, off, edge);
    }
  }
  for (const whole of wholes) drawOverall(board, loop, whole, used);
  return [...left.values()];
}

/** The outline's whole extent along an axis. */
interface Whole {
  readonly axis: Place;
  /** The ways out of the outline on which it may be drawn, the one with more edges first. */
  readonly offs: readonly Place[];
  readonly length: number;
  /** Whether one edge is as long and says it. */
  readonly said: boolean;
}

function wholeOf(
  board: Board,
  loop: Loop,
  sides: readonly MeasuredSide[],
  axis: Place,
  outward: readonly Place[],
): Whole {
  const offs = outward.filter((off) => Math.abs(dot(off, axis)) < 0.5);
  const { min, max } = extentAlong(board, loop, axis);
  const length = (max - min) * board.gridPerMm;
  const same = sides.find(
    (side) => Math.abs(side.length - length) < 1.5 && offs.some((off) => facesOut(side, off)),
  );
  const count = (off: Place) => sides.filter((side) => facesOut(side, off)).length;
  return {
    axis,
    offs: [...offs].sort((a, b) => count(b) - count(a)),
    length: same?.length ?? length,
    said: same !== undefined,
  };
}

/** The chain along one side of an outline, from one outermost point to the other; recorded as it is printed. */
function chainOf(
  board: Board,
  loop: Loop,
  sides: readonly MeasuredSide[],
  off: Place,
  { axis, length }: Whole,
): readonly Bay[] | undefined {
  const ends = endsToward(board, loop, axis, off);
  const bays = baysOf(board, sides, axis, ends, length);
  if (bays && bays.length > 1) {
    const overall = lengthText(board, length);
    board.chains.push({ bays: bays.map(({ text }) => text), overall });
  }
  return bays;
}

/** Points farther apart than this along an axis, mm, don't share the end of an overall. */
const SAME_END = 0.02;

/** The outermost points of an outline along an axis; of several, that which lies farthest out on the side of the chain. */
function endsToward(board: Board, loop: Loop, axis: Place, off: Place): readonly [Point, Point] {
  const { min, max, least, most } = extentAlong(board, loop, axis);
  const nearest = (reach: number, other: Place): Point => {
    const corners = loop.sides
      .flatMap(({ from }) => [from])
      .filter((corner) => Math.abs(dot(toMm(board, corner), axis) - reach) < SAME_END);
    const first = corners[0];
    if (!first) return toGridPoint(board, other);
    const out = (corner: Point) => dot(toMm(board, corner), off);
    return corners.reduce((best, corner) => (out(corner) > out(best) ? corner : best), first);
  };
  return [nearest(min, least), nearest(max, most)];
}

/** A bay that found no room in its string: by a letter there, or in the list alone. */
function keepBay(board: Board, { from, to, text }: Bay, off: Place, edge: number): void {
  const linear = { from: toMm(board, from), to: toMm(board, to), text };
  const toKey = {
    what: 'bay',
    text,
    from,
    to,
    target: middleOf(board, from, to),
    toward: off,
  } as const;
  keepInLane(board, linear, lanesOf(board, off, edge, 0), toKey);
}

function facesOut({ from, to, arc, length }: MeasuredSide, off: Place): boolean {
  if (arc) return false;
  const dx = (to.x - from.x) / length;
  const dy = (to.y - from.y) / length;
  return dy * off.x - dx * off.y > 0.5 && Math.abs(dx * off.x + dy * off.y) < ALONG_AXIS;
}

/** Whether nothing of the outline lies between an edge and the strings. */
function seesOut(board: Board, { from, to }: MeasuredSide, off: Place, edge: number): boolean {
  const [a, b] = [toMm(board, from), toMm(board, to)];
  const short = Math.min(0.3, Math.hypot(b.x - a.x, b.y - a.y) / 4);
  const way = wayFrom(a, b);
  const feet = [
    along(a, way, short),
    along(b, way, -short),
    along(a, way, Math.hypot(b.x - a.x, b.y - a.y) / 2),
  ];
  return feet.every((foot) => {
    const reach = edge - dot(foot, off) + 0.5;
    return isLineFree(board.clearance, along(foot, off, 0.2), along(foot, off, reach), OUTLINE);
  });
}

/** The level it was drawn at, 0 nearest the outline. */
function drawInString(
  board: Board,
  {
    from,
    to,
    length,
    text,
    measures,
  }: Pick<MeasuredSide, 'from' | 'to' | 'length' | 'text' | 'measures'>,
  off: Place,
  edge: number,
  lowest: number,
): number | undefined {
  const linear = {
    from: toMm(board, from),
    to: toMm(board, to),
    text: text ?? lengthText(board, length),
    feature: measures?.feature,
    measures,
  };
  const lane = drawInLane(board, linear, lanesOf(board, off, edge, lowest));
  return lane === undefined ? undefined : lowest + lane;
}

function lanesOf(board: Board, off: Place, edge: number, lowest: number): readonly Lane[] {
  const { first, step } = board.lettering;
  return Array.from({ length: LEVELS }, (_, i) => ({
    off,
    level: edge + first + (lowest + i) * step,
  }));
}

/** The outline's whole extent along an axis, where no single edge says it already. */
function drawOverall(
  board: Board,
  loop: Loop,
  { axis, offs, length, said }: Whole,
  used: ReadonlyMap<Place, number>,
): void {
  if (said) return;
  const text = lengthText(board, length);
  const [from, to] = endsToward(board, loop, axis, offs[0]!);
  board.sizes.push({ what: 'overall', text, from, to });
  for (const off of offs) {
    const [start, end] = endsToward(board, loop, axis, off);
    const edge = extentAlong(board, loop, off).max;
    const lowest = (used.get(off) ?? -1) + 1;
    const whole = { from: start, to: end, length };
    if (drawInString(board, whole, off, edge, lowest) !== undefined) return;
  }
  keep(board, {
    what: 'overall',
    text,
    from,
    to,
    target: middleOf(board, from, to),
    toward: offs[0]!,
  });
}
