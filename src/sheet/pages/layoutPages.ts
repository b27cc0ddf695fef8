import type { Mark } from '../../drawing/marks.ts';
import type { Job, Pad } from '../../job/job.ts';
import type { Quantity, TicketTable } from '../../takeoff/figure.ts';
import { bandFigure, layoutTables, tieErrorFigure } from '../../takeoff/layout/figures.ts';
import type { Layout } from '../../takeoff/layout/layout.ts';
import { printable } from '../lettering.ts';
import type { Rect } from '../page.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { sayNote, sayQuantity } from '../words/say.ts';
import { BLANK, type Block, figureRow, flow, heading, paragraph, subheading } from './blocks.ts';
import { tableBlocks } from './tableBlocks.ts';

/** A column of these tables is at least this wide, mm: up to six numbers and a blank to write in. */
const COLUMN = 118;
const GUTTER = 8;

/** One pad with what there is to tape of it. */
export interface PadLayout {
  readonly pad: Pad;
  readonly layout: Layout;
  /** The pad that was chosen, or the first. */
  readonly meant: boolean;
}

/** Squaring and setting out of every pad, for the crew: as many pages as it takes, none when there is nothing. */
export function layoutPages(
  job: Job,
  pads: readonly PadLayout[],
  area: Rect,
  options: SheetOptions,
): readonly (readonly Mark[])[] {
  const columns = columnsOf(area);
  const { width } = columns[0]!;
  const plain = (said: string): string => printable(said).text;
  const blocks = pads
    .filter(({ layout }) => layout.laid)
    .flatMap((one) => padBlocks(job, one, width, plain, options));
  return blocks.length > 0 ? flow(blocks, columns) : [];
}

function columnsOf({ x, y, width, height }: Rect): readonly Rect[] {
  const inner = { x: x + 3, y: y + 1, width: width - 6, height: height - 3 };
  const count = Math.max(1, Math.floor((inner.width + GUTTER) / (COLUMN + GUTTER)));
  const each = (inner.width - (count - 1) * GUTTER) / count;
  return Array.from({ length: count }, (_, i) => ({
    ...inner,
    x: inner.x + i * (each + GUTTER),
    width: each,
  }));
}

function padBlocks(
  job: Job,
  { pad, layout }: PadLayout,
  width: number,
  plain: (said: string) => string,
  options: SheetOptions,
): readonly Block[] {
  const { sheet } = options.words;
  const says = sheet.layout;
  const say = (value: Quantity) => plain(sayQuantity(sheet, value, job.units));
  const name = nameOf(job, pad.id, options.words);
  const error = layout.tapeTies && tieErrorFigure(layout.tapeTies);
  const figures = [bandFigure(layout.ties), ...(error ? [error] : [])];
  const notes = [...layout.notes.form, ...layout.notes.baseline, ...layout.notes.ties];
  return [
    heading(plain(`${says.setOut}: ${name}`), width),
    ...paragraph(says.setOutLetters, width),
    ...figures.map(({ key, value }) => figureRow(sheet.figures[key], say(value), '', width, false)),
    ...layoutTables(layout, job.units).flatMap((table) => [
      subheading(sheet.tables[table.key], width),
      ...intro(job, table, layout, options).flatMap((one) => paragraph(plain(one), width)),
      ...tableBlocks(
        [...table.columns.map((column) => sheet.columns[column]), says.measured],
        table.rows.map((row) => [
          ...row.map((value) => say(value).replaceAll(' ', value.of === 'length' ? '\u00a0' : ' ')),
          BLANK,
        ]),
        width,
      ),
    ]),
    ...notes.flatMap((note) =>
      paragraph(
        plain(sayNote((options.words.sentences ?? options.words).sheet, note, job.units)),
        width,
        note.weight === 'assumption' ? '•' : '!',
      ),
    ),
  ];
}

/** What a table is measured from. */
function intro(
  job: Job,
  { key }: TicketTable,
  { offsets, tapeTies }: Layout,
  options: SheetOptions,
): readonly string[] {
  const says = options.words.sheet.layout;
  const called = (id: string) => nameOf(job, id, options.words.sentences ?? options.words);
  if (key === 'layout-offsets' && offsets) {
    const { baseline, zeroLetter, endLetter } = offsets;
    return [says.setOutFrom(called(baseline.feature), zeroLetter, endLetter)];
  }
  if (key === 'layout-tape-ties' && tapeTies) {
    return tapeTies.marks.map(({ feature, letter }, i) =>
      says.setOutMark(`M${i + 1}`, called(feature), letter),
    );
  }
  return [];
}

function nameOf(
  { features }: Job,
  id: string,
  { drawing }: Pick<SheetOptions['words'], 'drawing'>,
): string {
  const feature = features.find((one) => one.id === id)!;
  return feature.name.trim() || drawing.kinds[feature.kind];
}
