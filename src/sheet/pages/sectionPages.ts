import type { Mark } from '../../drawing/marks.ts';
import type { SectionKind } from '../../drawing/sections/cut.ts';
import { cutOf, leastShown, type Shown } from '../../drawing/sections/cutOf.ts';
import { type PlacedCut, placeCut } from '../../drawing/sections/placeCut.ts';
import { sectionKinds } from '../../drawing/sections/sectionKinds.ts';
import type { Job, UnitStyle } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { furniture, line, text } from '../furniture.ts';
import { wrapped } from '../lettering.ts';
import type { Rect, SheetPart } from '../page.ts';
import { gridPerMmAt, type Scale, sectionScalesFor } from '../scales.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { BARS_HEIGHT, bars } from './bars.ts';
import { LIST_MM } from './blocks.ts';

/** Pages of sections, and the scale that all of them are drawn at. */
export interface SectionPages {
  readonly scaleName: string;
  readonly pages: readonly (readonly SheetPart[])[];
}

/** Room beside a section for its sizes, mm: to the left, and to the right, where words go on over it. */
export const SECTION_SIDES = { left: 12, right: 15 };
const { left: LEFT_MM, right: RIGHT_MM } = SECTION_SIDES;
/** No cell is narrower than its words need, nor wider than this: a section doesn't get better by being longer. */
const NARROWEST_MM = 84;
const WIDEST_MM = 130;
/** A larger scale is worth so many pages; a gap under a form is seen at no smaller one than this, and that is worth more. */
const FEW_PAGES = 2;
const MANY_PAGES = 4;
const READABLE = 10;
const TITLE_MM = 9;
const GAP_MM = 5;
const TITLE_LETTERS = 3.2;
const TITLE_LINE_MM = 4.6;
const LINE_MM = 4.4;

/**
 * Sections through every kind of edge that the job has, and through a joint, all to one scale. None where there is nothing to
 * pour.
 */
export function sectionPages(
  job: Job,
  takeoff: Takeoff,
  area: Rect,
  options: SheetOptions,
): SectionPages | undefined {
  const kinds = sectionKinds(takeoff);
  if (kinds.length === 0) return undefined;
  const inner = { x: area.x + 3, y: area.y + 2, width: area.width - 6, height: area.height - 4 };
  const room = { ...inner, height: inner.height - BARS_HEIGHT - 4 };
  const laid = bestLaid(job, takeoff, kinds, room, options);
  if (!laid) return undefined;
  const { scale, rows } = laid;
  return {
    scaleName: scale.name,
    pages: pagesOf(rows, room).map((page) => [
      ...page.flatMap(({ row, y }) => row.flatMap((cell) => cellParts(cell, y, scale))),
      furniture(foot(job, rows.flat(), scale, inner, options)),
    ]),
  };
}

interface Cell {
  /** 'A', 'B'…, by which it is spoken of. */
  readonly letter: string;
  readonly title: readonly string[];
  readonly x: number;
  readonly width: number;
  /** From its left to the edge, mm. */
  readonly edge: number;
  /** From its top to what is drawn, mm. */
  readonly top: number;
  readonly placed: PlacedCut;
  readonly height: number;
}
type Row = readonly Cell[];

interface Laid {
  readonly scale: Scale;
  readonly rows: readonly Row[];
}

/** The sections at a scale, row by row; nothing when one of them is wider or higher than the page. */
function laidAt(
  job: Job,
  takeoff: Takeoff,
  kinds: readonly SectionKind[],
  scale: Scale,
  room: Rect,
  { words }: SheetOptions,
): Laid | undefined {
  const perMm = gridPerMmAt(scale);
  const shares = rowsOf(
    kinds.map((kind) => {
      const { left, right } = leastShown(kind, job, takeoff);
      return Math.max(NARROWEST_MM, LEFT_MM + (left + right) / perMm + RIGHT_MM);
    }),
    room.width,
  );
  if (!shares) return undefined;
  let next = 0;
  const rows = shares.map((widths): Row => {
    let x = room.x;
    return widths.map((width): Cell => {
      const kind = kinds[next]!;
      const { left } = leastShown(kind, job, takeoff);
      const edge = LEFT_MM + left / perMm;
      const shown: Shown = { left, right: (width - edge - RIGHT_MM) * perMm };
      const placed = placeCut(cutOf(kind, job, takeoff, words.drawing, shown), {
        gridPerMm: perMm,
        units: job.units,
        words: words.drawing,
        rightMm: width - edge,
        lines: wrapped,
      });
      const { minY, maxY } = placed.bounds;
      const title = wrapped(
        `${String.fromCharCode(65 + next)} · ${words.drawing.sections.titles[kind]}`,
        TITLE_LETTERS,
        width,
      );
      const top = TITLE_MM + (title.length - 1) * TITLE_LINE_MM;
      const height = top + (maxY - minY) / perMm + GAP_MM;
      const cell = {
        letter: String.fromCharCode(65 + next),
        title,
        x,
        width,
        edge,
        top,
        placed,
        height,
      };
      x += width + GAP_MM;
      next++;
      return cell;
    });
  });
  return rows.every((row) => heightOf(row) <= room.height) ? { scale, rows } : undefined;
}

/**
 * Widths put into rows in their order, as many as a row holds; what is left of a row goes to its cells alike, as far as the
 * widest that a cell may be. Nothing when one is wider than the room.
 */
function rowsOf(
  needs: readonly number[],
  width: number,
): readonly (readonly number[])[] | undefined {
  const rows: number[][] = [];
  let left = 0;
  for (const need of needs) {
    if (need > width) return undefined;
    const row = rows.at(-1);
    if (row && need + GAP_MM <= left) {
      row.push(need);
      left -= need + GAP_MM;
    } else {
      rows.push([need]);
      left = width - need;
    }
  }
  return rows.map((row) => {
    const used = row.reduce((sum, need) => sum + need + GAP_MM, -GAP_MM);
    const more = (width - used) / row.length;
    return row.map((need) => Math.max(need, Math.min(WIDEST_MM, need + more)));
  });
}

/**
 * The largest scale that takes no more than two pages, as long as small things can be seen at it; else the largest that takes
 * no more than four; else the one that takes the fewest.
 */
function bestLaid(
  job: Job,
  takeoff: Takeoff,
  kinds: readonly SectionKind[],
  room: Rect,
  options: SheetOptions,
): Laid | undefined {
  const seen: { readonly laid: Laid; readonly pages: number }[] = [];
  for (const scale of sectionScalesFor(job.units)) {
    const laid = laidAt(job, takeoff, kinds, scale, room, options);
    if (!laid) continue;
    const pages = pagesOf(laid.rows, room).length;
    const isReadable = scale.ratio <= READABLE;
    if (pages <= FEW_PAGES && isReadable) return laid;
    seen.push({ laid, pages });
    if (pages <= FEW_PAGES) break;
  }
  const most = Math.max(MANY_PAGES, Math.min(...seen.map(({ pages }) => pages)));
  return (seen.find(({ pages }) => pages <= most) ?? seen.at(-1))?.laid;
}

function heightOf(row: Row): number {
  return Math.max(...row.map(({ height }) => height));
}

/** Rows poured into pages. */
function pagesOf(
  rows: readonly Row[],
  { y, height }: Rect,
): readonly (readonly { readonly row: Row; readonly y: number }[])[] {
  const pages: { row: Row; y: number }[][] = [[]];
  let used = 0;
  for (const row of rows) {
    const high = heightOf(row);
    if (used > 0 && used + high > height) {
      pages.push([]);
      used = 0;
    }
    pages.at(-1)!.push({ row, y: y + used });
    used += high;
  }
  return pages;
}

function cellParts(
  { title, x, width, edge, top, placed }: Cell,
  y: number,
  scale: Scale,
): readonly SheetPart[] {
  return [
    furniture([
      ...title.map((one, i) =>
        text(one, x, y + 4.6 + i * TITLE_LINE_MM, { height: TITLE_LETTERS, style: 'title' }),
      ),
      line(x, y + top - 2.8, x + width, y + top - 2.8, 'hairline'),
    ]),
    {
      marks: placed.marks,
      gridPerMm: gridPerMmAt(scale),
      from: { x: 0, y: placed.bounds.maxY },
      at: { x: x + edge, y: y + top },
    },
  ];
}

/** The bars under the sections, and beside them what they rest on. */
function foot(
  job: Job,
  cells: readonly Cell[],
  scale: Scale,
  { x, y, width, height }: Rect,
  { words }: SheetOptions,
): readonly Mark[] {
  const top = y + height - BARS_HEIGHT;
  const { sections } = words.sheet.layout;
  const unplaced = cells.flatMap(({ letter, placed }) =>
    placed.unplaced.map((size) => `${letter}: ${size}`),
  );
  const said = [
    sections.rest,
    ...(unplaced.length > 0 ? [sections.unplaced(unplaced.join(', '))] : []),
  ];
  const left = x + barsWidth(scale, job.units) + 8;
  const lines = said.flatMap((one) => wrapped(one, LIST_MM, x + width - left));
  return [
    line(x, top, x + width, top, 'hairline'),
    ...bars(x, top + 1, scale, job.units, words.sheet.layout),
    ...lines.map((one, i) => text(one, left, top + 6 + i * LINE_MM, { height: LIST_MM })),
  ];
}

function barsWidth({ ratio }: Scale, units: UnitStyle): number {
  // The shortest bar of the largest scale is longer than the others.
  return Math.max(60, ((units === 'metric' ? 400 : 304.8) / ratio) * 1.08);
}
