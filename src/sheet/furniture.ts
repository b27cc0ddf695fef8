import type { LineStyle, Mark, Material, Path, SymbolName, TextStyle } from '../drawing/marks.ts';
import { MILLIMETRE } from '../units/grid.ts';
import type { Rect, SheetPart } from './page.ts';

/** What stands on a page besides the plan is drawn at full size: one mm of it is one mm of paper, y down. */
function point(x: number, y: number) {
  return { x: x * MILLIMETRE, y: -y * MILLIMETRE };
}

export function furniture(marks: readonly Mark[]): SheetPart {
  return { marks, gridPerMm: MILLIMETRE, from: { x: 0, y: 0 }, at: { x: 0, y: 0 } };
}

export interface Wording {
  readonly height: number;
  readonly style?: TextStyle;
  readonly anchor?: 'start' | 'middle' | 'end';
}

/** A text with its letters standing on y. */
export function text(said: string, x: number, y: number, wording: Wording): Mark {
  const { height, style = 'small', anchor = 'start' } = wording;
  return {
    kind: 'text',
    layer: 'labels',
    style,
    text: said,
    at: point(x, y),
    height,
    angle: 0,
    anchor,
    halo: false,
  };
}

export function line(ax: number, ay: number, bx: number, by: number, style: LineStyle): Mark {
  const path: Path = { start: point(ax, ay), segments: [{ to: point(bx, by) }], closed: false };
  return { kind: 'line', layer: 'labels', style, path };
}

function rectPath({ x, y, width, height }: Rect): Path {
  return {
    start: point(x, y),
    segments: [point(x + width, y), point(x + width, y + height), point(x, y + height)].map(
      (to) => ({ to }),
    ),
    closed: true,
  };
}

export function frame(rect: Rect, style: LineStyle = 'hairline'): Mark {
  return { kind: 'line', layer: 'labels', style, path: rectPath(rect) };
}

export function filled(rect: Rect, material: Material): Mark {
  return { kind: 'area', layer: 'labels', material, paths: [rectPath(rect)] };
}

/** Printed black within outlines, even-odd, each a list of corners in mm. */
export function inked(
  outlines: readonly (readonly { readonly x: number; readonly y: number }[])[],
): Mark {
  const paths = outlines.map((outline): Path => {
    const [start, ...rest] = outline.map(({ x, y }) => point(x, y));
    return { start: start!, segments: rest.map((to) => ({ to })), closed: true };
  });
  return { kind: 'area', layer: 'labels', material: 'ink', paths };
}

/** A symbol about a place, its angle in radians, counter-clockwise. */
export function symbol(name: SymbolName, x: number, y: number, size: number, angle: number): Mark {
  return { kind: 'symbol', layer: 'labels', symbol: name, at: point(x, y), size, angle };
}
