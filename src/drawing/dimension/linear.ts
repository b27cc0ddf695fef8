import {
  addBox,
  asBox,
  DIMENSION,
  EXTENSION,
  isBoxFree,
  isLineFree,
  OUTLINE,
  type Place,
  SYMBOL,
  TEXT,
  TICK,
} from '../clearance.ts';
import type { Measured } from '../marks.ts';
import { textWidth } from '../textSize.ts';
import {
  along,
  type Board,
  dot,
  isRoomFor,
  type Lettered,
  readingAngle,
  rule,
  toGridPoint,
  wayFrom,
  write,
} from './board.ts';

/** A dimension with its line, extension lines, ticks and text; places in mm. */
export interface Linear {
  readonly from: Place;
  readonly to: Place;
  /** The way from what is measured to the dimension line, of length 1. */
  readonly off: Place;
  readonly text: string;
  readonly feature?: string | undefined;
  readonly measures?: Measured | undefined;
}

/** Where the text stands along its line: between the ticks, or past one of them. */
export type Standing = 'between' | 'past-end' | 'past-start';
export const STANDINGS: readonly Standing[] = ['between', 'past-end', 'past-start'];

/** Clear paper between what is measured and the extension line; how far it goes past the dimension line. */
const GAP = 1.2;
const OVERRUN = 1.2;
const TICK_MM = 2.2;
const TICK_REACH = 0.8;
/** The text stands this high over its line. */
const OVER_LINE = 0.8;

/**
 * Draws a dimension with its line where `off · place = level`, if that overlaps nothing. Texts keep clear of everything.
 * Lines keep clear of texts and symbols and never lie along one another; when `strict` they don't cross other dimension
 * lines or the outline either.
 */
export function drawLinear(
  board: Board,
  { from, to, off, text, feature, measures }: Linear,
  level: number,
  standing: Standing,
  strict: boolean,
): boolean {
  const { clearance } = board;
  const height = board.lettering.height;
  const start = along(from, off, level - dot(from, off));
  const end = along(to, off, level - dot(to, off));
  const length = Math.hypot(end.x - start.x, end.y - start.y);
  const width = textWidth(text, height);
  if (standing === 'between' && length < width + 2 * TICK_REACH + 1.2) return false;
  if (length < 0.5) return false;

  const way = wayFrom(start, end);
  const angle = readingAngle(way);
  const up = { x: -Math.sin(angle), y: Math.cos(angle) };
  const past = width / 2 + TICK_REACH + 1.2;
  const middle =
    standing === 'between'
      ? along(start, way, length / 2)
      : standing === 'past-end'
        ? along(end, way, past)
        : along(start, way, -past);
  const lettered: Lettered = {
    text,
    at: along(middle, up, OVER_LINE),
    angle,
    anchor: 'middle',
    height,
    style: 'dimension',
    feature,
    measures,
  };
  if (!isRoomFor(board, lettered)) return false;

  const lineStart = standing === 'past-start' ? along(start, way, -2 * past + 1) : start;
  const lineEnd = standing === 'past-end' ? along(end, way, 2 * past - 1) : end;
  const thin = asBox(lineStart, lineEnd, 0.6, 1);
  if (!isBoxFree(clearance, thin, TEXT | SYMBOL)) return false;
  if (!isLineFree(clearance, lineStart, lineEnd, OUTLINE)) return false;
  if (!isAlone(board, lineStart, lineEnd)) return false;
  if (
    strict &&
    !isLineFree(clearance, along(lineStart, way, 0.4), along(lineEnd, way, -0.4), EXTENSION)
  ) {
    return false;
  }
  for (const tick of [start, end]) {
    if (!isBoxFree(clearance, tickBox(tick, angle), TEXT | SYMBOL)) return false;
  }
  const extensions = [
    [from, start],
    [to, end],
  ].flatMap(([foot, top]) => extensionOf(foot!, top!, off));
  for (const [foot, top] of extensions) {
    const avoid = TEXT | SYMBOL | OUTLINE | (strict ? DIMENSION : 0);
    if (!isLineFree(clearance, foot, top, avoid)) return false;
  }

  for (const [foot, top] of extensions) rule(board, 'extension', EXTENSION, foot, top);
  rule(board, 'dimension', DIMENSION, lineStart, lineEnd);
  for (const tick of [start, end]) {
    board.marks.push({
      kind: 'symbol',
      layer: 'dimensions',
      symbol: 'tick',
      at: toGridPoint(board, tick),
      size: TICK_MM,
      angle,
    });
    addBox(clearance, TICK, tickBox(tick, angle));
  }
  write(board, lettered);
  return true;
}

/** No other dimension line crosses it, lies on it, or runs so near that the two could be mistaken. */
function isAlone({ clearance }: Board, a: Place, b: Place): boolean {
  return isBoxFree(clearance, asBox(a, b, 0.9, 0.8), DIMENSION);
}

function tickBox(at: Place, angle: number) {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { ...at, halfWidth: TICK_REACH, halfHeight: TICK_REACH, cos, sin };
}

function extensionOf(foot: Place, top: Place, off: Place): readonly (readonly [Place, Place])[] {
  const reach = dot(top, off) - dot(foot, off);
  return Math.abs(reach) <= GAP
    ? []
    : [[along(foot, off, GAP * Math.sign(reach)), along(top, off, OVERRUN * Math.sign(reach))]];
}
