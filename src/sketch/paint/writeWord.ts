import type { Spot } from '../view.ts';
import type { Look } from './look.ts';
import { FONT } from './paintMarks.ts';

/** A word on a slip of paper, so that it reads over any material. */
export function writeWord(
  context: CanvasRenderingContext2D,
  word: string,
  at: Spot,
  { palette }: Look,
): void {
  context.font = `600 13px ${FONT}`;
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  const width = context.measureText(word).width + 8;
  context.fillStyle = palette.paper;
  context.fillRect(at.x - width / 2, at.y - 10, width, 20);
  context.fillStyle = palette.ink;
  context.fillText(word, at.x, at.y + 1);
}
