import { formatAngle } from '../../units/format.ts';
import {
  along,
  type Board,
  isRoomFor,
  type Lettered,
  toMm,
  wayFrom,
  write,
  writeWithLeader,
} from './board.ts';
import { keep } from './keyed.ts';
import type { Loop } from './loops.ts';

/** A corner this near to square (degrees) is built square: 1/8 in over 6 ft. Common practice, no source. */
const SQUARE_ENOUGH = 0.1;

/** Corners to be set out between straight edges that are not square, by their angle inside the pour. */
export function drawAngles(board: Board, { sides, closed }: Loop): void {
  sides.forEach((next, index) => {
    const before = sides[index - 1] ?? (closed ? sides.at(-1) : undefined);
    if (!before || before.arc || next.arc || !(before.laidOut || next.laidOut)) return;
    const back = wayFrom(before.to, before.from);
    const ahead = wayFrom(next.from, next.to);
    const inside =
      (Math.atan2(ahead.x * back.y - ahead.y * back.x, ahead.x * back.x + ahead.y * back.y) * 180) /
      Math.PI;
    const degrees = inside < 0 ? inside + 360 : inside;
    if (Math.abs(degrees - 90 * Math.round(degrees / 90)) < SQUARE_ENOUGH) return;
    const half = ((degrees / 2) * Math.PI) / 180;
    // From the edge ahead, turned left by half the angle: into the pour.
    const into = {
      x: ahead.x * Math.cos(half) - ahead.y * Math.sin(half),
      y: ahead.x * Math.sin(half) + ahead.y * Math.cos(half),
    };
    const text = formatAngle(Math.round(degrees * 10) / 10);
    board.sizes.push({ what: 'angle', text, from: next.from, to: next.from });
    writeAngle(board, next.from, into, text);
  });
}

function writeAngle(
  board: Board,
  corner: { readonly x: number; readonly y: number },
  into: { readonly x: number; readonly y: number },
  text: string,
): void {
  const at = toMm(board, corner);
  const { height } = board.lettering;
  for (const reach of [4.5, 6, 8, 10.5]) {
    const middle = along(at, into, reach);
    const lettered: Lettered = {
      text,
      at: { x: middle.x, y: middle.y - height / 2 },
      angle: 0,
      anchor: 'middle',
      height,
      style: 'dimension',
    };
    if (!isRoomFor(board, lettered)) continue;
    write(board, lettered);
    return;
  }
  if (writeWithLeader(board, { target: at, toward: into, text, arrow: false })) return;
  keep(board, { what: 'angle', text, from: corner, to: corner, target: at, toward: into });
}
