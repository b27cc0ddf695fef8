import { CAPITALS } from '../../drawing/textSize.ts';

/** CSS pixels in a millimetre (96 to the inch): what the drawing calls a millimetre of output. */
export const PX_PER_MM = 96 / 25.4;
/** Nothing on the screen is written smaller. */
const LEAST_FONT_PX = 12;

/** The font size, CSS pixels, for capitals of so many millimetres. */
export function fontPx(capitalsMm: number): number {
  return Math.max(LEAST_FONT_PX, (capitalsMm * PX_PER_MM) / CAPITALS);
}

/** Height of the capitals as painted, CSS pixels. */
export function capitalsPx(capitalsMm: number): number {
  return fontPx(capitalsMm) * CAPITALS;
}
