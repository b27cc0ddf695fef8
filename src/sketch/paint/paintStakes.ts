import type { FormPlace } from '../formLine.ts';
import type { StakesInHand } from '../stakesInHand.ts';
import { type Spot, toScreen } from '../view.ts';
import type { Look } from './look.ts';
import { traceEdge } from './traceEdge.ts';
import { writeWord } from './writeWord.ts';

/** Half of a picked stake's frame, and of the hollow mark where one was taken away, CSS pixels. */
const FRAME_PX = 9;
const HOLLOW_PX = 5;
/** From the face of the form out to the middle of a stake as it is drawn. */
const OUT_PX = 6;
/** A length stands so far from the stake along the form, and so far out from it. */
const LENGTH_BESIDE_PX = 52;
const LENGTH_OUT_PX = 30;

/** Hollow marks where stakes were taken away. */
export function paintRemovedStakes(
  context: CanvasRenderingContext2D,
  { removed }: StakesInHand,
  look: Look,
): void {
  const { palette } = look;
  context.lineWidth = 1.8;
  context.strokeStyle = palette.stop;
  context.fillStyle = palette.paper;
  for (const place of removed) {
    paintSquare(context, place, HOLLOW_PX, look, 'filled');
    context.setLineDash([3, 2]);
    context.stroke();
  }
  context.setLineDash([]);
}

/** The stake that is picked or dragged, its run, and how far it is from both ends of it. */
export function paintPickedStake(
  context: CanvasRenderingContext2D,
  { picked, lengths }: StakesInHand,
  look: Look,
): void {
  if (!picked || !lengths) return;
  const { palette } = look;
  context.strokeStyle = palette.focus;
  context.lineWidth = 2;
  context.setLineDash([6, 4]);
  context.beginPath();
  for (const edge of picked.run.edges) traceEdge(context, edge, look);
  context.stroke();
  context.setLineDash([]);
  context.lineWidth = 3;
  paintSquare(context, picked, FRAME_PX, look, 'open');
  context.stroke();
  const [fromStart, toEnd] = lengths;
  for (const [text, along] of [
    [fromStart, -LENGTH_BESIDE_PX],
    [toEnd, LENGTH_BESIDE_PX],
  ] as const) {
    writeWord(context, text, inSight(spotAt(picked, LENGTH_OUT_PX, along, look), look), look);
  }
}

/** A square that lies along the form. */
function paintSquare(
  context: CanvasRenderingContext2D,
  place: FormPlace,
  half: number,
  look: Look,
  inside: 'filled' | 'open',
): void {
  context.beginPath();
  for (const [out, along] of SQUARE) {
    const { x, y } = spotAt(place, OUT_PX + out * half, along * half, look);
    context.lineTo(x, y);
  }
  context.closePath();
  if (inside === 'filled') context.fill();
}

const SQUARE = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;

/** The spot so many pixels out from a place on a form, and so many on along it. */
function spotAt(
  { face, outward }: FormPlace,
  out: number,
  along: number,
  { view, size }: Look,
): Spot {
  const at = toScreen(view, size, face);
  const [cos, sin] = [Math.cos(outward), Math.sin(outward)];
  // The way along the form is a quarter turn to the left of outward; the page's y runs up and the screen's down.
  return { x: at.x + out * cos - along * sin, y: at.y - out * sin - along * cos };
}

/** A length is never cut off by the edge of the screen. */
function inSight({ x, y }: Spot, { size }: Look): Spot {
  const within = (value: number, room: number, most: number) =>
    Math.min(most - room, Math.max(room, value));
  return { x: within(x, 40, size.width), y: within(y, 14, size.height) };
}
