import type { Mark } from '../drawing/marks.ts';
import { textWidth } from '../drawing/textSize.ts';
import type { DimensionText } from './hit.ts';
import { capitalsPx } from './paint/fontSize.ts';

/** Where the dimensions stand that can be typed anew, as boxes to hit. */
export function dimensionTexts(
  marks: readonly Mark[],
  gridPerPx: number,
): readonly DimensionText[] {
  return marks.flatMap((mark): readonly DimensionText[] => {
    if (mark.kind !== 'text' || !mark.measures) return [];
    const { at, angle, anchor, text, measures } = mark;
    const height = capitalsPx(mark.height) * gridPerPx;
    const length = textWidth(text, height);
    const along = anchor === 'middle' ? 0 : anchor === 'start' ? length / 2 : -length / 2;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    return [
      {
        ...measures,
        // From the line that the letters stand on to the middle of the capitals.
        middle: {
          x: at.x + along * cos - (height / 2) * sin,
          y: at.y + along * sin + (height / 2) * cos,
        },
        halfLength: length / 2,
        halfHeight: height / 2,
        angle,
      },
    ];
  });
}
