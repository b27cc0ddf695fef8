import { type Box, boxesMeet } from '../../geometry/box.ts';
import type { Point } from '../../geometry/point.ts';
import type { UnitStyle } from '../../job/job.ts';
import { formatLength } from '../../units/length.ts';
import {
  addBox,
  addLine,
  type Clearance,
  DIMENSION,
  EVERYTHING,
  EXTENSION,
  emptyClearance,
  isBoxFree,
  isLineFree,
  OUTLINE,
  type Place,
  STEEL,
  SYMBOL,
  TEXT,
  type TurnedBox,
} from '../clearance.ts';
import type { Layer, LineStyle, Mark, Measured, TextStyle } from '../marks.ts';
import { textDrop, textRise, textWidth } from '../textSize.ts';
import type { DrawingWords } from '../words/en.ts';

/** What a size that found no room at its place says in the list, and the letter by which it is found on the plan. */
export interface KeyedSize {
  readonly key: string;
  readonly what:
    | 'edge'
    | 'overall'
    | 'bay'
    | 'arc'
    | 'diagonal'
    | 'angle'
    | 'block-out'
    | 'name'
    | 'corner'
    | 'board'
    | 'run'
    | 'mesh-piece'
    | 'bars'
    | 'seam';
  readonly text: string;
  /** False where not even the letter found room: then `from` and `to` say where it is. */
  readonly marked: boolean;
  readonly from: Point;
  readonly to: Point;
}

/** A size of the plan, for a list of them all. */
export interface PlanSize extends Omit<KeyedSize, 'key' | 'marked'> {
  /** The block-out that it locates, where that has a name. */
  readonly name?: string;
}

/** A chain as it is printed: its figures add up to the overall. */
export interface PrintedChain {
  readonly bays: readonly string[];
  readonly overall: string;
}

/** Heights of letters and distances between lines, mm of output. */
export interface Lettering {
  readonly height: number;
  readonly label: number;
  /** From the outline to the first dimension line, and from one line to the next. */
  readonly first: number;
  readonly step: number;
}

/** The board on which a drawing is put together: what is on it already, and what is written on it. */
export interface Board {
  readonly gridPerMm: number;
  /** The grid point that millimetres are counted from: near the drawing, so that they stay small. */
  readonly origin: Point;
  readonly units: UnitStyle;
  readonly words: DrawingWords;
  readonly lettering: Lettering;
  /** Whether what finds no room goes into the keyed list. On a screen one looks closer instead. */
  readonly keeps: boolean;
  /** Where something hatched lies: letters there need paper behind them. Boxes round the features, in mm. */
  readonly hatched: readonly Box[];
  /** What of the drawing will be seen, mm; all of it when not said. Nothing is written outside. */
  readonly window?: Box | undefined;
  readonly clearance: Clearance;
  readonly marks: Mark[];
  readonly keyed: KeyedSize[];
  /** Every size that is written or kept in the list, in the order it was thought of. */
  readonly sizes: PlanSize[];
  /** The chains along the sides of outlines, as they are printed. */
  readonly chains: PrintedChain[];
  /** Features whose name stands with their size, so that it isn't written again. */
  readonly named: Set<string>;
  /** Room that texts take for a height of 1: many places are tried for each. */
  readonly measured: Map<
    string,
    { readonly width: number; readonly drop: number; readonly rise: number }
  >;
}

export function makeBoard(
  given: Omit<
    Board,
    'clearance' | 'marks' | 'keyed' | 'sizes' | 'chains' | 'named' | 'measured'
  > & {
    readonly extentMm: number;
  },
): Board {
  const { extentMm, ...board } = given;
  return {
    ...board,
    clearance: emptyClearance(extentMm),
    marks: [],
    keyed: [],
    sizes: [],
    chains: [],
    named: new Set(),
    measured: new Map(),
  };
}

export function toMm({ origin, gridPerMm }: Board, { x, y }: Point): Place {
  return { x: (x - origin.x) / gridPerMm, y: (y - origin.y) / gridPerMm };
}

export function toGridPoint({ origin, gridPerMm }: Board, { x, y }: Place): Point {
  return { x: origin.x + x * gridPerMm, y: origin.y + y * gridPerMm };
}

export function lengthText({ units }: Board, length: number): string {
  return formatLength(length, units);
}

export function along(a: Place, way: Place, distance: number): Place {
  return { x: a.x + way.x * distance, y: a.y + way.y * distance };
}

export function dot(a: Place, b: Place): number {
  return a.x * b.x + a.y * b.y;
}

/** The way from one place to another, of length 1. */
export function wayFrom(a: Place, b: Place): Place {
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  return { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
}

/** Lines this near to upright (sine, about 8°) are read from the right, whichever way they lean. */
const UPRIGHT = 0.14;

/** The turn at which a text along a line reads upright, or from the right (ISO 129). */
export function readingAngle({ x, y }: Place): number {
  const flip = Math.abs(x) < UPRIGHT ? y < 0 : x < 0;
  const angle = Math.atan2(flip ? -y : y, flip ? -x : x);
  return Math.abs(angle) < 1e-9 ? 0 : angle;
}

export interface Lettered {
  readonly text: string;
  readonly at: Place;
  readonly angle: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly height: number;
  readonly style: TextStyle;
  readonly layer?: Layer;
  readonly feature?: string | undefined;
  readonly measures?: Measured | undefined;
  /** Written over steel: paper behind the letters. */
  readonly overSteel?: boolean;
}

/** Clear paper round letters. */
const MARGIN = 0.4;

/** The room that a text takes, with a margin. */
export function textBox(
  { measured }: Board,
  { text, at, angle, anchor, height }: Lettered,
): TurnedBox {
  let size = measured.get(text);
  if (!size) {
    size = { width: textWidth(text, 1), drop: textDrop(text, 1), rise: textRise(text, 1) };
    measured.set(text, size);
  }
  const width = size.width * height;
  const drop = size.drop * height;
  const rise = size.rise * height;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const right = anchor === 'start' ? width / 2 : anchor === 'middle' ? 0 : -width / 2;
  const up = (rise - drop) / 2;
  return {
    x: at.x + right * cos - up * sin,
    y: at.y + right * sin + up * cos,
    halfWidth: width / 2 + MARGIN,
    halfHeight: (rise + drop) / 2 + MARGIN / 2,
    cos,
    sin,
  };
}

export function isRoomFor(board: Board, lettered: Lettered, what = EVERYTHING): boolean {
  const box = textBox(board, lettered);
  return isInWindow(board, box) && isBoxFree(board.clearance, box, what);
}

/**
 * Writes texts that belong together at the first of their places that is free of everything; on a second look steel may
 * lie behind them. False when there is none.
 */
export function writeFirst(board: Board, places: Iterable<readonly Lettered[]>): boolean {
  let over: readonly Lettered[] | undefined;
  for (const those of places) {
    if (those.every((one) => isRoomFor(board, one))) {
      for (const one of those) write(board, one);
      return true;
    }
    if (!over && those.every((one) => isRoomFor(board, one, EVERYTHING & ~STEEL))) over = those;
  }
  for (const one of over ?? []) write(board, { ...one, overSteel: true });
  return over !== undefined;
}

/** Whether all of a box is where it will be seen. */
export function isInWindow({ window }: Board, box: TurnedBox): boolean {
  if (!window) return true;
  const reachX = Math.abs(box.cos) * box.halfWidth + Math.abs(box.sin) * box.halfHeight;
  const reachY = Math.abs(box.sin) * box.halfWidth + Math.abs(box.cos) * box.halfHeight;
  return (
    box.x - reachX >= window.minX &&
    box.x + reachX <= window.maxX &&
    box.y - reachY >= window.minY &&
    box.y + reachY <= window.maxY
  );
}

function isHatched(board: Board, lettered: Lettered): boolean {
  const { x, y, halfWidth, halfHeight } = textBox(board, lettered);
  const reach = Math.max(halfWidth, halfHeight);
  return board.hatched.some((box) => boxesMeet({ minX: x, maxX: x, minY: y, maxY: y }, box, reach));
}

export function write(board: Board, lettered: Lettered): void {
  const { text, at, angle, anchor, height, style, layer, feature, measures } = lettered;
  addBox(board.clearance, TEXT, textBox(board, lettered));
  board.marks.push({
    kind: 'text',
    layer: layer ?? 'dimensions',
    style,
    text,
    at: toGridPoint(board, at),
    height,
    angle,
    anchor,
    halo: lettered.overSteel === true || isHatched(board, lettered),
    ...(feature === undefined ? {} : { feature }),
    ...(measures === undefined ? {} : { measures }),
  });
}

/** Draws a straight line and keeps it clear of what comes later. */
export function rule(board: Board, style: LineStyle, what: number, a: Place, b: Place): void {
  addLine(board.clearance, what, a, b);
  board.marks.push({
    kind: 'line',
    layer: 'dimensions',
    style,
    path: {
      start: toGridPoint(board, a),
      segments: [{ to: toGridPoint(board, b) }],
      closed: false,
    },
  });
}

const ARROW_MM = 2.2;

interface LeaderText {
  readonly target: Place;
  /** The way to look first. */
  readonly toward: Place;
  readonly text: string;
  readonly arrow: boolean;
  /** Whether the line may cross the outline when there is no other way: for names, not for sizes. */
  readonly overOutline?: boolean;
  readonly style?: TextStyle;
  readonly feature?: string | undefined;
  readonly measures?: Measured | undefined;
}

const REACHES = [4, 6, 9, 13, 18, 24];
const TURNS = [0, 0.4, -0.4, 0.8, -0.8, 1.25, -1.25, 1.8, -1.8, 2.5, -2.5, Math.PI];

/** A level text at the end of a line from what it speaks of. False when there is no room near. */
export function writeWithLeader(board: Board, wanted: LeaderText): boolean {
  const { target, toward, text, arrow, overOutline, style = 'dimension' } = wanted;
  const { feature, measures } = wanted;
  const base = Math.atan2(toward.y, toward.x);
  const { height } = board.lettering;
  let second: Leader | undefined;
  for (const reach of REACHES) {
    for (const turn of TURNS) {
      const angle = base + turn;
      const way = { x: Math.cos(angle), y: Math.sin(angle) };
      const elbow = along(target, way, reach);
      const right = way.x >= 0;
      const lettered: Lettered = {
        text,
        at: { x: elbow.x + (right ? 0.8 : -0.8), y: elbow.y - height / 2 },
        angle: 0,
        anchor: right ? 'start' : 'end',
        height,
        style,
        feature,
        measures,
      };
      if (!isRoomFor(board, lettered)) continue;
      if (!isLineFree(board.clearance, target, elbow, TEXT | SYMBOL)) continue;
      const foot = along(target, way, 0.5);
      if (!isLineFree(board.clearance, foot, elbow, DIMENSION)) continue;
      const leader = { lettered, target, elbow, angle, arrow };
      if (isLineFree(board.clearance, foot, elbow, EXTENSION | OUTLINE)) {
        drawLeader(board, leader);
        return true;
      }
      if (overOutline || isLineFree(board.clearance, foot, elbow, OUTLINE)) second ??= leader;
    }
  }
  if (second) drawLeader(board, second);
  return second !== undefined;
}

interface Leader {
  readonly lettered: Lettered;
  readonly target: Place;
  readonly elbow: Place;
  readonly angle: number;
  readonly arrow: boolean;
}

function drawLeader(board: Board, { lettered, target, elbow, angle, arrow }: Leader): void {
  rule(board, 'dimension', DIMENSION, target, elbow);
  if (arrow) {
    const way = { x: Math.cos(angle), y: Math.sin(angle) };
    board.marks.push({
      kind: 'symbol',
      layer: 'dimensions',
      symbol: 'arrow',
      at: toGridPoint(board, target),
      size: ARROW_MM,
      angle: angle + Math.PI,
    });
    addBox(board.clearance, SYMBOL, {
      ...along(target, way, ARROW_MM / 2),
      halfWidth: ARROW_MM / 2,
      halfHeight: ARROW_MM / 3,
      cos: way.x,
      sin: way.y,
    });
  }
  write(board, lettered);
}
