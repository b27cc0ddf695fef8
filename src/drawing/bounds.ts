import type { Box } from '../geometry/box.ts';
import type { DrawingScale, Mark } from './marks.ts';
import { pathPoints } from './paths.ts';
import { textDrop, textRise, textWidth } from './textSize.ts';

/** The upright rectangle, in grid units, round all that is drawn at a scale, texts and symbols too; nothing for none. */
export function boundsOf(marks: readonly Mark[], { gridPerMm }: DrawingScale): Box | undefined {
  let minX = Number.POSITIVE_INFINITY;
  let minY = Number.POSITIVE_INFINITY;
  let maxX = Number.NEGATIVE_INFINITY;
  let maxY = Number.NEGATIVE_INFINITY;
  const take = (x: number, y: number): void => {
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  };
  for (const mark of marks) {
    switch (mark.kind) {
      case 'area':
        for (const path of mark.paths) for (const { x, y } of pathPoints(path, 4)) take(x, y);
        break;
      case 'line':
        for (const { x, y } of pathPoints(mark.path, 4)) take(x, y);
        break;
      case 'symbol': {
        const reach = (mark.symbol === 'arrow' ? mark.size : mark.size * 0.75) * gridPerMm;
        take(mark.at.x - reach, mark.at.y - reach);
        take(mark.at.x + reach, mark.at.y + reach);
        break;
      }
      case 'text':
        for (const { x, y } of textCorners(mark, gridPerMm)) take(x, y);
        break;
      default:
        mark satisfies never;
    }
  }
  return minX <= maxX ? { minX, minY, maxX, maxY } : undefined;
}

/** The four corners of the room a text takes. */
export function textCorners(
  { text, at, height, angle, anchor }: Extract<Mark, { kind: 'text' }>,
  gridPerMm: number,
): readonly { readonly x: number; readonly y: number }[] {
  const width = textWidth(text, height) * gridPerMm;
  const left = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
  const low = -textDrop(text, height) * gridPerMm;
  const high = textRise(text, height) * gridPerMm;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return [
    [left, low],
    [left + width, low],
    [left + width, high],
    [left, high],
  ].map(([x, y]) => ({ x: at.x + x! * cos - y! * sin, y: at.y + x! * sin + y! * cos }));
}
