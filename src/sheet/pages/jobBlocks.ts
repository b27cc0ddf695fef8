import type { KeyedSize } from '../../drawing/dimension/board.ts';
import type { Job } from '../../job/job.ts';
import type { Figure, Note, TicketTable } from '../../takeoff/figure.ts';
import { formatNumber } from '../../units/format.ts';
import type { Rect } from '../page.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { sayNote, sayQuantity } from '../words/say.ts';
import { type Block, figureRow, heading, paragraph, subheading } from './blocks.ts';
import { keyedLine } from './keyTable.ts';
import { tableBlocks } from './tableBlocks.ts';

const GUTTER = 7;
/** A column is about this wide, mm. */
const COLUMN = 84;

/** Clear paper over and under lists, mm. */
export const LIST_MARGINS = 3;

/**
 * The columns that lists run down in.
 * @param least A column is at least this wide, mm.
 */
export function columnsOf({ x, y, width, height }: Rect, least = COLUMN): readonly Rect[] {
  const inner = { x: x + 3, y: y + 1, width: width - 6, height: height - LIST_MARGINS };
  const count = Math.max(1, Math.floor((inner.width + GUTTER) / (least + GUTTER)));
  const each = (inner.width - (count - 1) * GUTTER) / count;
  return Array.from({ length: count }, (_, i) => ({
    ...inner,
    x: inner.x + i * (each + GUTTER),
    width: each,
  }));
}

const NO_BREAK = '\u00a0';

/** Makes a text printable. */
export type Plain = (said: string) => string;

/** Sizes that found no room on a plan nor in the list beside it. */
export function keyedBlocks(
  job: Job,
  left: readonly KeyedSize[],
  width: number,
  { words }: SheetOptions,
): readonly Block[] {
  if (left.length === 0) return [];
  const { layout } = words.sheet;
  return [
    heading(layout.key, width),
    ...(left.some(({ marked }) => !marked) ? paragraph(layout.keyDatum, width) : []),
    ...left.flatMap((one) => paragraph(keyedLine(job, one, layout), width)),
  ];
}

/** Figures, each with its name; what is ordered stands out. */
export function figureBlocks(
  job: Job,
  figures: readonly Figure[],
  width: number,
  plain: Plain,
  { words: { sheet } }: SheetOptions,
): readonly Block[] {
  return figures.map(({ key, value, role }) =>
    figureRow(
      sheet.figures[key],
      plain(sayQuantity(sheet, value, job.units)),
      role ? sheet.layout.roles[role] : '',
      width,
      role === 'order',
    ),
  );
}

/** Columns that count one thing in one row and another in the next: each says what. */
const OF_SEVERAL: readonly TicketTable['columns'][number][] = ['order-count'];

/** A ticket's tables, each under its name. */
export function ticketTableBlocks(
  job: Job,
  tables: readonly TicketTable[],
  width: number,
  plain: Plain,
  { words: { sheet } }: SheetOptions,
): readonly Block[] {
  // The head of a column names what is counted; a length isn't broken at its fraction, nor an area at its unit.
  const cell = (value: Figure['value']): string => {
    if (value.of === 'count') return formatNumber(value.count);
    if (value.of === 'list') return value.items.map(cell).join(', ');
    const said = plain(sayQuantity(sheet, value, job.units));
    return value.of === 'length' || value.of === 'area' ? said.replaceAll(' ', NO_BREAK) : said;
  };
  return tables.flatMap(({ key, columns, rows }) => [
    subheading(sheet.tables[key], width),
    ...tableBlocks(
      columns.map((column) => sheet.columns[column]),
      rows.map((row) =>
        row.map((value, i) =>
          OF_SEVERAL.includes(columns[i]!)
            ? plain(sayQuantity(sheet, value, job.units))
            : cell(value),
        ),
      ),
      width,
    ),
  ]);
}

const SIGNS: Readonly<Record<Note['weight'], string>> = {
  stop: '!',
  caution: '!',
  assumption: '•',
};

/** Notes of a weight under its heading, each with the names of what it concerns. */
export function notesBlocks(
  job: Job,
  notes: readonly Note[],
  weight: Note['weight'],
  width: number,
  plain: Plain,
  { words }: SheetOptions,
): readonly Block[] {
  const those = notes.filter((note) => note.weight === weight);
  if (those.length === 0) return [];
  return [
    heading(words.sheet.weights[weight], width),
    ...those.flatMap((note) => paragraph(noteText(job, note, plain, words), width, SIGNS[weight])),
  ];
}

/** What a note says, with the names of what it concerns in front, where they have any. */
function noteText(
  { features, units }: Job,
  note: Note,
  plain: Plain,
  words: SheetOptions['words'],
): string {
  const { sheet, drawing } = words.sentences ?? words;
  const names = (note.features ?? []).flatMap((id) => {
    const feature = features.find((one) => one.id === id);
    return feature ? [feature.name.trim() || drawing.kinds[feature.kind]] : [];
  });
  const said = sayNote(sheet, note, units);
  return plain(names.length > 0 ? `${[...new Set(names)].join(', ')}: ${said}` : said);
}
