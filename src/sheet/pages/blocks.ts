import type { Mark, TextStyle } from '../../drawing/marks.ts';
import { textWidth } from '../../drawing/textSize.ts';
import { line, text, type Wording } from '../furniture.ts';
import { wrapped } from '../lettering.ts';
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
export const LINE_MM = 4.6;
/** From the top of a block to the line its first letters stand on. */
export const FIRST_MM = 3.4;

const HEADING_MM = 3.2;
const HEADING_LINE_MM = 4.8;

export function heading(said: string, width: number): Block {
  const lines = wrapped(said, HEADING_MM, width);
  const last = 6.2 + (lines.length - 1) * HEADING_LINE_MM;
  return {
    height: last + 3.8,
    leads: true,
    draw: (x, y) => [
      ...lines.map((one, i) =>
        text(one, x, y + 6.2 + i * HEADING_LINE_MM, { height: HEADING_MM, style: 'title' }),
      ),
      line(x, y + last + 1.6, x + width, y + last + 1.6, 'hairline'),
    ],
  };
}

export function subheading(said: string, width: number): Block {
  const lines = wrapped(said, LIST_MM, width);
  return {
    height: 1.8 + lines.length * LINE_MM,
    leads: true,
    draw: (x, y) =>
      lines.map((one, i) =>
        text(one, x, y + 4.8 + i * LINE_MM, { height: LIST_MM, style: 'label' }),
      ),
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

/** What kind of figure it is stands in so much of a row; its name has so much of the rest at the least, or the row for itself. */
const ROLE_SHARE = 0.2;
const NAME_SHARE = 0.4;

/** A name, what it is worth, and what kind of figure it is. What is long stands under its name. */
export function figureRow(
  name: string,
  value: string,
  role: string,
  width: number,
  strong: boolean,
): Block {
  const roleWidth = role === '' ? 0 : width * ROLE_SHARE + 2;
  const room = width - roleWidth;
  const besideValue = room - textWidth(value, LIST_MM) - 3;
  const words = Math.max(...name.split(' ').map((word) => textWidth(word, LIST_MM)));
  const isBeside = besideValue >= Math.max(room * NAME_SHARE, words);
  const names = wrapped(name, LIST_MM, isBeside ? besideValue : room);
  const values = isBeside ? [value] : wrapped(value, LIST_MM, room - 4);
  const roles = role === '' ? [] : wrapped(role, LIST_MM, width * ROLE_SHARE);
  const first = isBeside ? 0 : names.length;
  const deep = Math.max(names.length, first + values.length, roles.length) * LINE_MM;
  const style: TextStyle = strong ? 'figure' : 'small';
  const lines = (said: readonly string[], at: number, from: number, how: Partial<Wording> = {}) =>
    said.map((one, i) =>
      text(one, at, from + FIRST_MM + i * LINE_MM, { height: LIST_MM, style: 'small', ...how }),
    );
  return {
    height: deep + 0.4,
    leads: false,
    draw: (x, y) => [
      ...lines(names, x, y, { style }),
      ...lines(values, x + room, y + first * LINE_MM, { style: 'figure', anchor: 'end' }),
      ...lines(roles, x + room + 2, y),
      line(x, y + deep + 0.1, x + width, y + deep + 0.1, 'hairline'),
    ],
  };
}

/** Where what begins at `from` and leads on ends: with the first block that leads to nothing. */
function groupEnd(blocks: readonly Block[], from: number): number {
  let end = from + 1;
  while (blocks[end - 1]!.leads && end < blocks.length) end++;
  return end;
}

/** How high a column has to be for what isn't broken, mm. */
export function highest(blocks: readonly Block[]): number {
  let most = 0;
  for (let i = 0; i < blocks.length; i = groupEnd(blocks, i)) {
    const group = blocks.slice(i, groupEnd(blocks, i));
    most = Math.max(
      most,
      group.reduce((sum, { height }) => sum + height, 0),
    );
  }
  return most;
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
    const end = groupEnd(blocks, i);
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
