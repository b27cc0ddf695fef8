import type { Point } from '../../geometry/point.ts';
import {
  addBox,
  BOARD,
  DIMENSION,
  EVERYTHING,
  isBoxFree,
  isLineFree,
  type Place,
  SYMBOL,
  TEXT,
  type TurnedBox,
} from '../clearance.ts';
import { circlePath } from '../paths.ts';
import { textWidth } from '../textSize.ts';
import {
  along,
  type Board,
  isInWindow,
  type KeyedSize,
  rule,
  toGridPoint,
  toMm,
  write,
} from './board.ts';
import { drawInLane, type Lane, type Linear } from './linear.ts';

export interface ToKey {
  readonly what: KeyedSize['what'];
  readonly text: string;
  readonly from: Point;
  readonly to: Point;
  /** What the number points at. */
  readonly target: Place;
  readonly toward: Place;
}

const REACHES = [3.4, 5, 7, 10, 14, 19, 25, 33, 42, 54];
const TURNS = 16;
/** A line may cross the board that it points at as far as this, mm, but not run along it. */
const PAST_BOARD = 2.5;

/** The letter of the next size in the list: a to z, then aa, ab… Small ones, since capitals name the kinds of edges. */
function nextLetter({ keyed }: Board): string {
  const lettersOf = (index: number): string =>
    (index < 26 ? '' : lettersOf(Math.floor(index / 26) - 1)) +
    String.fromCharCode(97 + (index % 26));
  return lettersOf(keyed.length);
}

/**
 * What found no room on the plan goes into the list, and a letter in a ring, joined by a line to its place, stands for
 * it. Where not even the letter finds room, the list gives the place instead. On a screen nothing is kept.
 */
export function keep(board: Board, { what, text, from, to, target, toward }: ToKey): void {
  if (!board.keeps) return;
  const key = nextLetter(board);
  const marked = markKey(board, key, target, toward);
  board.keyed.push({ key, what, text, marked, from, to });
}

/** As `keep`, but with no letter on the plan: for what is too small there to point at. */
export function keepByPlace(
  board: Board,
  { what, text, from, to }: Omit<ToKey, 'target' | 'toward'>,
): void {
  if (!board.keeps) return;
  board.keyed.push({ key: nextLetter(board), what, text, marked: false, from, to });
}

/** As `keep`, but for a length: the letter stands on a dimension line, if there is a lane for it. */
export function keepInLane(
  board: Board,
  linear: Linear,
  lanes: readonly Lane[],
  toKey: ToKey,
): void {
  if (!board.keeps) return;
  const key = nextLetter(board);
  if (drawInLane(board, { ...linear, text: key }, lanes) === undefined) {
    keep(board, toKey);
    return;
  }
  const { what, text, from, to } = toKey;
  board.keyed.push({ key, what, text, marked: true, from, to });
}

interface KeySpot {
  readonly middle: Place;
  readonly end: Place;
  /** 2: its line crosses no dimension and runs along no board; 1: it crosses a dimension; 0: it runs along a board. */
  readonly rank: 0 | 1 | 2;
}

function markKey(board: Board, letter: string, target: Place, toward: Place): boolean {
  const { height } = board.lettering;
  const radius = Math.hypot(textWidth(letter, height) / 2, height * 0.72) + 0.3;
  const base = Math.atan2(toward.y, toward.x);
  const first = bestSpot(board, radius, target, base, TURNS);
  // Among boards and stakes a finer look may find a way between them.
  const best = first?.rank === 0 ? bestSpot(board, radius, target, base, 2 * TURNS) : first;
  if (best) drawKey(board, letter, target, best.end, best.middle, radius);
  return best !== undefined;
}

/** The first of the best rank, near ones before far ones. */
function bestSpot(
  board: Board,
  radius: number,
  target: Place,
  base: number,
  turns: number,
): KeySpot | undefined {
  const { clearance } = board;
  let best: KeySpot | undefined;
  for (const reach of REACHES) {
    for (let i = 0; i < turns; i++) {
      const turn = (i % 2 === 0 ? 1 : -1) * Math.ceil(i / 2) * ((2 * Math.PI) / turns);
      const way = { x: Math.cos(base + turn), y: Math.sin(base + turn) };
      const middle = along(target, way, reach + radius);
      const box = ringBox(middle, radius);
      if (!isInWindow(board, box) || !isBoxFree(clearance, box, EVERYTHING)) continue;
      const end = along(target, way, reach);
      if (!isLineFree(clearance, target, end, TEXT | SYMBOL)) continue;
      const past = along(target, way, Math.min(reach, PAST_BOARD));
      const isOffBoards = isLineFree(clearance, past, end, BOARD);
      const crosses = !isLineFree(clearance, along(target, way, 0.4), end, DIMENSION);
      const rank = !isOffBoards ? 0 : crosses ? 1 : 2;
      if (!best || rank > best.rank) best = { middle, end, rank };
      if (rank === 2) return best;
    }
  }
  return best;
}

function ringBox(middle: Place, radius: number): TurnedBox {
  return {
    x: middle.x,
    y: middle.y,
    halfWidth: radius + 0.4,
    halfHeight: radius + 0.4,
    cos: 1,
    sin: 0,
  };
}

function drawKey(
  board: Board,
  letter: string,
  target: Place,
  end: Place,
  middle: Place,
  radius: number,
): void {
  const { height } = board.lettering;
  rule(board, 'dimension', DIMENSION, target, end);
  addBox(board.clearance, SYMBOL, ringBox(middle, radius));
  const path = circlePath(toGridPoint(board, middle), radius * board.gridPerMm);
  board.marks.push(
    { kind: 'area', layer: 'dimensions', material: 'paper', paths: [path] },
    { kind: 'line', layer: 'dimensions', style: 'dimension', path },
  );
  write(board, {
    text: letter,
    at: { x: middle.x, y: middle.y - height * 0.38 },
    angle: 0,
    anchor: 'middle',
    height,
    style: 'dimension',
  });
}

/** The middle of two grid points, in mm. */
export function middleOf(board: Board, from: Point, to: Point): Place {
  return toMm(board, { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });
}
