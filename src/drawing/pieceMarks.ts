import { placeAlong } from '../takeoff/forms/along.ts';
import type { FormRun } from '../takeoff/result.ts';
import type { Place } from './clearance.ts';
import {
  along,
  type Board,
  dot,
  type KeyedSize,
  type Lettered,
  readingAngle,
  toGridPoint,
  toMm,
  writeFirst,
  writeWithLeader,
} from './dimension/board.ts';
import { keep, keepByPlace } from './dimension/keyed.ts';
import { type BoardBand, type Face, type LaidPiece, onFace } from './laidBoards.ts';
import type { TextStyle } from './marks.ts';
import { textDrop, textWidth } from './textSize.ts';

/** Where along a board its mark is tried. */
export const SHARES = [0.5, 0.42, 0.58, 0.34, 0.66, 0.25, 0.75, 0.16, 0.84];
/** Clear paper between a board or a stake and a mark, mm. */
const GAP_MM = 0.9;
/** Past the stakes, and past a cleat with its stakes, mm out of the board. */
const BEYOND_MM = [0, 2.6, 4.4];
/** Inside the form: past the line of its face. */
const INSIDE_MM = 1.2;

/** A board shorter than this on the output isn't pointed at, mm. */
const LEAST_MM = 3;

/** What is named along a straight or curved face. */
export interface Named {
  readonly text: string;
  readonly style: TextStyle;
  readonly what: KeyedSize['what'];
  /** Places on the inside face with the way on and out there, the best first; mm. */
  readonly spots: readonly Spot[];
  /** Length of what is named, mm. */
  readonly length: number;
  /** How far out of the face its boards reach, mm. */
  readonly outer: number;
  /** Which side is tried first. */
  readonly side: 'outside' | 'inside';
  readonly layer: 'forms' | 'steel';
}

interface Spot {
  readonly foot: Place;
  readonly way: Place;
  readonly out: Place;
}

/** The mark of every piece of board, beside it; where there is no room, at the end of a line or by a letter in the list. */
export function markPieces(
  board: Board,
  pieces: readonly LaidPiece[],
  faces: ReadonlyMap<string, Face>,
  band: BoardBand,
): void {
  for (const { mark, run, from, to } of pieces) {
    const face = faces.get(run);
    if (!face) continue;
    nameAlong(board, {
      text: mark,
      style: 'figure',
      what: 'board',
      length: (to - from) / board.gridPerMm,
      outer: band.outer / board.gridPerMm,
      side: 'outside',
      layer: 'forms',
      spots: SHARES.map((share) => ({
        foot: toMm(board, onFace(face, from + share * (to - from), 0)),
        way: face.way,
        out: face.out,
      })),
    });
  }
}

/** The mark of every form run, inside it. */
export function markRuns(board: Board, runs: readonly FormRun[], band: BoardBand): void {
  for (const { mark, edges, length } of runs) {
    nameAlong(board, {
      text: mark,
      style: 'small',
      what: 'run',
      length: length / board.gridPerMm,
      outer: band.outer / board.gridPerMm,
      side: 'inside',
      layer: 'forms',
      spots: SHARES.map((share) => {
        const at = placeAlong(edges, share * length);
        const out = { x: Math.cos(at.outward), y: Math.sin(at.outward) };
        return { foot: toMm(board, at), way: { x: -out.y, y: out.x }, out };
      }),
    });
  }
}

/** Writes a name beside a face; where there is no room, at the end of a line or by a letter in the list. */
export function nameAlong(board: Board, named: Named): void {
  const { text, style, what, spots, outer, side, length, layer } = named;
  const height = board.lettering.height;
  // On a screen one looks closer: a mark longer than its board would crowd the next.
  if (!board.keeps && length < textWidth(text, height)) return;
  const outside = BEYOND_MM.map((beyond) => outer + GAP_MM + beyond);
  const inside = [INSIDE_MM, INSIDE_MM + 2];
  const rows =
    side === 'outside'
      ? [...outside.map((off) => ({ off, sign: 1 })), ...inside.map((off) => ({ off, sign: -1 }))]
      : [...inside.map((off) => ({ off, sign: -1 })), ...outside.map((off) => ({ off, sign: 1 }))];
  const places = function* (): Generator<readonly [Lettered]> {
    for (const { off, sign } of rows) {
      for (const { foot, way, out } of spots) {
        const aside = { x: sign * out.x, y: sign * out.y };
        const angle = readingAngle(way);
        const up = { x: -Math.sin(angle), y: Math.cos(angle) };
        // The line that letters stand on is nearer when they stand away from the board.
        const reach = dot(up, aside) > 0 ? off + textDrop(text, height) : off + height;
        const at = along(foot, aside, reach);
        yield [{ text, at, angle, anchor: 'middle', height, style, layer }];
      }
    }
  };
  if (writeFirst(board, places())) return;
  const middle = spots[0];
  if (!board.keeps || !middle) return;
  const target = along(middle.foot, middle.out, outer / 2);
  const toward = middle.out;
  const place = toGridPoint(board, target);
  if (length < LEAST_MM) {
    keepByPlace(board, { what, text, from: place, to: place });
    return;
  }
  if (writeWithLeader(board, { target, toward, text, arrow: true, overOutline: true, style })) {
    return;
  }
  keep(board, { what, text, from: place, to: place, target, toward });
}
