import type { Mark, TextStyle } from '../../drawing/marks.ts';
import { textWidth } from '../../drawing/textSize.ts';
import { line, text } from '../furniture.ts';
import { wrapped } from '../lettering.ts';
import { type Block, FIRST_MM, LINE_MM, LIST_MM } from './blocks.ts';

/** Clear paper between two cells, mm; where a table is crowded, the less. */
const CELL_GAPS = [2, 1.5];
/** A word is broken rather than take more of a table's width than this. */
const WORD_SHARE = 0.4;

/** Where the cells of a row stand. */
interface Columns {
  readonly gap: number;
  /** The first cell's, then those of the others; mm. */
  readonly widths: readonly number[];
  /** So many of the others stand on one line. */
  readonly across: number;
}

/**
 * A table with its heads; columns as wide as they need, and those that need too much made narrower and wrapped. Where it
 * would have to break its words, its rows stand on two lines or more, each with its first cell in front, and so do its heads.
 */
export function tableBlocks(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  width: number,
): readonly Block[] {
  const columns = columnsFor(heads, rows, width);
  const head = rowBlock(heads, columns, width, 'label', true);
  return [
    head,
    ...rows.map((cells) => ({ ...rowBlock(cells, columns, width, 'small', false), under: head })),
  ];
}

/** On the fewest lines on which no word is broken. */
function columnsFor(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  width: number,
): Columns {
  const cells = heads.map((head, i) => [head, ...rows.map((row) => row[i] ?? '')]);
  const widest = (those: readonly string[]) =>
    Math.max(...those.map((said) => textWidth(said, LIST_MM)));
  const natural = cells.map(widest);
  const words = cells.map((those) =>
    Math.min(width * WORD_SHARE, widest(those.flatMap((said) => said.split(' ')))),
  );
  const others = heads.length - 1;
  for (let lines = 1; ; lines++) {
    const across = Math.ceil(others / lines);
    const last = across <= 1;
    for (const gap of CELL_GAPS) {
      const least = stacked(words, across).map((one) => one + gap);
      if (sum(least) > width && !(last && gap === CELL_GAPS.at(-1))) continue;
      const wish = stacked(natural, across).map((one) => one + gap);
      return { gap, across, widths: shared(wish, least, width) };
    }
  }
}

/** What each place of a line needs when the cells after the first stand on lines of so many. */
function stacked([first, ...others]: readonly number[], across: number): readonly number[] {
  const places = others.slice(0, across).map((_, place) => {
    const over = others.filter((__, i) => i % across === place);
    return Math.max(...over);
  });
  return [first!, ...places];
}

function rowBlock(
  cells: readonly string[],
  { gap, widths, across }: Columns,
  width: number,
  style: TextStyle,
  leads: boolean,
): Block {
  const place = (i: number) => (i === 0 ? 0 : 1 + ((i - 1) % across));
  const lineOf = (i: number) => (i === 0 ? 0 : Math.floor((i - 1) / across));
  const said = cells.map((cell, i) => wrapped(cell, LIST_MM, widths[place(i)]! - gap + 0.01));
  const deep = (at: number) =>
    Math.max(1, ...said.map((one, i) => (i > 0 && lineOf(i) === at ? one.length : 0)));
  const count = lineOf(cells.length - 1) + 1;
  const tops = Array.from({ length: count + 1 }, (_, at) =>
    sum(Array.from({ length: at }, (__, before) => deep(before))),
  );
  const height = Math.max(tops[count]!, said[0]!.length) * LINE_MM;
  return {
    height: height + 0.4,
    leads,
    draw: (x, y) => [
      ...said.flatMap((those, i): readonly Mark[] => {
        const left = x + sum(widths.slice(0, place(i)));
        const top = y + FIRST_MM + tops[lineOf(i)]! * LINE_MM;
        return those.map((one, j) =>
          text(one, left, top + j * LINE_MM, { height: LIST_MM, style }),
        );
      }),
      line(x, y + height + 0.1, x + width, y + height + 0.1, 'hairline'),
    ],
  };
}

/** Widths within a whole: what each column can't do without, and of the rest as much as it would like. */
function shared(
  natural: readonly number[],
  least: readonly number[],
  whole: number,
): readonly number[] {
  const spare = whole - sum(natural);
  if (spare >= 0) return natural.map((one) => one + spare / natural.length);
  const wish = sum(natural) - sum(least);
  const left = whole - sum(least);
  if (left < 0) return least.map((one) => (one / sum(least)) * whole);
  return least.map((one, i) => one + (wish === 0 ? 0 : ((natural[i]! - one) / wish) * left));
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, one) => total + one, 0);
}
