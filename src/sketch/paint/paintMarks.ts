import type { Mark, Path, TextStyle } from '../../drawing/marks.ts';
import { type Spot, toScreen } from '../view.ts';
import { fontPx, PX_PER_MM } from './fontSize.ts';
import { STROKES } from './lineStyles.ts';
import type { Look } from './look.ts';
import { fillWith } from './materials.ts';
import type { Colour } from './palette.ts';
import { goAlong } from './traceEdge.ts';

export const FONT = 'Inter, system-ui, sans-serif';

/**
 * Paints a drawing on a canvas. All of it in one go: far faster than a node for every mark. Lines of one style that follow
 * each other are one stroke, and so are stakes: a large job has thousands.
 */
export function paintMarks(
  context: CanvasRenderingContext2D,
  marks: readonly Mark[],
  look: Look,
): void {
  context.save();
  context.lineJoin = 'round';
  let at = 0;
  while (at < marks.length) {
    const first = marks[at]!;
    let end = at + 1;
    while (end < marks.length && isOneStroke(first, marks[end]!)) end++;
    paintAlike(context, first, marks.slice(at, end), look);
    at = end;
  }
  context.restore();
}

function isOneStroke(a: Mark, b: Mark): boolean {
  if (a.kind === 'line') return b.kind === 'line' && a.style === b.style;
  return isStake(a) && isStake(b);
}

type SymbolMark = Extract<Mark, { kind: 'symbol' }>;

function isStake(mark: Mark): mark is SymbolMark {
  return mark.kind === 'symbol' && mark.symbol === 'stake';
}

/** @param marks The first one and those that are one stroke with it. */
function paintAlike(
  context: CanvasRenderingContext2D,
  first: Mark,
  marks: readonly Mark[],
  look: Look,
): void {
  switch (first.kind) {
    case 'area':
      context.beginPath();
      for (const path of first.paths) trace(context, path, look);
      fillWith(context, first.material, look.palette);
      return;
    case 'line': {
      const { colour, width, dash } = STROKES[first.style];
      context.beginPath();
      for (const mark of marks) if (mark.kind === 'line') trace(context, mark.path, look);
      context.strokeStyle = look.palette[colour];
      context.lineWidth = width;
      context.setLineDash([...dash]);
      context.stroke();
      return;
    }
    case 'text':
      paintText(context, first, look);
      return;
    case 'symbol':
      if (marks.length > 1) paintStakes(context, marks.filter(isStake), look);
      else paintSymbol(context, first, look);
      return;
    default:
      first satisfies never;
  }
}

const STAKE_CORNERS = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;

function paintStakes(
  context: CanvasRenderingContext2D,
  stakes: readonly SymbolMark[],
  { view, size, palette }: Look,
): void {
  context.save();
  context.setLineDash([]);
  context.lineWidth = 1.4;
  context.strokeStyle = palette.ink;
  context.fillStyle = palette.lumber;
  context.beginPath();
  for (const { at, angle, size: mm } of stakes) {
    const { x, y } = toScreen(view, size, at);
    const half = (mm * PX_PER_MM) / 2;
    const [cos, sin] = [half * Math.cos(angle), half * Math.sin(angle)];
    STAKE_CORNERS.forEach(([u, v], i) => {
      // The screen's y runs down, so a turn goes the other way.
      const place = [x + u * cos + v * sin, y + v * cos - u * sin] as const;
      if (i === 0) context.moveTo(...place);
      else context.lineTo(...place);
    });
    context.closePath();
  }
  context.fill();
  context.stroke();
  context.restore();
}

function trace(context: CanvasRenderingContext2D, path: Path, look: Look): void {
  const start = toScreen(look.view, look.size, path.start);
  context.moveTo(start.x, start.y);
  let from = path.start;
  for (const segment of path.segments) {
    goAlong(context, { from, ...segment }, look);
    from = segment.to;
  }
  if (path.closed) context.closePath();
}

const TEXT_COLOURS: Readonly<Record<TextStyle, Colour>> = {
  dimension: 'chalk',
  label: 'ink',
  small: 'ink-soft',
  title: 'ink',
  figure: 'ink',
};

function paintText(
  context: CanvasRenderingContext2D,
  mark: Extract<Mark, { kind: 'text' }>,
  { view, size, palette }: Look,
): void {
  const at = toScreen(view, size, mark.at);
  const bold = mark.style === 'title' || mark.style === 'label' || mark.style === 'figure';
  context.save();
  context.translate(at.x, at.y);
  context.rotate(-mark.angle);
  context.font = `${bold ? 600 : 500} ${fontPx(mark.height)}px ${FONT}`;
  context.textAlign = mark.anchor === 'middle' ? 'center' : mark.anchor;
  context.textBaseline = 'alphabetic';
  if (mark.halo) {
    context.setLineDash([]);
    context.strokeStyle = palette.paper;
    context.lineWidth = 4;
    context.strokeText(mark.text, 0, 0);
  }
  context.fillStyle = palette[TEXT_COLOURS[mark.style]];
  context.fillText(mark.text, 0, 0);
  context.restore();
}

function paintSymbol(context: CanvasRenderingContext2D, mark: SymbolMark, look: Look): void {
  const { symbol } = mark;
  if (symbol === 'stake') {
    paintStakes(context, [mark], look);
    return;
  }
  const { view, size, palette } = look;
  const half = (mark.size * PX_PER_MM) / 2;
  const at: Spot = toScreen(view, size, mark.at);
  context.save();
  context.translate(at.x, at.y);
  context.rotate(-mark.angle);
  context.setLineDash([]);
  context.lineWidth = 1.4;
  context.strokeStyle = palette.ink;
  context.fillStyle = palette.ink;
  context.beginPath();
  switch (symbol) {
    case 'stake-hand':
      context.rect(-half, -half, 2 * half, 2 * half);
      fillAndStroke(context, palette.paper);
      context.beginPath();
      context.arc(0, 0, half * 0.45, 0, 2 * Math.PI);
      context.fillStyle = palette.ink;
      context.fill();
      break;
    case 'stake-inside':
      context.rect(-half, -half, 2 * half, 2 * half);
      fillAndStroke(context, palette.paper);
      break;
    case 'weight':
      context.moveTo(0, -half * 1.2);
      context.lineTo(half * 1.2, 0);
      context.lineTo(0, half * 1.2);
      context.lineTo(-half * 1.2, 0);
      context.closePath();
      fillAndStroke(context, palette.paper);
      break;
    case 'end-bar':
      context.moveTo(0, -half);
      context.lineTo(0, half);
      context.stroke();
      break;
    case 'look-here':
      context.moveTo(0, -half);
      context.lineTo(half, half);
      context.lineTo(-half, half);
      context.closePath();
      context.strokeStyle = palette.stop;
      context.lineWidth = 1.8;
      fillAndStroke(context, palette.paper);
      context.beginPath();
      context.moveTo(0, -half * 0.4);
      context.lineTo(0, half * 0.3);
      context.stroke();
      context.beginPath();
      context.arc(0, half * 0.66, half * 0.13, 0, 2 * Math.PI);
      context.fillStyle = palette.stop;
      context.fill();
      break;
    case 'origin':
      context.arc(0, 0, half, 0, 2 * Math.PI);
      context.strokeStyle = palette.chalk;
      fillAndStroke(context, palette.paper);
      break;
    case 'tick':
      context.moveTo(-half * Math.SQRT1_2, half * Math.SQRT1_2);
      context.lineTo(half * Math.SQRT1_2, -half * Math.SQRT1_2);
      context.strokeStyle = palette.chalk;
      context.lineWidth = 1.8;
      context.stroke();
      break;
    case 'arrow':
      context.moveTo(0, 0);
      context.lineTo(-2 * half, half * 0.6);
      context.lineTo(-2 * half, -half * 0.6);
      context.closePath();
      context.fillStyle = palette.chalk;
      context.fill();
      break;
    case 'cross':
      context.moveTo(-half, 0);
      context.lineTo(half, 0);
      context.moveTo(0, -half);
      context.lineTo(0, half);
      context.stroke();
      break;
    case 'dot':
      context.arc(0, 0, half, 0, 2 * Math.PI);
      context.fill();
      break;
    case 'north':
      context.moveTo(0, -half);
      context.lineTo(half * 0.5, half);
      context.lineTo(0, half * 0.6);
      context.lineTo(-half * 0.5, half);
      context.closePath();
      context.stroke();
      break;
    default:
      symbol satisfies never;
  }
  context.restore();
}

function fillAndStroke(context: CanvasRenderingContext2D, fill: string): void {
  context.fillStyle = fill;
  context.fill();
  context.stroke();
}
