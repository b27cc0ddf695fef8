import type { Grid } from '../units/grid.ts';
import { addBox, asBox, BOARD } from './clearance.ts';
import { type Board, toMm } from './dimension/board.ts';
import { type BoardBand, type Face, type LaidPiece, onFace } from './laidBoards.ts';
import type { Mark } from './marks.ts';
import { polyline } from './paths.ts';

/**
 * The pieces of one run after another: boards that pass a corner over those that butt against them, a line across at each
 * splice, and its cleat outside.
 */
export function drawPieces(
  board: Board,
  pieces: readonly LaidPiece[],
  faces: ReadonlyMap<string, Face>,
  band: BoardBand,
  cleatLength: Grid,
): readonly Mark[] {
  const under: Mark[] = [];
  const over: Mark[] = [];
  const cleats: Mark[] = [];
  const runs = new Map<string, LaidPiece[]>();
  for (const piece of pieces) {
    const those = runs.get(piece.run);
    if (those) those.push(piece);
    else runs.set(piece.run, [piece]);
  }
  for (const [run, those] of runs) {
    const face = faces.get(run);
    if (!face) continue;
    const own = those.map((piece) => asDrawn(piece, face, band));
    for (const { from, to, start, end } of own) {
      keepClear(board, face, from, to, band.inner, band.outer);
      if (isOver(start) === isOver(end)) {
        (isOver(start) ? over : under).push(...slab(face, from, to, band, true));
        continue;
      }
      // Half over the boards it meets and half under them.
      const middle = (from + to) / 2;
      (isOver(start) ? over : under).push(...slab(face, middle, from, band, false));
      (isOver(end) ? over : under).push(...slab(face, middle, to, band, false));
    }
    const ends = [own[0]!.from, own.at(-1)!.to] as const;
    for (const { to } of own.slice(0, -1)) {
      const half = cleatLength / 2;
      const [from, until] = [Math.max(ends[0], to - half), Math.min(ends[1], to + half)];
      const outside = { inner: band.outer, outer: 2 * band.outer - band.inner };
      keepClear(board, face, from, until, outside.inner, outside.outer);
      cleats.push(...slab(face, from, until, outside, true), {
        kind: 'line',
        layer: 'forms',
        style: 'splice',
        path: polyline([onFace(face, to, band.inner), onFace(face, to, outside.outer)]),
      });
    }
  }
  return [...under, ...over, ...cleats];
}

/** Whether a board's end is drawn over another that it meets. */
function isOver(end: LaidPiece['end']): boolean {
  return end === 'passes' || end === 'laps' || end === 'stops';
}

/**
 * Boards drawn thicker than they are pass a corner, or stop short of it, by as much as they are drawn thick, so that it is
 * seen which one passes.
 */
function asDrawn(piece: LaidPiece, { length }: Face, { outer, thin }: BoardBand): LaidPiece {
  if (!thin) return piece;
  const drawn = (end: LaidPiece['end'], past: number): number => {
    if (end === 'passes' && past > 0) return Math.max(past, outer);
    return end === 'butts' && past < 0 ? Math.min(past, -outer) : past;
  };
  const { from, to, start, end } = piece;
  return { ...piece, from: -drawn(start, -from), to: length + drawn(end, to - length) };
}

/** A piece of wood with its outline; left open at `from` where the rest of it goes on. */
function slab(
  face: Face,
  from: number,
  to: number,
  { inner, outer }: Pick<BoardBand, 'inner' | 'outer'>,
  closed: boolean,
): readonly Mark[] {
  const corners = [
    onFace(face, from, inner),
    onFace(face, to, inner),
    onFace(face, to, outer),
    onFace(face, from, outer),
  ];
  return [
    { kind: 'area', layer: 'forms', material: 'lumber', paths: [polyline(corners, true)] },
    { kind: 'line', layer: 'forms', style: 'board', path: polyline(corners, closed) },
  ];
}

function keepClear(
  board: Board,
  face: Face,
  from: number,
  to: number,
  inner: number,
  outer: number,
): void {
  const off = (inner + outer) / 2;
  const [a, b] = [toMm(board, onFace(face, from, off)), toMm(board, onFace(face, to, off))];
  addBox(board.clearance, BOARD, asBox(a, b, (outer - inner) / 2 / board.gridPerMm, 0));
}
