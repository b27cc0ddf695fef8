import type { Mark } from '../../drawing/marks.ts';
import { textWidth } from '../../drawing/textSize.ts';
import { text } from '../furniture.ts';
import { shortened } from '../lettering.ts';
import { BESIDE } from '../words/pair.ts';

export type LegendRow = (x: number, y: number, width: number) => readonly Mark[];

/** Height of the words of legends, mm. */
const TEXT_MM = 2.5;
/** Room for words in the narrowest column of a legend, mm. */
const NARROWEST_MM = 36;

/**
 * A sample and what it means. Words in two languages that find no room beside each other take a row each.
 * @param from From the left of a row to its words, mm.
 */
export function rowsSaying(
  words: string,
  from: number,
  sample: (x: number, y: number) => readonly Mark[],
): readonly LegendRow[] {
  const fits = textWidth(words, TEXT_MM) <= NARROWEST_MM;
  const [first = '', ...others] = fits ? [words] : words.split(BESIDE);
  return [
    (x, y, width) => [...sample(x, y), said(first, x + from, y, width - from)],
    ...others.map(
      (other): LegendRow =>
        (x, y, width) => [said(other, x + from, y, width - from)],
    ),
  ];
}

function said(words: string, x: number, y: number, width: number): Mark {
  return text(shortened(words, TEXT_MM, width), x, y, { height: TEXT_MM });
}
