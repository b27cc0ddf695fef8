/**
 * How much room a text takes, without a font at hand: advance widths in hundredths of the font size, of the semibold
 * cut of the typeface that the painters use (the widest cut they use), from 32 (space) to 126 (~).
 */
// biome-ignore format: a table
const WIDTHS: readonly number[] = [
  25, 32, 52, 64, 65, 100, 66, 33, 37, 37, 54, 67, 32, 47, 32, 38,
  66, 42, 62, 64, 67, 61, 64, 58, 64, 64, 32, 33, 67, 67, 67, 54,
  100, 73, 66, 74, 72, 61, 59, 75, 75, 28, 58, 70, 57, 92, 76, 77,
  65, 77, 65, 65, 66, 74, 73, 102, 72, 71, 65, 37, 38, 37, 48, 47,
  35, 57, 62, 58, 62, 59, 39, 63, 61, 26, 26, 57, 26, 90, 61, 61,
  62, 62, 40, 55, 35, 61, 59, 84, 57, 59, 57, 45, 36, 45, 67,
];
/** Letters beyond the table: as wide as a capital with an accent; those beyond Latin (emoji too) a full square. */
const ACCENTED = 77;
const SQUARE = 105;

/** Height of capitals over font size. */
export const CAPITALS = 0.7275;

function advance(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  return WIDTHS[code - 32] ?? (code < 0x2123 ? ACCENTED : SQUARE);
}

/** Width of a text whose capitals are `height` high, in the unit of `height`: as wide as painted, or a little more. */
export function textWidth(text: string, height: number): number {
  let sum = 0;
  for (const character of text) sum += advance(character);
  return (sum / 100 / CAPITALS) * height;
}

/** How far a text reaches below its line, in the unit of `height`. */
export function textDrop(text: string, height: number): number {
  if (/[gjpqy,;()[\]@Q|{}$]/.test(text)) return 0.29 * height;
  return /[/"']/.test(text) ? 0.16 * height : 0.05 * height;
}

/** How far a text reaches above its line, in the unit of `height`. */
export function textRise(text: string, height: number): number {
  return (/[^\x20-\x7e]/.test(text) ? 1.3 : 1.08) * height;
}
