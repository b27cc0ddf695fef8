import type { Point } from '../../geometry/point.ts';
import type { UnitStyle } from '../../job/job.ts';
import { type Axes, printedAcross } from '../../takeoff/layout/printedAcross.ts';
import { EXTENSION } from '../clearance.ts';
import {
  along,
  type Board,
  dot,
  isRoomFor,
  type Lettered,
  lengthText,
  readingAngle,
  rule,
  toMm,
  wayFrom,
  write,
} from './board.ts';
import { keep, middleOf } from './keyed.ts';
import type { Loop } from './loops.ts';

/** A diagonal and its length, grid units. */
export interface Diagonal {
  readonly from: Point;
  readonly to: Point;
  readonly length: number;
}

/**
 * Both diagonals, corner to corner: of an outline with four corners its own, of others those between the corners that
 * reach farthest along both axes. Their lengths are figured from what lies between the corners along both axes as it is
 * printed, so that a form built to the printed sides has the printed diagonals.
 */
export function diagonalsOf(
  { sides, closed }: Loop,
  axes: Axes,
  units: UnitStyle,
): readonly Diagonal[] {
  if (!closed || sides.length < 4) return [];
  const { u, v } = axes;
  const corners = sides.map(({ from }) => from);
  const farthest = (su: number, sv: number): Point =>
    corners.reduce((best, corner) => {
      const reach = (point: Point) => su * dot(point, u) + sv * dot(point, v);
      return reach(corner) > reach(best) ? corner : best;
    });
  const [one, two, three, four] =
    corners.length === 4
      ? (corners as [Point, Point, Point, Point])
      : [farthest(-1, -1), farthest(1, -1), farthest(1, 1), farthest(-1, 1)];
  const all = new Set([one, two, three, four]);
  const isSide = (from: Point, to: Point) =>
    sides.some(
      (side) =>
        !side.arc &&
        ((side.from === from && side.to === to) || (side.from === to && side.to === from)),
    );
  const diagonal = (from: Point, to: Point): readonly Diagonal[] =>
    isSide(from, to) ? [] : [{ from, to, length: printedAcross(from, to, axes, units) }];
  return all.size < 4 ? [] : [...diagonal(one, three), ...diagonal(two, four)];
}

const SHARES = [0.3, 0.7, 0.25, 0.75, 0.36, 0.64, 0.2, 0.8, 0.42, 0.58, 0.15, 0.85, 0.5];

/** The lines first, so that texts which come later keep clear of them. */
export function drawDiagonals(board: Board, diagonals: readonly Diagonal[]): void {
  for (const { from, to } of diagonals)
    rule(board, 'centre', EXTENSION, toMm(board, from), toMm(board, to));
}

export function letterDiagonals(board: Board, diagonals: readonly Diagonal[]): void {
  for (const { from, to, length } of diagonals) {
    const text = lengthText(board, length);
    board.sizes.push({ what: 'diagonal', text, from, to });
    if (!writeOnLine(board, from, to, text)) {
      const target = middleOf(board, from, to);
      const way = wayFrom(from, to);
      keep(board, { what: 'diagonal', text, from, to, target, toward: { x: -way.y, y: way.x } });
    }
  }
}

function writeOnLine(board: Board, from: Point, to: Point, text: string): boolean {
  const [a, b] = [toMm(board, from), toMm(board, to)];
  const way = wayFrom(a, b);
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const angle = readingAngle(way);
  const up = { x: -Math.sin(angle), y: Math.cos(angle) };
  for (const share of SHARES) {
    for (const height of [0.8, -board.lettering.height - 1.2]) {
      const lettered: Lettered = {
        text,
        at: along(along(a, way, length * share), up, height),
        angle,
        anchor: 'middle',
        height: board.lettering.height,
        style: 'dimension',
      };
      if (!isRoomFor(board, lettered)) continue;
      write(board, lettered);
      return true;
    }
  }
  return false;
}
