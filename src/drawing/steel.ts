import type { Point } from '../geometry/point.ts';
import type { SteelResult } from '../takeoff/result.ts';
import type { MeshPiece } from '../takeoff/steel/plan.ts';
import { directionOf } from '../takeoff/steel/rows.ts';
import { addLine, FEATURE } from './clearance.ts';
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
import type { Mark } from './marks.ts';
import { polyline } from './paths.ts';

/** More pieces than this are a texture: names and sizes may stand on it, and no piece is lettered. */
const MANY = 400;

/**
 * Pieces of mesh as they lie, each with a diagonal across (the sign for a sheet), where two lie over each other is the lap;
 * or each bar; and dowels.
 */
export function drawSteel(board: Board, steel: SteelResult): readonly Mark[] {
  return [...drawMesh(board, steel), ...drawBars(board, steel), ...drawDowels(board, steel)];
}

/** Each bar as it lies, laps not drawn. */
function drawBars(board: Board, { bars }: SteelResult): readonly Mark[] {
  return (bars?.lines ?? []).map(({ from, to }): Mark => {
    addLine(board.clearance, FEATURE, toMm(board, from), toMm(board, to));
    return { kind: 'line', layer: 'steel', style: 'mesh', path: polyline([from, to]) };
  });
}

/** Dowels across the edge, half in the old slab. */
function drawDowels(board: Board, { dowels }: SteelResult): readonly Mark[] {
  if (!dowels) return [];
  const half = dowels.size.length / 2;
  return dowels.seams.flatMap(({ outward, holes }) => {
    const [dx, dy] = [Math.cos(outward) * half, Math.sin(outward) * half];
    return holes.map(({ at }): Mark => {
      const from = { x: at.x - dx, y: at.y - dy };
      const to = { x: at.x + dx, y: at.y + dy };
      addLine(board.clearance, FEATURE, toMm(board, from), toMm(board, to));
      return { kind: 'line', layer: 'steel', style: 'mesh', path: polyline([from, to]) };
    });
  });
}

function drawMesh(board: Board, { mesh }: SteelResult): readonly Mark[] {
  const pieces = mesh?.plan.pieces ?? [];
  return pieces.flatMap((piece): readonly Mark[] => {
    const corners = cornersOf(piece);
    const [a, , c] = corners;
    if (pieces.length <= MANY) {
      corners.forEach((corner, i) => {
        const next = corners[i + 1] ?? corners[0]!;
        addLine(board.clearance, FEATURE, toMm(board, corner), toMm(board, next));
      });
      addLine(board.clearance, FEATURE, toMm(board, a!), toMm(board, c!));
    }
    return [
      { kind: 'line', layer: 'steel', style: 'mesh', path: polyline(corners, true) },
      { kind: 'line', layer: 'steel', style: 'lap', path: polyline([a!, c!]) },
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

function cornersOf({ corner, angle, length, width }: MeshPiece): readonly Point[] {
  const [cos, sin] = directionOf(angle);
  const at = (x: number, y: number): Point => ({
    x: corner.x + x * cos - y * sin,
    y: corner.y + x * sin + y * cos,
  });
  return [at(0, 0), at(length, 0), at(length, width), at(0, width)];
}
