import type { Point } from '../geometry/point.ts';
import type { NetPour } from '../takeoff/outline/pour.ts';
import type { BarsResult, DowelsResult, MeshResult, Takeoff } from '../takeoff/result.ts';
import { barLaps } from '../takeoff/steel/barLaps.ts';
import type { BarRange } from '../takeoff/steel/barLines.ts';
import { lapsOf, type MeshLap } from '../takeoff/steel/laps.ts';
import type { MeshPiece } from '../takeoff/steel/plan.ts';
import { directionOf } from '../takeoff/steel/rows.ts';
import { addBox, type Place, SYMBOL } from './clearance.ts';
import {
  along,
  type Board,
  dot,
  type Lettered,
  lengthText,
  readingAngle,
  toMm,
  wayFrom,
  writeFirst,
  writeWithLeader,
} from './dimension/board.ts';
import { keep } from './dimension/keyed.ts';
import { drawInLane } from './dimension/linear.ts';
import { drawRunning } from './dimension/running.ts';
import { type DrawnLayer, NOTHING_WRITTEN } from './formsLayer.ts';
import type { Mark } from './marks.ts';
import { edgePath, pathPoints } from './paths.ts';
import { nameAlong, SHARES } from './pieceMarks.ts';
import { cornersOf, drawSteel, MANY, steelLine } from './steel.ts';
import { textWidth } from './textSize.ts';

export const CHAIR_MM = 1.3;
/** Chairs nearer to each other than this on paper would be a texture: they are counted, not drawn. */
const LEAST_CHAIRS_MM = 5;
/** Two bars lapped are drawn this far apart, mm. */
export const LAPPED_MM = 0.9;

/**
 * The steel on paper: mesh with every piece's number, sheet and size and its laps; or bars with how far apart they are;
 * chairs; dowels with the distance of every hole from where its seam starts.
 */
export function steelLayer(board: Board, { steel, pour }: Takeoff): DrawnLayer {
  if (!steel || !pour) return { marks: [], ...NOTHING_WRITTEN };
  const { mesh, bars, dowels, chairs } = steel;
  return {
    marks: [
      ...drawSteel(board, steel),
      ...(bars ? drawBarLaps(board, bars) : []),
      ...(areChairsDrawn(chairs, board.gridPerMm) ? drawChairs(board, chairs) : []),
    ],
    write: () => {
      if (mesh && mesh.plan.pieces.length <= MANY) {
        for (const piece of mesh.plan.pieces) markPiece(board, mesh, piece);
      }
    },
    measure: () => {
      const unmeasured = dowels ? measureDowels(board, dowels) : [];
      if (bars) for (const range of bars.ranges) measureRange(board, pour, bars, range);
      return unmeasured;
    },
    name: () => {
      if (dowels) nameSeams(board, dowels);
      if (bars) nameCornerBars(board, bars);
      if (mesh && mesh.plan.pieces.length <= MANY) {
        for (const lap of lapsOf(mesh.plan)) letterLap(board, lap);
      }
    },
  };
}

/** Whether chairs stand far enough apart to be seen one by one. */
export function areChairsDrawn(
  chairs: readonly Point[] | undefined,
  gridPerMm: number,
): chairs is readonly Point[] {
  if (!chairs || chairs.length === 0) return false;
  const [first, second] = chairs;
  if (!first || !second) return true;
  return Math.hypot(second.x - first.x, second.y - first.y) / gridPerMm >= LEAST_CHAIRS_MM;
}

function drawChairs(board: Board, chairs: readonly Point[]): readonly Mark[] {
  const half = CHAIR_MM / 2 + 0.1;
  return chairs.map((at): Mark => {
    const place = { ...toMm(board, at), halfWidth: half, halfHeight: half, cos: 1, sin: 0 };
    addBox(board.clearance, SYMBOL, place);
    return { kind: 'symbol', layer: 'steel', symbol: 'dot', at, size: CHAIR_MM, angle: 0 };
  });
}

/** The end of the next bar beside that of the one before. */
function drawBarLaps(board: Board, bars: BarsResult): readonly Mark[] {
  return barLaps(bars).map(({ from, to }) => {
    const way = wayFrom(from, to);
    const off = LAPPED_MM * board.gridPerMm;
    const aside = ({ x, y }: Point): Point => ({ x: x - way.y * off, y: y + way.x * off });
    return steelLine(board, 'bar', aside(from), aside(to));
  });
}

/** The number of a piece, what it is cut from and its size, on the piece; else its number and a line to it. */
function markPiece(board: Board, { plan }: MeshResult, piece: MeshPiece): void {
  const { words } = board;
  const form = plan.used[piece.used]?.form ?? 'sheet';
  const mark = words.meshMark(piece.mark, form, piece.used + 1);
  const size = words.sides(lengthText(board, piece.length), lengthText(board, piece.width));
  const both = words.meshPiece(mark, size);
  if (writeFirst(board, onPiece(board, piece, [both]))) return;
  if (writeFirst(board, onPiece(board, piece, [mark, size]))) return;
  if (writeFirst(board, onPiece(board, piece, [mark]))) return;
  const [a, , c] = cornersOf(piece);
  const middle = { x: (a!.x + c!.x) / 2, y: (a!.y + c!.y) / 2 };
  const target = toMm(board, middle);
  const toward = { x: Math.SQRT1_2, y: Math.SQRT1_2 };
  const style = 'figure';
  if (writeWithLeader(board, { target, toward, text: mark, arrow: true, overOutline: true, style }))
    return;
  keep(board, { what: 'mesh-piece', text: both, from: middle, to: middle, target, toward });
}

/** Places where texts, one under the other, lie on a piece, those near its middle first; along it, then across. */
function* onPiece(
  board: Board,
  piece: MeshPiece,
  texts: readonly string[],
): Generator<readonly Lettered[]> {
  const [a, b, , d] = cornersOf(piece).map((corner) => toMm(board, corner));
  const [u, v] = [wayFrom(a!, b!), wayFrom(a!, d!)];
  const [long, wide] = [piece.length / board.gridPerMm, piece.width / board.gridPerMm];
  const { height } = board.lettering;
  const line = height * LINES_APART;
  const halfWidth = Math.max(...texts.map((one) => textWidth(one, height))) / 2 + 0.8;
  const halfHeight = (height + (texts.length - 1) * line) / 2 + 0.8;
  for (const way of [u, v]) {
    const [halfU, halfV] = way === u ? [halfWidth, halfHeight] : [halfHeight, halfWidth];
    if (long < 2 * halfU || wide < 2 * halfV) continue;
    const angle = readingAngle(way);
    const down = { x: Math.sin(angle), y: -Math.cos(angle) };
    for (const [x, y] of GRID) {
      if (Math.min(x, 1 - x) * long < halfU || Math.min(y, 1 - y) * wide < halfV) continue;
      const middle = along(along(a!, u, x * long), v, y * wide);
      yield texts.map((text, i) => {
        const row = along(middle, down, (i - (texts.length - 1) / 2) * line);
        return centred(board, text, row, way);
      });
    }
  }
}

/** From one line of letters to the next, in heights of a letter. */
const LINES_APART = 1.6;

/** Shares of a piece, those near its middle first. */
const GRID: readonly (readonly [number, number])[] = SHARES.flatMap((x) =>
  SHARES.map((y) => [x, y] as const),
).sort((a, b) => Math.hypot(a[0] - 0.5, a[1] - 0.5) - Math.hypot(b[0] - 0.5, b[1] - 0.5));

/** A text with its middle at a place. */
function centred(board: Board, text: string, middle: Place, way: Place): Lettered {
  const angle = readingAngle(way);
  const { height } = board.lettering;
  return {
    text,
    at: along(middle, { x: Math.sin(angle), y: -Math.cos(angle) }, height / 2),
    angle,
    anchor: 'middle',
    height,
    style: 'figure',
    layer: 'steel',
  };
}

/** A letter on every lap, with how far it reaches where that finds room within the lap. */
function letterLap(board: Board, { corners, lap }: MeshLap): void {
  const [a, b, c, d] = corners.map((corner) => toMm(board, corner));
  const isWide = Math.hypot(b!.x - a!.x, b!.y - a!.y) >= Math.hypot(d!.x - a!.x, d!.y - a!.y);
  const [start, end] = isWide ? [a!, b!] : [a!, d!];
  const opposite = isWide ? d! : b!;
  const way = wayFrom(start, end);
  const length = Math.hypot(end.x - start.x, end.y - start.y);
  const middle = { x: (start.x + opposite.x) / 2, y: (start.y + opposite.y) / 2 };
  if (!c || length < LEAST_LAP_MM) return;
  const places = (text: string) =>
    LAP_SHARES.filter(
      (share) => Math.min(share, 1 - share) * length > textWidth(text, board.lettering.height) / 2,
    ).map((share) => [centred(board, text, along(middle, way, share * length), way)]);
  const { words, gridPerMm, lettering } = board;
  const full = lap / gridPerMm >= lettering.height + 0.8 ? words.lap(lengthText(board, lap)) : '';
  if (full && writeFirst(board, places(full))) return;
  writeFirst(board, places(words.lapShort));
}

const LAP_SHARES = [0.5, 0.38, 0.62, 0.25, 0.75, 0.12, 0.88];
const LEAST_LAP_MM = 5;

/** Lanes on either side for how far apart bars are. */
const LANES = [0, 1, 2, 3];

/** Rows of bars one way and how far apart they are, on a dimension line beside the slab from the first to the last. */
function measureRange(
  board: Board,
  { pieces }: NetPour,
  { size, angle }: BarsResult,
  { rows, apart, first, last, way }: BarRange,
): void {
  if (rows < 2) return;
  const [cos, sin] = directionOf(way === 'along' ? angle : angle + Math.PI / 2);
  const { first: nearest, step } = board.lettering;
  const text = board.words.bars(rows, size, lengthText(board, apart));
  const outline = pieces
    .flatMap(({ rings }) => rings.flatMap(({ edges }) => edges))
    .flatMap((edge) => pathPoints(edgePath(edge), 4).map((point) => toMm(board, point)));
  for (const sign of [1, -1]) {
    const off = { x: sign * cos, y: sign * sin };
    const edge = Math.max(...outline.map((point) => dot(point, off)));
    // Extension lines begin outside of the slab.
    const ends = [first, last].map((one) => {
      const end = toMm(board, sign > 0 ? one.to : one.from);
      return along(end, off, edge - dot(end, off));
    });
    const lanes = LANES.map((lane) => ({ off, level: edge + nearest + lane * step }));
    if (drawInLane(board, { from: ends[0]!, to: ends[1]!, text }, lanes) !== undefined) return;
  }
  const target = toMm(board, first.from);
  const toward = { x: -cos, y: -sin };
  keep(board, { what: 'bars', text, from: first.from, to: last.from, target, toward });
}

/** The size and length of every bar across an inside corner, pointed at from where the slab is not. */
function nameCornerBars(board: Board, { lines, size }: BarsResult): void {
  for (const { from, to, way, length } of lines) {
    if (way !== 'corner') continue;
    const [a, b] = [toMm(board, from), toMm(board, to)];
    const on = wayFrom(a, b);
    const target = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    // The concrete lies to the bar's left.
    const toward = { x: on.y, y: -on.x };
    const text = board.words.cornerBar(size, lengthText(board, length));
    if (writeWithLeader(board, { target, toward, text, arrow: true, overOutline: true })) continue;
    keep(board, { what: 'bars', text, from, to, target, toward });
  }
}

/**
 * Holes by their distance along their seam from where it starts. Gives back the seams for which there is no room: their
 * holes stand in the list alone.
 */
function measureDowels(board: Board, { seams, size }: DowelsResult): readonly string[] {
  const clear = size.length / 2 / board.gridPerMm + 0.8;
  return seams.flatMap(({ mark, from, outward, holes }) => {
    const out = { x: Math.cos(outward), y: Math.sin(outward) };
    const stops = holes.map(({ along: distance, at }) => ({
      foot: toMm(board, at),
      out,
      text: lengthText(board, distance),
    }));
    const origin = { foot: toMm(board, from), out };
    return drawRunning(board, { origin, stops, straight: true, clear }) ? [] : [mark];
  });
}

function nameSeams(board: Board, { seams, size }: DowelsResult): void {
  for (const { mark, from, to, length, outward, holes } of seams) {
    const out = { x: Math.cos(outward), y: Math.sin(outward) };
    const [a, b] = [toMm(board, from), toMm(board, to)];
    const way = wayFrom(a, b);
    const diameter = lengthText(board, size.diameter);
    nameAlong(board, {
      text: board.words.seam(mark, holes.length, diameter, lengthText(board, size.length)),
      style: 'figure',
      what: 'seam',
      layer: 'steel',
      length: length / board.gridPerMm,
      outer: size.length / 2 / board.gridPerMm,
      side: 'outside',
      spots: SHARES.map((share) => ({
        foot: along(a, way, (share * length) / board.gridPerMm),
        way,
        out,
      })),
    });
  }
}
