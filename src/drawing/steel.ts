import type { Point } from '../geometry/point.ts';
import type { SteelResult } from '../takeoff/result.ts';
import { sidesOf } from '../takeoff/steel/laps.ts';
import type { MeshPiece } from '../takeoff/steel/plan.ts';
import { directionOf } from '../takeoff/steel/rows.ts';
import { addLine, STEEL } from './clearance.ts';
import {
  along,
  type Board,
  isRoomFor,
  type Lettered,
  lengthText,
  readingAngle,
  toMm,
  wayFrom,
  write,
} from './dimension/board.ts';
import type { LineStyle, Mark } from './marks.ts';
import { polyline } from './paths.ts';

/** More pieces than this are a texture: names and sizes may stand on it, and no piece is lettered. */
export const MANY = 400;

/**
 * Pieces of mesh as they lie, each with a diagonal across (the sign for a sheet), its sides dashed where another piece laps
 * over them; or each bar; and dowels.
 */
export function drawSteel(board: Board, steel: SteelResult): readonly Mark[] {
  return [...drawMesh(board, steel), ...drawBars(board, steel), ...drawDowels(board, steel)];
}

/** Each bar as it lies, laps not drawn. */
function drawBars(board: Board, { bars }: SteelResult): readonly Mark[] {
  return (bars?.lines ?? []).map(({ from, to, way }) =>
    steelLine(board, way === 'corner' ? 'bar-corner' : 'bar', from, to),
  );
}

/** A line of the steel's layer that texts keep clear of where they can. */
export function steelLine(board: Board, style: LineStyle, from: Point, to: Point): Mark {
  addLine(board.clearance, STEEL, toMm(board, from), toMm(board, to));
  return { kind: 'line', layer: 'steel', style, path: polyline([from, to]) };
}

/** Dowels across the edge, half in the old slab. */
function drawDowels(board: Board, { dowels }: SteelResult): readonly Mark[] {
  if (!dowels) return [];
  const half = dowels.size.length / 2;
  return dowels.seams.flatMap(({ outward, holes }) => {
    const [dx, dy] = [Math.cos(outward) * half, Math.sin(outward) * half];
    return holes.map(({ at }) =>
      steelLine(board, 'dowel', { x: at.x - dx, y: at.y - dy }, { x: at.x + dx, y: at.y + dy }),
    );
  });
}

function drawMesh(board: Board, { mesh }: SteelResult): readonly Mark[] {
  const pieces = mesh?.plan.pieces ?? [];
  if (!mesh || pieces.length > MANY) {
    return pieces.map((piece) => {
      const path = polyline(cornersOf(piece), true);
      return { kind: 'line', layer: 'steel', style: 'mesh', path };
    });
  }
  const sides = sidesOf(mesh.plan);
  return pieces.flatMap((piece, i) => {
    const [a, , c] = cornersOf(piece);
    return [
      ...sides[i]!.map(({ from, to, hidden }) =>
        steelLine(board, hidden ? 'mesh-under' : 'mesh', from, to),
      ),
      steelLine(board, 'lap', a!, c!),
    ];
  });
}

/** On each piece's diagonal, where there is room: its number and the sheet that it is cut from; below it its size. */
export function letterSteel(board: Board, { mesh }: SteelResult): void {
  const pieces = mesh?.plan.pieces ?? [];
  if (pieces.length > MANY) return;
  for (const piece of pieces) {
    const { words } = board;
    const form = mesh?.plan.used[piece.used]?.form ?? 'sheet';
    letter(board, piece, words.meshMark(piece.mark, form, piece.used + 1), 0.9);
    const size = words.sides(lengthText(board, piece.length), lengthText(board, piece.width));
    letter(board, piece, size, -1.4 - 1.3 * board.lettering.height);
  }
}

function letter(board: Board, piece: MeshPiece, text: string, off: number): void {
  const [a, , c] = cornersOf(piece).map((corner) => toMm(board, corner));
  const way = wayFrom(a!, c!);
  const angle = readingAngle(way);
  const up = { x: -Math.sin(angle), y: Math.cos(angle) };
  const length = Math.hypot(c!.x - a!.x, c!.y - a!.y);
  for (const share of [0.5, 0.35, 0.65, 0.25, 0.75]) {
    const lettered: Lettered = {
      text,
      at: along(along(a!, way, length * share), up, off),
      angle,
      anchor: 'middle',
      height: board.lettering.height,
      style: 'figure',
      layer: 'steel',
    };
    if (!isRoomFor(board, lettered)) continue;
    write(board, lettered);
    return;
  }
}

export function cornersOf({ corner, angle, length, width }: MeshPiece): readonly Point[] {
  const [cos, sin] = directionOf(angle);
  const at = (x: number, y: number): Point => ({
    x: corner.x + x * cos - y * sin,
    y: corner.y + x * sin + y * cos,
  });
  return [at(0, 0), at(length, 0), at(length, width), at(0, width)];
}
