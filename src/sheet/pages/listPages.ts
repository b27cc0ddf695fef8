import type { KeyedSize } from '../../drawing/dimension/board.ts';
import type { Mark } from '../../drawing/marks.ts';
import type { Job } from '../../job/job.ts';
import type { Figure, Note, Ticket } from '../../takeoff/figure.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { tickets } from '../../takeoff/tickets.ts';
import { formatNumber } from '../../units/format.ts';
import { printable } from '../lettering.ts';
import type { Rect } from '../page.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { sayNote, sayQuantity } from '../words/say.ts';
import {
  type Block,
  figureRow,
  flow,
  heading,
  paragraph,
  subheading,
  tableBlocks,
} from './blocks.ts';
import { keyedLine } from './keyTable.ts';

const GUTTER = 7;
/** A column is about this wide, mm. */
const COLUMN = 84;

/** The material list, what it rests on and what to look out for: as many pages as it takes. */
export function listPages(
  job: Job,
  takeoff: Takeoff,
  left: readonly KeyedSize[],
  area: Rect,
  options: SheetOptions,
): readonly (readonly Mark[])[] {
  const columns = columnsOf(area);
  const { width } = columns[0]!;
  let lacks = false;
  const plain = (said: string): string => {
    const done = printable(said);
    if (done.lacks) lacks = true;
    return done.text;
  };
  const blocks = [
    ...notesBlocks(job, takeoff.notes, 'stop', width, plain, options),
    ...keyedBlocks(job, left, width, options),
    ...materialBlocks(job, takeoff, width, plain, options),
    ...notesBlocks(job, takeoff.notes, 'caution', width, plain, options),
    ...notesBlocks(job, takeoff.notes, 'assumption', width, plain, options),
    ...crewNotes(job, width, plain, options),
  ];
  const all = lacks
    ? [...blocks, ...paragraph(options.words.sheet.layout.lettersMissing, width)]
    : blocks;
  return flow(all, columns);
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

const NO_BREAK = '\u00a0';

type Plain = (said: string) => string;

function keyedBlocks(
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

function materialBlocks(
  job: Job,
  takeoff: Takeoff,
  width: number,
  plain: Plain,
  options: SheetOptions,
): readonly Block[] {
  const stations = tickets(job, takeoff).filter(({ figures }) => figures.length > 0);
  if (stations.length === 0) return [];
  return [
    heading(options.words.sheet.layout.materialList, width),
    ...stations.flatMap((ticket) => ticketBlocks(job, ticket, width, plain, options)),
  ];
}

function ticketBlocks(
  job: Job,
  { station, figures, tables }: Ticket,
  width: number,
  plain: Plain,
  { words }: SheetOptions,
): readonly Block[] {
  const { sheet } = words;
  const say = (value: Figure['value']) => plain(sayQuantity(sheet, value, job.units));
  // The head of a column names what is counted; a length isn't broken at its fraction.
  const cell = (value: Figure['value']) =>
    value.of === 'count'
      ? formatNumber(value.count)
      : say(value).replaceAll(' ', value.of === 'length' ? NO_BREAK : ' ');
  return [
    subheading(sheet.stations[station], width),
    ...figures.map(({ key, value, role }) =>
      figureRow(
        sheet.figures[key],
        say(value),
        role ? sheet.layout.roles[role] : '',
        width,
        role === 'order',
      ),
    ),
    ...tables.flatMap(({ key, columns, rows }) => [
      subheading(sheet.tables[key], width),
      ...tableBlocks(
        columns.map((column) => sheet.columns[column]),
        rows.map((row) => row.map(cell)),
        width,
      ),
    ]),
  ];
}

const SIGNS: Readonly<Record<Note['weight'], string>> = {
  stop: '!',
  caution: '!',
  assumption: '•',
};

function notesBlocks(
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
  { sheet, drawing }: SheetOptions['words'],
): string {
  const names = (note.features ?? []).flatMap((id) => {
    const feature = features.find((one) => one.id === id);
    return feature ? [feature.name.trim() || drawing.kinds[feature.kind]] : [];
  });
  const said = sayNote(sheet, note, units);
  return plain(names.length > 0 ? `${[...new Set(names)].join(', ')}: ${said}` : said);
}

function crewNotes(
  job: Job,
  width: number,
  plain: Plain,
  { words }: SheetOptions,
): readonly Block[] {
  const lines = job.notes.split('\n').filter((one) => one.trim() !== '');
  if (lines.length === 0) return [];
  return [
    heading(words.sheet.layout.notes, width),
    ...lines.flatMap((one) => paragraph(plain(one), width)),
  ];
}
