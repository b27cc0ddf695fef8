import type { Point } from '../../geometry/point.ts';
import type { Feature } from '../../job/job.ts';
import { cornerLetter } from '../../job/letters.ts';
import type { WrittenLength } from '../lengthsInHand.ts';
import { edgesOf } from '../site.ts';
import type { StakesInHand } from '../stakesInHand.ts';
import type { Showing } from '../tools/machine.ts';
import type { Selection } from '../tools/tool.ts';
import { type Spot, toScreen } from '../view.ts';
import { handlesToPaint } from './handles.ts';
import type { Look } from './look.ts';
import { FONT } from './paintMarks.ts';
import { paintPickedStake, paintRemovedStakes } from './paintStakes.ts';
import { traceEdge } from './traceEdge.ts';
import { writeWord } from './writeWord.ts';

/** What lies above the drawing: the selection, the guides, and the outline in hand. */
export interface InHand {
  readonly showing: Showing;
  /** The selected feature as it is now (in a drag: as it is previewed). */
  readonly selected: Feature | null;
  readonly selection: Selection | null;
  /** Words at the cursor; empty for none. */
  readonly word: string;
  /** Lengths of the edges in hand, one for each. */
  readonly lengths: readonly string[];
  /** Lengths beside a dragged corner, while the drawing has no dimensions. */
  readonly beside: readonly WrittenLength[];
  readonly stakes: StakesInHand;
}

const HANDLE_PX = 5;
const GUIDE_DASH = [5, 4];
/** A word stands clear of a fingertip. */
const WORD_ABOVE_PX = 40;

export function paintHand(context: CanvasRenderingContext2D, hand: InHand, look: Look): void {
  context.save();
  context.lineJoin = 'round';
  if (hand.selected) paintSelected(context, hand.selected, hand.selection?.corner ?? null, look);
  paintRemovedStakes(context, hand.stakes, look);
  paintPickedStake(context, hand.stakes, look);
  paintPath(context, hand, look);
  paintMiddle(context, hand, look);
  for (const { at, text } of hand.beside) {
    writeWord(context, text, toScreen(look.view, look.size, at), look);
  }
  paintSnap(context, hand, look);
  writeLengths(context, hand, look);
  context.restore();
}

function paintSelected(
  context: CanvasRenderingContext2D,
  feature: Feature,
  corner: string | null,
  look: Look,
): void {
  const { view, size, palette } = look;
  context.strokeStyle = palette.focus;
  context.lineWidth = 2;
  context.setLineDash([]);
  const { shape } = feature;
  if (shape.form === 'round') {
    const at = toScreen(view, size, shape.center);
    context.beginPath();
    context.arc(at.x, at.y, shape.diameter / 2 / view.gridPerPx + 3, 0, 2 * Math.PI);
    context.stroke();
    return;
  }
  const edges = edgesOf(feature);
  // One stroke for all: a stroke an edge costs a frame on a long outline.
  context.beginPath();
  for (const edge of edges) traceEdge(context, edge, look);
  context.stroke();
  const chosen = edges.find(({ from }) => from.id === corner);
  if (chosen) {
    context.lineWidth = 5;
    context.beginPath();
    traceEdge(context, chosen, look);
    context.stroke();
  }
  for (const index of handlesToPaint(shape.corners, corner, view, size)) {
    const one = shape.corners[index];
    if (one) paintHandle(context, one, one.id === corner, cornerLetter(index), look);
  }
}

function paintHandle(
  context: CanvasRenderingContext2D,
  corner: Point,
  chosen: boolean,
  letter: string,
  look: Look,
): void {
  const { view, size, palette } = look;
  const at = toScreen(view, size, corner);
  const half = chosen ? HANDLE_PX + 3 : HANDLE_PX;
  context.lineWidth = 2;
  context.strokeStyle = palette.focus;
  context.fillStyle = chosen ? palette.focus : palette.paper;
  context.fillRect(at.x - half, at.y - half, 2 * half, 2 * half);
  context.strokeRect(at.x - half, at.y - half, 2 * half, 2 * half);
  writeLetter(context, letter, { x: at.x + half + 2, y: at.y - half - 2 }, look);
}

function paintPath(context: CanvasRenderingContext2D, hand: InHand, look: Look): void {
  const { path, closed } = hand.showing;
  const spots = path.map((point) => toScreen(look.view, look.size, point));
  const first = spots[0];
  if (!first) return;
  context.strokeStyle = look.palette.focus;
  context.lineWidth = 2.5;
  context.setLineDash([]);
  context.beginPath();
  context.moveTo(first.x, first.y);
  for (const spot of spots.slice(1)) context.lineTo(spot.x, spot.y);
  if (closed) context.closePath();
  context.stroke();
  context.fillStyle = look.palette.focus;
  spots.forEach((spot, index) => {
    context.beginPath();
    context.arc(spot.x, spot.y, index === 0 ? 6 : 4, 0, 2 * Math.PI);
    context.fill();
  });
}

/** The lengths of the outline in hand, over all lines, guides too. */
function writeLengths(context: CanvasRenderingContext2D, hand: InHand, look: Look): void {
  const spots = hand.showing.path.map((point) => toScreen(look.view, look.size, point));
  hand.lengths.forEach((length, index) => {
    const a = spots[index];
    const b = spots[(index + 1) % spots.length];
    if (a && b) writeWord(context, length, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, look);
  });
}

function paintMiddle(context: CanvasRenderingContext2D, { showing }: InHand, look: Look): void {
  if (!showing.round) return;
  const at = toScreen(look.view, look.size, showing.round.center);
  context.strokeStyle = look.palette.focus;
  context.lineWidth = 2;
  context.setLineDash([]);
  context.beginPath();
  context.moveTo(at.x - 9, at.y);
  context.lineTo(at.x + 9, at.y);
  context.moveTo(at.x, at.y - 9);
  context.lineTo(at.x, at.y + 9);
  context.stroke();
}

function paintSnap(context: CanvasRenderingContext2D, { showing, word }: InHand, look: Look): void {
  const { snap } = showing;
  if (!snap) return;
  const { view, size, palette } = look;
  context.strokeStyle = palette.chalk;
  context.lineWidth = 1.5;
  context.setLineDash(GUIDE_DASH);
  for (const { from, to } of snap.guides) {
    const [start, end] = [toScreen(view, size, from), toScreen(view, size, to)];
    context.beginPath();
    context.moveTo(start.x, start.y);
    context.lineTo(end.x, end.y);
    context.stroke();
  }
  const at = toScreen(view, size, snap.point);
  context.setLineDash([]);
  context.beginPath();
  context.arc(at.x, at.y, 7, 0, 2 * Math.PI);
  context.stroke();
  if (!word) return;
  const above = at.y > 2 * WORD_ABOVE_PX ? -WORD_ABOVE_PX : WORD_ABOVE_PX;
  const x = Math.min(size.width - 70, Math.max(70, at.x));
  writeWord(context, word, { x, y: at.y + above }, look);
}

/** A corner's letter, with paper showing through round it. */
function writeLetter(
  context: CanvasRenderingContext2D,
  letter: string,
  at: Spot,
  { palette }: Look,
): void {
  context.font = `700 14px ${FONT}`;
  context.textAlign = 'left';
  context.textBaseline = 'alphabetic';
  context.strokeStyle = palette.paper;
  context.lineWidth = 4;
  context.strokeText(letter, at.x, at.y);
  context.fillStyle = palette.focus;
  context.fillText(letter, at.x, at.y);
}
