import {
  addBox,
  asBox,
  BOARD,
  boxesOverlap,
  DIMENSION,
  EXTENSION,
  isBoxFree,
  isLineFree,
  lineMeetsBox,
  OUTLINE,
  type Place,
  SYMBOL,
  TEXT,
  TICK,
} from '../clearance.ts';
import type { SymbolName } from '../marks.ts';
import { textWidth } from '../textSize.ts';
import {
  along,
  type Board,
  dot,
  isInWindow,
  isRoomFor,
  type Lettered,
  readingAngle,
  rule,
  textBox,
  toGridPoint,
  write,
} from './board.ts';

/** One figure of a running dimension: the distance from the origin to what stands there. */
export interface Stop {
  /** On the line that is measured along, mm. */
  readonly foot: Place;
  /** Out of that line, of length 1. */
  readonly out: Place;
  readonly text: string;
}

/**
 * A running dimension (ISO 129): distances from one origin along one line, each figure at the end of its extension line and
 * in line with it.
 */
export interface Running {
  readonly origin: Pick<Stop, 'foot' | 'out'>;
  readonly stops: readonly Stop[];
  /** Whether what is measured along is straight, so that the dimension has a line of its own. */
  readonly straight: boolean;
  /** From the line that is measured along to where extension lines begin on its outer side, mm. */
  readonly clear: number;
}

/** From the beginning of the extension lines to the dimension line, outside and inside, mm. */
const LANES = [3.2, 6.4, 9.6, 12.8];
const INSIDE_LANES = [4, 7.2, 10.4];
/** Extension lines begin this far inside of the line that is measured along. */
const INSIDE_CLEAR = 1.2;
const OVERRUN = 0.8;
const TICK_MM = 2.2;
const ORIGIN_MM = 1.8;
/** From the end of an extension line to its figure. */
const TO_FIGURE = 0.7;

/** Where a figure may stand: in line with its extension line, a little aside of it (mm), or a figure's length farther out. */
const STANDINGS = [
  { row: 0, aside: 0 },
  { row: 0, aside: 1.3 },
  { row: 0, aside: -1.3 },
  { row: 0, aside: 2.4 },
  { row: 0, aside: -2.4 },
  { row: 1, aside: 0 },
];

interface Lane {
  /** 1 outside of the line that is measured along, −1 inside. */
  readonly side: 1 | -1;
  readonly from: number;
  readonly level: number;
}

/** A figure with its extension line, from where to where. */
interface FittedStop {
  readonly lettered: Lettered;
  readonly foot: Place;
  readonly top: Place;
  readonly crossing: Place;
}

/**
 * Draws a running dimension in the first lane where all of it overlaps nothing; false when there is none. A lane where its
 * lines cross those of other dimensions is taken only when there is no better one.
 */
export function drawRunning(board: Board, running: Running): boolean {
  const { clear } = running;
  const lanes: readonly Lane[] = [
    ...LANES.map((lane): Lane => ({ side: 1, from: clear, level: clear + lane })),
    ...INSIDE_LANES.map((lane): Lane => ({ side: -1, from: INSIDE_CLEAR, level: lane })),
  ];
  for (const crossing of [false, true]) {
    for (const lane of lanes) {
      const fitted = fitIn(board, running, lane, crossing);
      if (!fitted) continue;
      draw(board, running, lane, fitted);
      return true;
    }
  }
  return false;
}

/** @param crossing Whether its lines may cross those of other dimensions. */
function fitIn(
  board: Board,
  running: Running,
  lane: Lane,
  crossing: boolean,
): readonly FittedStop[] | undefined {
  const { origin, stops, straight } = running;
  const { clearance } = board;
  const start = at(origin, lane, lane.level);
  // Over a board that runs past the corner, or on the face of the next run, the ring can be seen all the same.
  if (!isSymbolFree(board, start, ORIGIN_MM, TEXT | SYMBOL | DIMENSION)) return undefined;
  if (straight) {
    const end = at(stops.at(-1)!, lane, lane.level);
    if (!isBoxFree(clearance, asBox(start, end, 0.4, 0), TEXT | SYMBOL)) return undefined;
    if (!isBoxFree(clearance, asBox(start, end, 0.9, 1.8), DIMENSION)) return undefined;
    if (!isLineFree(clearance, start, end, crossing ? OUTLINE : OUTLINE | EXTENSION)) {
      return undefined;
    }
  }
  const foot = at(origin, lane, lane.from);
  if (!isLineOk(board, foot, start, crossing)) return undefined;
  const fitted: FittedStop[] = [];
  for (const stop of stops) {
    const one = fitStop(board, stop, lane, fitted.slice(-3), crossing);
    if (!one) return undefined;
    fitted.push(one);
  }
  return fitted;
}

/** A figure beyond the dimension line, aside or farther out where it would stand on those before. */
function fitStop(
  board: Board,
  stop: Stop,
  lane: Lane,
  fitted: readonly FittedStop[],
  mayCross: boolean,
): FittedStop | undefined {
  const { height } = board.lettering;
  const out = outOf(stop, lane);
  const foot = at(stop, lane, lane.from);
  const crossing = at(stop, lane, lane.level);
  if (!isSymbolFree(board, crossing, TICK_MM * 0.7, TEXT | SYMBOL | OUTLINE | DIMENSION | BOARD))
    return undefined;
  const angle = readingAngle(out);
  const up = { x: -Math.sin(angle), y: Math.cos(angle) };
  const reads = { x: Math.cos(angle), y: Math.sin(angle) };
  const beyond = textWidth(stop.text, height) + 2;
  for (const { row, aside } of STANDINGS) {
    const top = along(crossing, out, OVERRUN + row * beyond);
    const lettered: Lettered = {
      text: stop.text,
      at: along(along(top, out, TO_FIGURE), up, aside - height / 2),
      angle,
      anchor: dot(reads, out) > 0 ? 'start' : 'end',
      height,
      style: 'dimension',
    };
    if (touches(board, { lettered, foot, top }, fitted)) continue;
    if (!isRoomFor(board, lettered) || !isLineOk(board, foot, top, mayCross)) continue;
    return { lettered, foot, top, crossing };
  }
  return undefined;
}

/** Whether a figure and its line touch one of those that were fitted before it. */
function touches(board: Board, one: Omit<FittedStop, 'crossing'>, fitted: readonly FittedStop[]) {
  const box = textBox(board, one.lettered);
  return fitted.some((other) => {
    const theirs = textBox(board, other.lettered);
    return (
      boxesOverlap(box, theirs) ||
      lineMeetsBox(one.foot, one.top, theirs) ||
      lineMeetsBox(other.foot, other.top, box)
    );
  });
}

function isLineOk({ clearance }: Board, foot: Place, top: Place, crossing: boolean): boolean {
  return (
    isLineFree(clearance, foot, top, TEXT | SYMBOL | OUTLINE) &&
    (crossing || isBoxFree(clearance, asBox(foot, top, 0.3, 0), DIMENSION))
  );
}

function isSymbolFree(board: Board, middle: Place, size: number, what: number): boolean {
  const half = size / 2 + 0.2;
  const box = { ...middle, halfWidth: half, halfHeight: half, cos: 1, sin: 0 };
  return isInWindow(board, box) && isBoxFree(board.clearance, box, what);
}

function outOf({ out }: Pick<Stop, 'out'>, { side }: Lane): Place {
  return { x: side * out.x, y: side * out.y };
}

function at(stop: Pick<Stop, 'foot' | 'out'>, lane: Lane, distance: number): Place {
  return along(stop.foot, outOf(stop, lane), distance);
}

function draw(
  board: Board,
  { origin, straight }: Running,
  lane: Lane,
  fitted: readonly FittedStop[],
): void {
  const start = at(origin, lane, lane.level);
  if (straight) rule(board, 'dimension', DIMENSION, start, fitted.at(-1)!.crossing);
  rule(board, 'extension', EXTENSION, at(origin, lane, lane.from), start);
  for (const { lettered, foot, top, crossing } of fitted) {
    rule(board, 'extension', EXTENSION, foot, top);
    if (straight) symbol(board, 'tick', crossing, TICK_MM, lettered.angle + Math.PI / 2);
    write(board, lettered);
  }
  symbol(board, 'origin', start, ORIGIN_MM, 0);
}

function symbol(board: Board, name: SymbolName, middle: Place, size: number, angle: number): void {
  const half = name === 'tick' ? 0.8 : size / 2 + 0.2;
  addBox(board.clearance, name === 'tick' ? TICK : SYMBOL, {
    ...middle,
    halfWidth: half,
    halfHeight: half,
    cos: Math.cos(angle),
    sin: Math.sin(angle),
  });
  const place = toGridPoint(board, middle);
  board.marks.push({
    kind: 'symbol',
    layer: 'dimensions',
    symbol: name,
    at: place,
    size,
    angle,
  });
}
