import { distanceToEdge } from '../../geometry/locate.ts';
import type { Point } from '../../geometry/point.ts';
import { EXTENSION, isLineFree, type Place, SYMBOL, TEXT } from '../clearance.ts';
import {
  along,
  type Board,
  dot,
  lengthText,
  rule,
  toMm,
  wayFrom,
  writeWithLeader,
} from './board.ts';
import { keep, keepInLane, middleOf } from './keyed.ts';
import { drawInLane } from './linear.ts';
import type { Loop, MeasuredSide } from './loops.ts';

/** A line from a point of a hole square to a side, or to a corner (a tape tie) when no side is square to it. */
interface Tie {
  readonly to: Point;
  readonly length: number;
}

/** Two sides whose directions differ by less than this (sine) don't fix a place. */
const APART = 0.5;

/** What is inside the pour: its size, and where it lies from two sides of the outline. */
export function drawHole(
  board: Board,
  hole: Loop,
  outer: Loop,
  name: string,
): readonly MeasuredSide[] {
  const round = roundOf(hole);
  const size = round
    ? board.words.diameter(lengthText(board, round.diameter))
    : sizeOf(board, hole);
  const from = round?.center ?? nearestCorner(hole, outer);
  const noted = name ? { name } : {};
  if (size) board.sizes.push({ what: 'block-out', text: size, from, to: from, ...noted });
  for (const tie of tiesTo(from, outer)) {
    const text = lengthText(board, tie.length);
    if (tie.length >= 1) board.sizes.push({ what: 'block-out', text, from, to: tie.to, ...noted });
    drawTie(board, from, tie);
  }
  if (round) drawCentre(board, round.center, round.diameter / 2);
  if (!size) return hole.sides;
  const target = round
    ? along(
        toMm(board, round.center),
        { x: Math.SQRT1_2, y: Math.SQRT1_2 },
        round.diameter / 2 / board.gridPerMm,
      )
    : middleOf(board, hole.sides[0]!.from, hole.sides[0]!.to);
  const toward = { x: Math.SQRT1_2, y: Math.SQRT1_2 };
  const both = name ? `${name} ${size}` : size;
  const feature = hole.blockOut;
  if (writeWithLeader(board, { target, toward, text: both, arrow: true, feature })) {
    if (feature && name) board.named.add(feature);
  } else if (!writeWithLeader(board, { target, toward, text: size, arrow: true, feature })) {
    keep(board, { what: 'block-out', text: both, from, to: from, target, toward });
    if (feature && name && board.keeps) board.named.add(feature);
  }
  return [];
}

function roundOf({ sides }: Loop): { center: Point; diameter: number } | undefined {
  const arc = sides[0]?.arc;
  if (!arc) return undefined;
  const whole = sides.reduce((sum, side) => sum + Math.abs(side.arc?.sweep ?? 0), 0);
  const same = sides.every(
    (side) =>
      side.arc &&
      side.arc.cx === arc.cx &&
      side.arc.cy === arc.cy &&
      side.arc.radius === arc.radius,
  );
  if (!same || Math.abs(whole - 2 * Math.PI) > 1e-6) return undefined;
  return { center: { x: arc.cx, y: arc.cy }, diameter: 2 * arc.radius };
}

/** Both sides of a rectangle; nothing for other shapes, whose every edge is measured. */
function sizeOf(board: Board, { sides }: Loop): string | undefined {
  if (sides.length !== 4 || sides.some(({ arc }) => arc)) return undefined;
  const [a, b, c, d] = sides as readonly [MeasuredSide, MeasuredSide, MeasuredSide, MeasuredSide];
  const texts = [a, b, c, d].map(({ length }) => lengthText(board, length));
  if (texts[0] !== texts[2] || texts[1] !== texts[3]) return undefined;
  if (Math.abs(dot(wayFrom(a.from, a.to), wayFrom(b.from, b.to))) > 0.002) return undefined;
  return board.words.sides(texts[0]!, texts[1]!);
}

function nearestCorner(hole: Loop, outer: Loop): Point {
  let found = hole.sides[0]!.from;
  let least = Number.POSITIVE_INFINITY;
  for (const { from } of hole.sides) {
    for (const side of outer.sides) {
      const away = side.arc ? Number.POSITIVE_INFINITY : distanceToEdge(from, side.from, side.to);
      if (away < least) {
        least = away;
        found = from;
      }
    }
  }
  return found;
}

function tiesTo(point: Point, { sides }: Loop): readonly Tie[] {
  const square = sides
    .flatMap((side) => {
      if (side.arc) return [];
      const way = wayFrom(side.from, side.to);
      const reach = dot({ x: point.x - side.from.x, y: point.y - side.from.y }, way);
      if (reach < 0 || reach > side.length) return [];
      const to = along(side.from, way, reach);
      return [{ way, to, length: Math.hypot(to.x - point.x, to.y - point.y) }];
    })
    .sort((a, b) => a.length - b.length);
  const first = square[0];
  const second = square.find(
    ({ way }) => first && Math.abs(way.x * first.way.y - way.y * first.way.x) > APART,
  );
  if (first && second) return [first, second];
  const corners = sides
    .map(({ from }) => ({ to: from, length: Math.hypot(from.x - point.x, from.y - point.y) }))
    .sort((a, b) => a.length - b.length);
  const near = corners[0];
  const other = corners.find(({ to }) => {
    if (!near) return false;
    const one = wayFrom(point, near.to);
    const two = wayFrom(point, to);
    return Math.abs(one.x * two.y - one.y * two.x) > APART;
  });
  return near && other ? [near, other] : corners.slice(0, 2);
}

function drawTie(board: Board, point: Point, { to, length }: Tie): void {
  if (length < 1) return;
  const [from, end] = [toMm(board, point), toMm(board, to)];
  const way = wayFrom(from, end);
  const text = lengthText(board, length);
  const off = { x: -way.y, y: way.x };
  const lanes = [0, 5, -5, 9, -9].map((offset) => {
    const sign = offset < 0 ? -1 : 1;
    const turned = { x: off.x * sign, y: off.y * sign };
    return { off: turned, level: dot(from, turned) + Math.abs(offset) };
  });
  const linear = { from, to: end, text };
  if (drawInLane(board, linear, lanes) !== undefined) return;
  const target = middleOf(board, point, to);
  keepInLane(board, linear, lanes, {
    what: 'block-out',
    text,
    from: point,
    to,
    target,
    toward: off,
  });
}

/** A cross through the middle of a round one, in chain lines. After the ties, which start there. */
function drawCentre(board: Board, center: Point, radius: number): void {
  const at: Place = toMm(board, center);
  const half = radius / board.gridPerMm + 1.2;
  for (const way of [
    { x: 1, y: 0 },
    { x: 0, y: 1 },
  ]) {
    const [a, b] = [along(at, way, -half), along(at, way, half)];
    if (!isLineFree(board.clearance, a, b, TEXT | SYMBOL)) continue;
    rule(board, 'centre', EXTENSION, a, b);
  }
}
