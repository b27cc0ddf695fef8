import type { Mark } from '../../drawing/marks.ts';
import { textWidth } from '../../drawing/textSize.ts';
import { text } from '../furniture.ts';
import { shortened, wrapped } from '../lettering.ts';
import { BESIDE } from '../words/pair.ts';

export interface LegendRow {
  (x: number, y: number, width: number): readonly Mark[];
  /** Stands over the next row in one column: a heading, or words that go on. */
  readonly keeps?: boolean;
}

/** Of one row, mm. */
export const ROW_MM = 4.7;
/** A legend with more rows than this stands in two columns where it lies under a plan. */
const ONE_COLUMN = 20;

/** The rows of a legend that lies under a plan, column by column: nothing is parted that belongs together. */
export function legendColumns(rows: readonly LegendRow[]): readonly (readonly LegendRow[])[] {
  if (rows.length <= ONE_COLUMN) return [rows];
  let half = Math.ceil(rows.length / 2);
  while (half < rows.length && rows[half - 1]!.keeps) half++;
  return half < rows.length ? [rows.slice(0, half), rows.slice(half)] : [rows];
}

/** A row that stays with the next. */
export function keptWithNext(row: LegendRow): LegendRow {
  return Object.assign((x: number, y: number, width: number) => row(x, y, width), { keeps: true });
}

/** Height of the words of legends, mm. */
const TEXT_MM = 2.5;
/** Of the narrowest column that a legend stands in, mm. */
const NARROWEST_MM = 60;
/** What a row means takes no more lines than this; a name that somebody gave may be longer. */
const MOST_LINES = 3;

/**
 * A sample and what it means, over as many rows as that takes. Words in two languages that find no room beside each other
 * stand under each other.
 * @param from From the left of a row to its words, mm.
 */
export function rowsSaying(
  words: string,
  from: number,
  sample: (x: number, y: number) => readonly Mark[],
): readonly LegendRow[] {
  const room = NARROWEST_MM - from;
  const parts = textWidth(words, TEXT_MM) <= room ? [words] : words.split(BESIDE);
  const lines = parts.flatMap((part) => {
    const broken = wrapped(part, TEXT_MM, room);
    return broken.length <= MOST_LINES
      ? broken
      : [...broken.slice(0, MOST_LINES - 1), broken.slice(MOST_LINES - 1).join(' ')];
  });
  const row =
    (one: string, i: number): LegendRow =>
    (x, y, width) => [
      ...(i === 0 ? sample(x, y) : []),
      text(shortened(one, TEXT_MM, width - from), x + from, y, { height: TEXT_MM }),
    ];
  return lines.map((one, i) => (i < lines.length - 1 ? keptWithNext(row(one, i)) : row(one, i)));
}
