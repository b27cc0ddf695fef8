import type { Box } from '../../geometry/box.ts';
import type { UnitStyle } from '../../job/job.ts';
import { boundsOf } from '../bounds.ts';
import { addBox, addLine, BOARD, FEATURE, type Place } from '../clearance.ts';
import { type Board, lengthText, makeBoard, toMm } from '../dimension/board.ts';
import { drawInLane, type Lane } from '../dimension/linear.ts';
import type { Mark } from '../marks.ts';
import { pathPoints } from '../paths.ts';
import type { DrawingWords } from '../words/en.ts';
import type { BreakLines, Cut, CutSize } from './cut.ts';
import { writeFlags } from './flags.ts';

/** How a cut is put on paper. */
export interface CutPlacing {
  readonly gridPerMm: number;
  readonly units: UnitStyle;
  readonly words: DrawingWords;
  /** How far its words may reach to the right of the edge, mm of output. */
  readonly rightMm: number;
  readonly lines: BreakLines;
}

/** A section as marks, and the box round all of it, grid units. */
export interface PlacedCut {
  readonly marks: readonly Mark[];
  readonly bounds: Box;
  /** Sizes that found no room: none are dropped in silence. */
  readonly unplaced: readonly string[];
}

export const SECTION_LETTERS = 2.5;
const LANE_FIRST = 5;
const LANE_STEP = 5.5;
/** Lanes tried farther out when the one that a size should stand in is taken. */
const LANES = 4;
const DOT_MM = 1.1;

/** The marks of a cut: what is cut, its sizes beside and below it, and over it what everything is. */
export function placeCut(cut: Cut, placing: CutPlacing): PlacedCut {
  const { gridPerMm, units, words } = placing;
  const drawn = drawnMarks(cut);
  const body = boundsOf(drawn, { gridPerMm })!;
  const board = makeBoard({
    gridPerMm,
    origin: { x: 0, y: 0 },
    units,
    words,
    lettering: {
      height: SECTION_LETTERS,
      label: SECTION_LETTERS,
      first: LANE_FIRST,
      step: LANE_STEP,
    },
    keeps: true,
    hatched: [],
    extentMm: 200,
  });
  keepClear(board, cut, body);
  const unplaced = cut.sizes.flatMap((size) => placeSize(board, size, body));
  const sizes = boundsOf(board.marks, { gridPerMm });
  const top = Math.max(body.maxY, sizes?.maxY ?? body.maxY) / gridPerMm;
  writeFlags(board, cut.flags, {
    over: body.maxY / gridPerMm,
    top,
    right: placing.rightMm,
    lines: placing.lines,
  });
  const marks = [...drawn, ...board.marks];
  return { marks, bounds: boundsOf(marks, { gridPerMm })!, unplaced };
}

function drawnMarks({ areas, lines, dots }: Cut): readonly Mark[] {
  return [
    ...areas.map(({ layer, material, path }): Mark => {
      return { kind: 'area', layer, material, paths: [path] };
    }),
    ...lines.map(({ layer, style, path }): Mark => ({ kind: 'line', layer, style, path })),
    ...dots.map((at): Mark => {
      return { kind: 'symbol', layer: 'steel', symbol: 'dot', at, size: DOT_MM, angle: 0 };
    }),
  ];
}

/** Nothing is written on what is drawn. */
function keepClear(board: Board, { lines }: Cut, { minX, maxX, minY, maxY }: Box): void {
  const { gridPerMm } = board;
  addBox(board.clearance, BOARD, {
    x: (minX + maxX) / 2 / gridPerMm,
    y: (minY + maxY) / 2 / gridPerMm,
    halfWidth: (maxX - minX) / 2 / gridPerMm,
    halfHeight: (maxY - minY) / 2 / gridPerMm,
    cos: 1,
    sin: 0,
  });
  for (const { path } of lines) {
    const places = pathPoints(path, 4).map((point) => toMm(board, point));
    places.slice(1).forEach((place, i) => {
      addLine(board.clearance, FEATURE, places[i]!, place);
    });
  }
}

const OFF: Readonly<Record<CutSize['side'], Place>> = {
  left: { x: -1, y: 0 },
  right: { x: 1, y: 0 },
  below: { x: 0, y: -1 },
};

/** Draws a size; gives it back when it found no room. */
function placeSize(board: Board, size: CutSize, body: Box): readonly string[] {
  const off = OFF[size.side];
  const edge = { left: -body.minX, right: body.maxX, below: -body.minY }[size.side];
  const level = edge / board.gridPerMm + LANE_FIRST + size.lane * LANE_STEP;
  const lanes: readonly Lane[] = Array.from({ length: LANES }, (_, i) => {
    return { off, level: level + i * LANE_STEP };
  });
  const { from, to } = size;
  const across = size.side === 'below' ? to.x - from.x : to.y - from.y;
  const text = lengthText(board, Math.abs(Math.round(across)));
  const places = { from: toMm(board, from), to: toMm(board, to), text };
  return drawInLane(board, places, lanes) === undefined ? [text] : [];
}
