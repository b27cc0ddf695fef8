import type { Takeoff } from '../takeoff/result.ts';
import { addBox, SYMBOL, TEXT } from './clearance.ts';
import {
  along,
  type Board,
  isRoomFor,
  type Lettered,
  toGridPoint,
  toMm,
  write,
} from './dimension/board.ts';
import { circlePath } from './paths.ts';

const RING_MM = 3;
const CROSS_MM = 3;
/** Places where the words may stand, from the ring. */
const SPOTS = [
  { x: 4, y: 2.6, anchor: 'start' },
  { x: 4, y: -5, anchor: 'start' },
  { x: -4, y: 2.6, anchor: 'end' },
  { x: -4, y: -5, anchor: 'end' },
  { x: 0, y: 5, anchor: 'middle' },
  { x: 0, y: -8, anchor: 'middle' },
] as const;

/** Where the sketch says nothing that can be poured: a ring and a cross at each place, and why. */
export function drawFaults(board: Board, { notes }: Takeoff): void {
  for (const { code, weight, at } of notes) {
    if (weight !== 'stop' || !at) continue;
    const { faults } = board.words;
    const text = Object.hasOwn(faults, code) ? faults[code as keyof typeof faults] : faults.other;
    for (const place of at) {
      const spot = toMm(board, place);
      board.marks.push(
        {
          kind: 'line',
          layer: 'notes',
          style: 'fault',
          path: circlePath(place, RING_MM * board.gridPerMm),
        },
        {
          kind: 'symbol',
          layer: 'notes',
          symbol: 'cross',
          at: place,
          size: CROSS_MM,
          angle: Math.PI / 4,
        },
      );
      addBox(board.clearance, SYMBOL, {
        ...spot,
        halfWidth: RING_MM,
        halfHeight: RING_MM,
        cos: 1,
        sin: 0,
      });
      writeFault(board, place, text);
    }
  }
}

function writeFault(
  board: Board,
  place: { readonly x: number; readonly y: number },
  text: string,
): void {
  const spot = toMm(board, place);
  const options = SPOTS.map(
    ({ x, y, anchor }): Lettered => ({
      text,
      at: along(spot, { x, y }, 1),
      angle: 0,
      anchor,
      height: board.lettering.height,
      style: 'label',
      layer: 'notes',
    }),
  );
  // Over lines if it must be: that something is wrong matters most. Never over another text.
  const free = options.find((one) => isRoomFor(board, one, TEXT | SYMBOL));
  if (free) write(board, free);
  else {
    board.marks.push({
      kind: 'symbol',
      layer: 'notes',
      symbol: 'dot',
      at: toGridPoint(board, spot),
      size: 1,
      angle: 0,
    });
  }
}
