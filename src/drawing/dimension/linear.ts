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
  type TurnedBox,
} from '../clearance.ts';
import type { Measured } from '../marks.ts';
import { textDrop, textWidth } from '../textSize.ts';
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
  readonly text: string;
  readonly feature?: string | undefined;
  readonly measures?: Measured | undefined;
}

/** Where a dimension line may lie: at `off · place = level`, `off` of length 1 pointing away from what is measured. */
export interface Lane {
  readonly off: Place;
  readonly level: number;
}

/** Where the text stands along its line: at a share of it between the ticks, or past one of them. */
type Standing = number | 'past-end' | 'past-start';
const STANDINGS: readonly Standing[] = [0.5, 0.36, 0.64, 0.24, 0.76, 'past-end', 'past-start'];

/** Clear paper between what is measured and the extension line; how far it goes past the dimension line. */
const GAP = 1.2;
const OVERRUN = 1.2;
const TICK_MM = 2.2;
const TICK_REACH = 0.8;
/** The text stands this high over its line, higher where letters reach below. */
const OVER_LINE = 0.8;

/** A dimension with a place found for it. */
interface Fitted {
  readonly lettered: Lettered;
  readonly line: readonly [Place, Place];
  readonly ticks: readonly [Place, Place];
  readonly extensions: readonly (readonly [Place, Place])[];
  /** Whether a line of it crosses a line of another dimension: allowed, but not if there is another way. */
  readonly crosses: boolean;
}

/**
 * Draws a dimension in the first lane where it overlaps nothing, and gives back which; nothing when there is none. Texts
 * keep clear of everything; lines of texts and symbols, of the outline, and never lie along one another. A lane where
 * its lines cross those of other dimensions is taken only when there is no better one.
 */
export function drawInLane(
  board: Board,
  linear: Linear,
  lanes: readonly Lane[],
): number | undefined {
  const width = textWidth(linear.text, board.lettering.height);
  let second: { readonly fitted: Fitted; readonly lane: number } | undefined;
  for (let lane = 0; lane < lanes.length; lane++) {
    for (const standing of STANDINGS) {
      const fitted = placeIn(board, linear, width, lanes[lane]!, standing);
      if (!fitted) continue;
      if (!fitted.crosses) {
        draw(board, fitted);
        return lane;
      }
      second ??= { fitted, lane };
    }
  }
  if (second) draw(board, second.fitted);
  return second?.lane;
}

function placeIn(
  board: Board,
  { from, to, text, feature, measures }: Linear,
  width: number,
  { off, level }: Lane,
  standing: Standing,
): Fitted | undefined {
  const start = along(from, off, level - dot(from, off));
  const end = along(to, off, level - dot(to, off));
  const length = Math.hypot(end.x - start.x, end.y - start.y);
  if (length < 0.5) return undefined;
  const room = width / 2 + TICK_REACH + 0.6;
  if (typeof standing === 'number' && Math.min(standing, 1 - standing) * length < room) {
    return undefined;
  }
  const way = wayFrom(start, end);
  const angle = readingAngle(way);
  const past = room + 0.6;
  const reach =
    typeof standing === 'number'
      ? standing * length
      : standing === 'past-end'
        ? length + past
        : -past;
  const middle = along(start, way, reach);
  const up = { x: -Math.sin(angle), y: Math.cos(angle) };
  const lettered: Lettered = {
    text,
    at: along(middle, up, Math.max(OVER_LINE, textDrop(text, board.lettering.height) + 0.35)),
    angle,
    anchor: 'middle',
    height: board.lettering.height,
    style: 'dimension',
    feature,
    measures,
  };
  if (!isRoomFor(board, lettered)) return undefined;

  const { clearance } = board;
  const lineStart = standing === 'past-start' ? along(start, way, 1 - 2 * past) : start;
  const lineEnd = standing === 'past-end' ? along(end, way, 2 * past - 1) : end;
  if (!isBoxFree(clearance, asBox(lineStart, lineEnd, 0.4, 0), TEXT | SYMBOL)) return undefined;
  // No other dimension line crosses it, lies on it, or runs so near that the two could be mistaken.
  if (!isBoxFree(clearance, asBox(lineStart, lineEnd, 0.9, 1.8), DIMENSION)) return undefined;
  if (!isLineFree(clearance, along(lineStart, way, 0.2), along(lineEnd, way, -0.2), OUTLINE)) {
    return undefined;
  }
  const ticks = [start, end] as const;
  if (!isBoxFree(clearance, tickBox(start, angle), TEXT | SYMBOL)) return undefined;
  if (!isBoxFree(clearance, tickBox(end, angle), TEXT | SYMBOL)) return undefined;
  const extensions = [...extensionOf(from, start, off), ...extensionOf(to, end, off)];
  if (
    !extensions.every(([foot, top]) => isLineFree(clearance, foot, top, TEXT | SYMBOL | OUTLINE))
  ) {
    return undefined;
  }
  const crosses =
    !isLineFree(clearance, along(lineStart, way, 0.4), along(lineEnd, way, -0.4), EXTENSION) ||
    extensions.some(([foot, top]) => !isLineFree(clearance, foot, top, DIMENSION));
  return { lettered, line: [lineStart, lineEnd], ticks, extensions, crosses };
}

function draw(board: Board, { lettered, line, ticks, extensions }: Fitted): void {
  for (const [foot, top] of extensions) rule(board, 'extension', EXTENSION, foot, top);
  rule(board, 'dimension', DIMENSION, ...line);
  for (const tick of ticks) {
    board.marks.push({
      kind: 'symbol',
      layer: 'dimensions',
      symbol: 'tick',
      at: toGridPoint(board, tick),
      size: TICK_MM,
      angle: lettered.angle,
    });
    addBox(board.clearance, TICK, tickBox(tick, lettered.angle));
  }
  write(board, lettered);
}

function tickBox(at: Place, angle: number): TurnedBox {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { x: at.x, y: at.y, halfWidth: TICK_REACH, halfHeight: TICK_REACH, cos, sin };
}

function extensionOf(foot: Place, top: Place, off: Place): readonly (readonly [Place, Place])[] {
  const reach = dot(top, off) - dot(foot, off);
  return Math.abs(reach) <= GAP
    ? []
    : [[along(foot, off, GAP * Math.sign(reach)), along(top, off, OVERRUN * Math.sign(reach))]];
}
