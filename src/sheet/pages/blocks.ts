import type { Mark, TextStyle } from '../../drawing/marks.ts';
import { textWidth } from '../../drawing/textSize.ts';
import { line, text } from '../furniture.ts';
import { shortened, wrapped } from '../lettering.ts';
import type { Rect } from '../page.ts';

/** Something of a list that isn't broken: it stands on one page or goes to the next. */
export interface Block {
  readonly height: number;
  /** Never the last thing on a page: a heading goes along with what it heads. */
  readonly leads: boolean;
  /** The head of the table it is a row of: written again where the table goes on in another column or page. */
  readonly under?: Block;
  readonly draw: (x: number, y: number) => readonly Mark[];
}

export const LIST_MM = 2.5;
/** A line to write on. */
export const BLANK = '________';
const LINE_MM = 4.6;
/** From the top of a block to the line its first letters stand on. */
const FIRST_MM = 3.4;

export function heading(said: string, width: number): Block {
  return {
    height: 10,
    leads: true,
    draw: (x, y) => [
      text(shortened(said, 3.2, width), x, y + 6.2, { height: 3.2, style: 'title' }),
      line(x, y + 7.8, x + width, y + 7.8, 'hairline'),
    ],
  };
}

export function subheading(said: string, width: number): Block {
  return {
    height: 6.4,
    leads: true,
    draw: (x, y) => [
      text(shortened(said, LIST_MM, width), x, y + 4.8, { height: LIST_MM, style: 'label' }),
    ],
  };
}

/** Paragraphs of no more lines than this aren't broken. */
const MOST_TOGETHER = 8;

/** Words over as many lines as they take; long ones in several blocks, so that they may run on to the next page. */
export function paragraph(said: string, width: number, sign = ''): readonly Block[] {
  const indent = sign === '' ? 0 : 4;
  const lines = wrapped(said, LIST_MM, width - indent);
  return lines.map((one, i) => ({
    height: LINE_MM + (i === lines.length - 1 ? 1 : 0),
    leads: lines.length <= MOST_TOGETHER ? i < lines.length - 1 : i === 0,
    draw: (x, y) => [
      ...(i === 0 && sign !== ''
        ? [text(sign, x, y + FIRST_MM, { height: LIST_MM, style: 'label' })]
        : []),
      text(one, x + indent, y + FIRST_MM, { height: LIST_MM }),
    ],
  }));
}

/** A name, what it is worth, and what kind of figure it is. */
export function figureRow(
  name: string,
  value: string,
  role: string,
  width: number,
  strong: boolean,
): Block {
  const valueWidth = Math.min(textWidth(value, LIST_MM), width * 0.42);
  const roleWidth = width * 0.2;
  const names = wrapped(name, LIST_MM, width - roleWidth - valueWidth - 3);
  const style: TextStyle = strong ? 'figure' : 'small';
  return {
    height: LINE_MM * names.length + 0.4,
    leads: false,
    draw: (x, y) => [
      ...names.map((one, i) =>
        text(one, x, y + FIRST_MM + i * LINE_MM, { height: LIST_MM, style }),
      ),
      text(shortened(value, LIST_MM, width * 0.42), x + width - roleWidth - 1.5, y + FIRST_MM, {
        height: LIST_MM,
        style: 'figure',
        anchor: 'end',
      }),
      text(shortened(role, LIST_MM, roleWidth), x + width - roleWidth + 0.5, y + FIRST_MM, {
        height: LIST_MM,
      }),
      line(
        x,
        y + LINE_MM * names.length + 0.1,
        x + width,
        y + LINE_MM * names.length + 0.1,
        'hairline',
      ),
    ],
  };
}

const CELL_GAP = 2;
/** Letters of a crowded table are made no smaller than this. */
const LEAST_MM = 1.8;

/**
 * A table with its heads; columns as wide as they need, and those that need too much made narrower and wrapped. A table
 * that would have to break its words gets smaller letters.
 */
export function tableBlocks(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  width: number,
): readonly Block[] {
  const cells = (i: number) => [heads[i]!, ...rows.map((row) => row[i] ?? '')];
  const widest = heads.map((_, i) =>
    Math.max(...cells(i).flatMap((said) => said.split(' ').map((one) => textWidth(one, LIST_MM)))),
  );
  const words = widest.reduce((sum, one) => sum + one, 0);
  const small = (width - heads.length * CELL_GAP) / words;
  const size = small < 1 ? Math.max(LEAST_MM, LIST_MM * small) : LIST_MM;
  const needs = (said: string) => textWidth(said, size) + CELL_GAP;
  const natural = heads.map((_, i) => Math.max(...cells(i).map(needs)));
  const least = widest.map((one) => (one * size) / LIST_MM + CELL_GAP);
  const widths = shared(natural, least, width);
  const row = (said: readonly string[], style: TextStyle, leads: boolean): Block => {
    const wrappedCells = said.map((cell, i) => wrapped(cell, size, widths[i]! - CELL_GAP + 0.01));
    const deep = Math.max(1, ...wrappedCells.map(({ length }) => length));
    return {
      height: deep * LINE_MM + 0.4,
      leads,
      draw: (x, y) => [
        ...wrappedCells.flatMap((lines, i) => {
          const left = x + widths.slice(0, i).reduce((sum, one) => sum + one, 0);
          return lines.map((one, j) =>
            text(one, left, y + FIRST_MM + j * LINE_MM, { height: size, style }),
          );
        }),
        line(x, y + deep * LINE_MM + 0.1, x + width, y + deep * LINE_MM + 0.1, 'hairline'),
      ],
    };
  };
  const head = row(heads, 'label', true);
  return [head, ...rows.map((cells) => ({ ...row(cells, 'small', false), under: head }))];
}

/** Widths within a whole: what each column can't do without, and of the rest as much as it would like. */
function shared(
  natural: readonly number[],
  least: readonly number[],
  whole: number,
): readonly number[] {
  const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);
  const spare = whole - sum(natural);
  if (spare >= 0) return natural.map((one) => one + spare / natural.length);
  const wish = sum(natural) - sum(least);
  const left = whole - sum(least);
  if (left < 0) return least.map((one) => (one / sum(least)) * whole);
  return least.map((one, i) => one + (wish === 0 ? 0 : ((natural[i]! - one) / wish) * left));
}

/**
 * Blocks poured into columns, page after page: nothing runs over, nothing is dropped.
 * @param after The columns of the second page and on, as wide and as many; those of the first when not said.
 */
export function flow(
  blocks: readonly Block[],
  columns: readonly Rect[],
  after = columns,
): readonly (readonly Mark[])[] {
  const pages: Mark[][] = [[]];
  let column = 0;
  let used = 0;
  for (let i = 0; i < blocks.length; ) {
    // What leads goes with what follows it, as long as all of it fits a column at all.
    let end = i + 1;
    while (blocks[end - 1]!.leads && end < blocks.length) end++;
    const group = blocks.slice(i, end);
    const box = (pages.length === 1 ? columns : after)[column]!;
    const height = group.reduce((sum, block) => sum + block.height, 0);
    if (used > 0 && used + height > box.height) {
      column++;
      used = 0;
      if (column === columns.length) {
        column = 0;
        pages.push([]);
      }
      continue;
    }
    const { under } = group[0]!;
    for (const block of used === 0 && under ? [under, ...group] : group) {
      pages.at(-1)!.push(...block.draw(box.x, box.y + used));
      used += block.height;
    }
    i = end;
  }
  return pages;
}
