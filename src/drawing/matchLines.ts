import type { Point } from '../geometry/point.ts';
import { addLine, FEATURE, type Place } from './clearance.ts';
import {
  along,
  type Board,
  isRoomFor,
  type Lettered,
  readingAngle,
  toMm,
  wayFrom,
  write,
} from './dimension/board.ts';
import { polyline } from './paths.ts';

/** A line at which a plan goes on on another sheet. Nothing is written across it. */
export interface MatchLine {
  readonly from: Point;
  readonly to: Point;
  readonly said: readonly MatchWords[];
}

/** What is written along a match line for one of the sheets that it bounds. */
interface MatchWords {
  /** The first that finds room is written: longer ones first. */
  readonly texts: readonly string[];
  /** The stretch of the line that is seen on that sheet, grid units. */
  readonly from: Point;
  readonly to: Point;
  /** Out of the line, onto that sheet; of length 1. */
  readonly toward: Place;
}

const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8, 0.28, 0.72, 0.42, 0.58, 0.12, 0.88];
/** From the line to the nearer side of the letters, mm. */
const OFFS = [1.2, 4.5, 8];

/** Draws match lines and what they say, before all else that is written. */
export function drawMatchLines(board: Board, lines: readonly MatchLine[]): void {
  for (const { from, to } of lines) {
    addLine(board.clearance, FEATURE, toMm(board, from), toMm(board, to));
    board.marks.push({
      kind: 'line',
      layer: 'labels',
      style: 'match',
      path: polyline([from, to]),
    });
  }
  for (const { said } of lines) for (const words of said) writeWords(board, words);
}

function writeWords(board: Board, words: MatchWords): void {
  words.texts.some((text) => writeOne(board, text, words));
}

function writeOne(
  board: Board,
  text: string,
  { from, to, toward }: Omit<MatchWords, 'texts'>,
): boolean {
  const [a, b] = [toMm(board, from), toMm(board, to)];
  const way = wayFrom(a, b);
  const angle = readingAngle(way);
  const up = { x: -Math.sin(angle), y: Math.cos(angle) };
  const { height } = board.lettering;
  const isAbove = up.x * toward.x + up.y * toward.y > 0;
  for (const off of OFFS) {
    for (const share of SHARES) {
      const foot = along(a, way, share * Math.hypot(b.x - a.x, b.y - a.y));
      const lettered: Lettered = {
        text,
        at: along(foot, toward, isAbove ? off : off + height),
        angle,
        anchor: 'middle',
        height,
        style: 'label',
        layer: 'labels',
      };
      if (!isRoomFor(board, lettered)) continue;
      write(board, lettered);
      return true;
    }
  }
  return false;
}
