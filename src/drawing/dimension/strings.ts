import { isLineFree, OUTLINE, type Place } from '../clearance.ts';
import { along, type Board, dot, lengthText, toMm, wayFrom } from './board.ts';
import { keep, middleOf } from './keyed.ts';
import { drawInLane } from './linear.ts';
import type { Loop, MeasuredSide } from './loops.ts';

/** The two directions that most of an outline runs in, square to each other. */
export interface Axes {
  readonly u: Place;
  readonly v: Place;
}

/** Along the longest straight edge, turned so that u runs nearest to east. */
export function axesOf(loop: Loop): Axes {
  let longest: MeasuredSide | undefined;
  for (const side of loop.sides) {
    if (!side.arc && (!longest || side.length > longest.length)) longest = side;
  }
  let u = longest ? wayFrom(longest.from, longest.to) : { x: 1, y: 0 };
  // Quarter turns until it runs between north-east and south-east.
  while (u.x < Math.abs(u.y) - 1e-9) u = { x: -u.y, y: u.x };
  return { u, v: { x: -u.y, y: u.x } };
}

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
 * Dimensions of the edges along the axes, in strings outside the outline: short ones nearest, the whole outermost.
 * Gives back the edges that found no place there.
 */
export function drawStrings(
  board: Board,
  loop: Loop,
  sides: readonly MeasuredSide[],
  { u, v }: Axes,
  overall: boolean,
): readonly MeasuredSide[] {
  const left = new Set(sides);
  const used = new Map<Place, number>();
  const outward = [v, { x: -v.x, y: -v.y }, u, { x: -u.x, y: -u.y }];
  for (const off of outward) {
    const facing = sides.filter((side) => facesOut(side, off));
    facing.sort((a, b) => a.length - b.length);
    const edge = extentAlong(board, loop, off).max;
    for (const side of facing) {
      if (!seesOut(board, side, off, edge)) continue;
      const level = drawInString(board, side, off, edge, 0);
      if (level === undefined) continue;
      left.delete(side);
      used.set(off, Math.max(used.get(off) ?? -1, level));
    }
  }
  if (overall) {
    drawOverall(board, loop, sides, u, [outward[1]!, outward[0]!], used);
    drawOverall(board, loop, sides, v, [outward[3]!, outward[2]!], used);
  }
  return [...left];
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
  { from, to, length, measures }: Pick<MeasuredSide, 'from' | 'to' | 'length' | 'measures'>,
  off: Place,
  edge: number,
  lowest: number,
): number | undefined {
  const { first, step } = board.lettering;
  const linear = {
    from: toMm(board, from),
    to: toMm(board, to),
    text: lengthText(board, length),
    feature: measures?.feature,
    measures,
  };
  const lanes = Array.from({ length: LEVELS }, (_, i) => ({
    off,
    level: edge + first + (lowest + i) * step,
  }));
  const lane = drawInLane(board, linear, lanes);
  return lane === undefined ? undefined : lowest + lane;
}

/** The outline's whole extent along an axis, where no single edge says it already. */
function drawOverall(
  board: Board,
  loop: Loop,
  sides: readonly MeasuredSide[],
  axis: Place,
  offs: readonly Place[],
  used: ReadonlyMap<Place, number>,
): void {
  const { min, max, least, most } = extentAlong(board, loop, axis);
  const whole = (max - min) * board.gridPerMm;
  const said = sides.some(
    (side) => Math.abs(side.length - whole) < 1.5 && offs.some((off) => facesOut(side, off)),
  );
  if (said) return;
  const count = (off: Place) => sides.filter((side) => facesOut(side, off)).length;
  const order = [...offs].sort((a, b) => count(b) - count(a));
  const from = {
    x: board.origin.x + least.x * board.gridPerMm,
    y: board.origin.y + least.y * board.gridPerMm,
  };
  const to = {
    x: board.origin.x + most.x * board.gridPerMm,
    y: board.origin.y + most.y * board.gridPerMm,
  };
  for (const off of order) {
    const edge = extentAlong(board, loop, off).max;
    const lowest = (used.get(off) ?? -1) + 1;
    if (drawInString(board, { from, to, length: whole }, off, edge, lowest) !== undefined) return;
  }
  const text = lengthText(board, whole);
  keep(board, {
    what: 'overall',
    text,
    from,
    to,
    target: middleOf(board, from, to),
    toward: offs[0]!,
  });
}
