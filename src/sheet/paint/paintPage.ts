import type { Mark, TextStyle } from '../../drawing/marks.ts';
import { CAPITALS, textDrop, textRise, textWidth } from '../../drawing/textSize.ts';
import type { Rect, SheetPage } from '../page.ts';
import { fillWith } from './materials.ts';
import type { Pen, Spot, Step } from './pen.ts';
import { lineSteps, pathSteps, polygonSteps, rectSteps, type ToPage, toPage } from './steps.ts';
import { INK, PAPER, STROKES, SYMBOL_STROKE } from './strokes.ts';

/** Draws a page with any pen. */
export function paintPage(pen: Pen, page: SheetPage): void {
  for (const part of page.parts) {
    const place = toPage(part);
    const seen = part.clip ?? { x: 0, y: 0, width: page.width, height: page.height };
    const draw = () => {
      for (const mark of part.marks) paintMark(pen, mark, place, seen);
    };
    if (part.clip) pen.within(rectSteps(part.clip), draw);
    else draw();
  }
}

function paintMark(pen: Pen, mark: Mark, place: ToPage, seen: Rect): void {
  switch (mark.kind) {
    case 'area': {
      const steps = mark.paths.flatMap((path) => pathSteps(path, place));
      fillWith(pen, steps, mark.material, seen);
      return;
    }
    case 'line':
      pen.stroke(pathSteps(mark.path, place), STROKES[mark.style]);
      return;
    case 'text': {
      const { text, height, angle, anchor } = mark;
      if (mark.halo) pen.fill(paperBehind(mark, place(mark.at)), PAPER);
      pen.letters({
        text,
        at: place(mark.at),
        size: height / CAPITALS,
        angle,
        anchor,
        bold: BOLD[mark.style],
        colour: INK,
      });
      return;
    }
    case 'symbol':
      paintSymbol(pen, mark, place(mark.at));
      return;
    default:
      mark satisfies never;
  }
}

/** A slip of paper behind a text, so that it reads over hatches. */
function paperBehind(
  { text, height, angle, anchor }: Extract<Mark, { kind: 'text' }>,
  at: Spot,
): readonly Step[] {
  const width = textWidth(text, height);
  const left = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
  const [low, high] = [-textDrop(text, height) - SLIP, textRise(text, height)];
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const spot = (x: number, y: number): Spot => ({
    x: at.x + x * cos - y * sin,
    y: at.y - (x * sin + y * cos),
  });
  return polygonSteps([
    spot(left - SLIP, low),
    spot(left + width + SLIP, low),
    spot(left + width + SLIP, high),
    spot(left - SLIP, high),
  ]);
}

const SLIP = 0.2;

const BOLD: Readonly<Record<TextStyle, boolean>> = {
  dimension: false,
  label: true,
  small: false,
  title: true,
  figure: true,
};

function paintSymbol(
  pen: Pen,
  { symbol, size, angle }: Extract<Mark, { kind: 'symbol' }>,
  at: Spot,
): void {
  const half = size / 2;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  // x along the symbol's angle and y to the left of it, mm; the page's y runs down.
  const spot = (x: number, y: number): Spot => ({
    x: at.x + x * cos - y * sin,
    y: at.y - (x * sin + y * cos),
  });
  const square = polygonSteps([
    spot(-half, -half),
    spot(half, -half),
    spot(half, half),
    spot(-half, half),
  ]);
  const line = (ax: number, ay: number, bx: number, by: number) =>
    lineSteps(spot(ax, ay), spot(bx, by));
  const stroke = (steps: readonly Step[]) => pen.stroke(steps, SYMBOL_STROKE);
  switch (symbol) {
    case 'stake':
      pen.fill(square, INK);
      return;
    case 'stake-hand':
      pen.fill(square, PAPER);
      stroke(square);
      pen.fill(dot(at, size * 0.2), INK);
      return;
    case 'stake-inside':
      pen.fill(square, PAPER);
      stroke(square);
      return;
    case 'weight': {
      const onCorner = polygonSteps([
        spot(0, -half * 1.2),
        spot(half * 1.2, 0),
        spot(0, half * 1.2),
        spot(-half * 1.2, 0),
      ]);
      pen.fill(onCorner, PAPER);
      stroke(onCorner);
      return;
    }
    case 'end-bar':
      stroke(line(0, -half, 0, half));
      return;
    case 'look-here': {
      const triangle = polygonSteps([spot(0, half), spot(half, -half), spot(-half, -half)]);
      pen.fill(triangle, PAPER);
      stroke(triangle);
      stroke(line(0, half * 0.4, 0, -half * 0.3));
      pen.fill(dot(spot(0, -half * 0.68), size * 0.06), INK);
      return;
    }
    case 'origin':
      pen.fill(dot(at, half), PAPER);
      stroke(dot(at, half));
      return;
    case 'tick': {
      const reach = half * Math.SQRT1_2;
      stroke(line(-reach, -reach, reach, reach));
      return;
    }
    case 'arrow':
      pen.fill(polygonSteps([at, spot(-size, size * 0.2), spot(-size, -size * 0.2)]), INK);
      return;
    case 'cross':
      stroke([...line(-half, 0, half, 0), ...line(0, -half, 0, half)]);
      return;
    case 'dot':
      pen.fill(dot(at, half), INK);
      return;
    case 'north':
      stroke(
        polygonSteps([
          spot(0, half),
          spot(half * 0.5, -half),
          spot(0, -half * 0.6),
          spot(-half * 0.5, -half),
        ]),
      );
      return;
    default:
      symbol satisfies never;
  }
}

function dot({ x, y }: Spot, radius: number): readonly Step[] {
  const start = { x: x + radius, y };
  const far = { x: x - radius, y };
  const arc = { cx: x, cy: y, radius, sweep: Math.PI };
  const segments = [
    { to: far, arc },
    { to: start, arc },
  ];
  return pathSteps({ start, segments, closed: true }, (point) => point);
}
