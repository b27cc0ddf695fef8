import { doubledArea } from '../geometry/area.ts';
import type { Job, Pad } from '../job/job.ts';
import { cornerLetter } from '../job/letters.ts';
import type { Layout } from '../takeoff/layout/layout.ts';
import {
  addBox,
  addLine,
  BOARD,
  DIMENSION,
  isLineFree,
  type Place,
  SYMBOL,
  TEXT,
} from './clearance.ts';
import {
  along,
  type Board,
  isRoomFor,
  type Lettered,
  toGridPoint,
  toMm,
  wayFrom,
  write,
} from './dimension/board.ts';
import { keep } from './dimension/keyed.ts';
import { polyline } from './paths.ts';
import { textWidth } from './textSize.ts';

/** A pad with more corners than this isn't set out by letters. */
const LETTERED_MOST = 120;
/** From a corner to the middle of its letter, mm; near ones first. */
const REACHES = [3.2, 4.2, 5.4, 6.8, 8.6, 11.5, 15, 20, 26];
/** Farther off than this, a line joins a letter to its corner. */
const NEAR = 5.5;
/** Off the way out of the corner, radians. */
const TURNS = [0, 0.4, -0.4, 0.8, -0.8, 1.2, -1.2, 1.6, -1.6, 2, -2, 2.5, -2.5, Math.PI];
/** A line out of a corner may cross the board there as far as this, mm. */
const PAST_BOARD = 2.5;
/** Among boards and stakes a finer look finds a way between them. */
const FINE_TURNS = TURNS.flatMap((turn) => [turn, turn + 0.13, turn - 0.13, turn + 0.26]);
/** Letter to frame, mm. */
const FRAME = 0.7;

/**
 * The letter of every pad's corners, as in the tables, each in a box, since bare capitals name the kinds of edges.
 * @param skipped A pad whose letters stand on the screen already.
 * @param side On which side of the outline they are tried first.
 */
export function letterCorners(
  board: Board,
  { features }: Job,
  skipped: string | undefined,
  side: 'outside' | 'inside' = 'outside',
): void {
  for (const feature of features) {
    if (feature.kind === 'pad' && feature.id !== skipped) letterPad(board, feature, side);
  }
}

function letterPad(board: Board, { id, shape }: Pad, side: 'outside' | 'inside'): void {
  const { corners } = shape;
  if (corners.length < 3 || corners.length > LETTERED_MOST) return;
  const turned = doubledArea(corners) < 0 === (side === 'outside') ? -1 : 1;
  corners.forEach((corner, i) => {
    const here = toMm(board, corner);
    const before = toMm(board, corners[(i + corners.length - 1) % corners.length]!);
    const after = toMm(board, corners[(i + 1) % corners.length]!);
    const [one, two] = [wayFrom(before, here), wayFrom(here, after)];
    // Both sides turned out and added up: along the outer half of the angle.
    const out = Math.atan2(-turned * (one.x + two.x), turned * (one.y + two.y));
    const turns = side === 'inside' ? FINE_TURNS : TURNS;
    writeBoxed(board, cornerLetter(i), here, out, id, turns);
  });
}

/** A letter in a box near a place, or farther off at the end of a line; on paper in the list, if there is no room. */
function writeBoxed(
  board: Board,
  text: string,
  at: Place,
  out: number,
  feature?: string,
  turns = TURNS,
): void {
  const height = board.lettering.height;
  const half = { x: textWidth(text, height) / 2 + FRAME, y: height / 2 + FRAME };
  for (const reach of REACHES) {
    for (const turn of turns) {
      const way = { x: Math.cos(out + turn), y: Math.sin(out + turn) };
      const middle = along(at, way, reach);
      const lettered: Lettered = {
        text,
        at: { x: middle.x, y: middle.y - height / 2 },
        angle: 0,
        anchor: 'middle',
        height,
        style: 'label',
        layer: 'labels',
        feature,
      };
      // Room for the frame as well: as for a larger letter.
      const framed = { x: middle.x, y: middle.y - half.y };
      if (!isRoomFor(board, { ...lettered, height: 2 * half.y, at: framed })) continue;
      if (reach > NEAR && !drawLead(board, at, along(at, way, reach - toFrame(half, way))))
        continue;
      drawFrame(board, middle, half);
      write(board, lettered);
      return;
    }
  }
  if (!board.keeps) return;
  const place = toGridPoint(board, at);
  const toward = { x: Math.cos(out), y: Math.sin(out) };
  keep(board, { what: 'corner', text, from: place, to: place, target: at, toward });
}

/** From the middle of a frame to where a line of this way meets it. */
function toFrame(half: Place, way: Place): number {
  return Math.min(half.x / Math.abs(way.x), half.y / Math.abs(way.y)) + 0.2;
}

/** A line from a corner to its letter; false where it would cross what is written. */
function drawLead(board: Board, from: Place, to: Place): boolean {
  const way = wayFrom(from, to);
  if (!isLineFree(board.clearance, along(from, way, 0.5), to, TEXT | SYMBOL)) return false;
  // Along a form board it couldn't be told from the board.
  if (!isLineFree(board.clearance, along(from, way, PAST_BOARD), to, BOARD)) return false;
  addLine(board.clearance, DIMENSION, from, to);
  const path = polyline([toGridPoint(board, from), toGridPoint(board, to)]);
  board.marks.push({ kind: 'line', layer: 'labels', style: 'dimension', path });
  return true;
}

function drawFrame(board: Board, middle: Place, half: Place): void {
  const box = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([x, y]) => toGridPoint(board, { x: middle.x + x! * half.x, y: middle.y + y! * half.y }));
  const path = polyline(box, true);
  board.marks.push(
    { kind: 'area', layer: 'labels', material: 'paper', paths: [path] },
    { kind: 'line', layer: 'labels', style: 'hairline', path },
  );
  addBox(board.clearance, SYMBOL, {
    ...middle,
    halfWidth: half.x,
    halfHeight: half.y,
    cos: 1,
    sin: 0,
  });
}

/** The chosen line with its zero, and the two marks that tapes are hooked on. */
export function drawLayout(board: Board, { offsets, tapeTies }: Layout): void {
  if (offsets) {
    const { zero, baseline } = offsets;
    const end = zero === baseline.from ? baseline.to : baseline.from;
    board.marks.push({
      kind: 'line',
      layer: 'labels',
      style: 'guide',
      path: polyline([zero, end]),
    });
    const way = wayFrom(toMm(board, end), toMm(board, zero));
    writeBoxed(board, '0', toMm(board, zero), Math.atan2(way.y, way.x));
  }
  tapeTies?.marks.forEach(({ at }, i) => {
    board.marks.push({
      kind: 'symbol',
      layer: 'labels',
      symbol: 'cross',
      at,
      size: 3,
      angle: 0,
    });
    writeBoxed(board, `M${i + 1}`, toMm(board, at), Math.PI / 4);
  });
}
