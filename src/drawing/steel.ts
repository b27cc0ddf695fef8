import type { Point } from '../geometry/point.ts';
import type { MeshPiece, SteelResult } from '../takeoff/result.ts';
import { addLine, FEATURE } from './clearance.ts';
import {
  along,
  type Board,
  isRoomFor,
  type Lettered,
  readingAngle,
  toMm,
  wayFrom,
  write,
} from './dimension/board.ts';
import type { Mark } from './marks.ts';
import { polyline } from './paths.ts';

/** More pieces than this are a texture: names and sizes may stand on it, and no piece is lettered. */
const MANY = 400;

/** Pieces of mesh as they lie, each with a diagonal across (the sign for a sheet). */
export function drawMesh(board: Board, { pieces }: SteelResult): readonly Mark[] {
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

/** Which sheet each piece is cut from, on its diagonal, where there is room. */
export function letterMesh(board: Board, { pieces }: SteelResult): void {
  if (pieces.length > MANY) return;
  for (const piece of pieces) {
    const [a, , c] = cornersOf(piece).map((corner) => toMm(board, corner));
    const way = wayFrom(a!, c!);
    const angle = readingAngle(way);
    const up = { x: -Math.sin(angle), y: Math.cos(angle) };
    const length = Math.hypot(c!.x - a!.x, c!.y - a!.y);
    for (const share of [0.5, 0.35, 0.65]) {
      const lettered: Lettered = {
        text: board.words.sheetMark(piece.sheet + 1),
        at: along(along(a!, way, length * share), up, 0.9),
        angle,
        anchor: 'middle',
        height: board.lettering.height,
        style: 'figure',
        layer: 'steel',
      };
      if (!isRoomFor(board, lettered)) continue;
      write(board, lettered);
      break;
    }
  }
}

function cornersOf({ corner, angle, length, width }: MeshPiece): readonly Point[] {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const at = (x: number, y: number): Point => ({
    x: corner.x + x * cos - y * sin,
    y: corner.y + x * sin + y * cos,
  });
  return [at(0, 0), at(length, 0), at(length, width), at(0, width)];
}
