import type { KeyedSize } from '../../drawing/dimension/board.ts';
import type { Mark } from '../../drawing/marks.ts';
import type { Plan } from '../../drawing/plan.ts';
import type { Job } from '../../job/job.ts';
import type { Note, Station, Ticket, TicketTable } from '../../takeoff/figure.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { tickets } from '../../takeoff/tickets.ts';
import { codeBlocks } from '../code/codeBlocks.ts';
import { printable } from '../lettering.ts';
import type { Rect } from '../page.ts';
import type { PageKind } from '../pageKinds.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { asBuiltBlocks } from './asBuilt.ts';
import { POUR_TABLES } from './batchBlocks.ts';
import { type Block, flow, heading, paragraph, subheading } from './blocks.ts';
import {
  columnsOf,
  figureBlocks,
  keyedBlocks,
  notesBlocks,
  type Plain,
  ticketTableBlocks,
} from './jobBlocks.ts';
import { isLaidBy } from './steelPages.ts';

/** Sizes that found no room beside the plan, then all of them with room for what was measured. */
export function sizePages(
  job: Job,
  plan: Plan,
  left: readonly KeyedSize[],
  area: Rect,
  options: SheetOptions,
): readonly (readonly Mark[])[] {
  const columns = columnsOf(area);
  const { width } = columns[0]!;
  const blocks = [
    ...keyedBlocks(job, left, width, options),
    ...asBuiltBlocks(job, plan, width, options),
  ];
  return blocks.length > 0 ? flow(blocks, columns) : [];
}

/**
 * The material list, what it rests on and what to look out for, as far as they are wanted: as many pages as it takes.
 * @param apart Stations whose tables and cautions stand on pages of their own, and for steel how it is laid.
 */
export function listPages(
  job: Job,
  takeoff: Takeoff,
  wanted: ReadonlySet<PageKind>,
  apart: readonly Station[],
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
  const isHere = (note: Note) =>
    // The order's own stand on its page.
    !(note.station === 'order' && note.weight !== 'stop') &&
    (!apart.includes(note.station) ||
      !(note.weight === 'caution' || (note.station !== 'forms' && isLaidBy(note))));
  const notes = takeoff.notes.filter(isHere);
  const blocks = [
    ...notesBlocks(job, notes, 'stop', width, plain, options),
    ...(wanted.has('order')
      ? materialBlocks(job, takeoff, wanted, apart, width, plain, options)
      : []),
    ...(wanted.has('cautions')
      ? [
          ...notesBlocks(job, notes, 'caution', width, plain, options),
          ...notesBlocks(job, notes, 'assumption', width, plain, options),
          ...(takeoff.pour
            ? paragraph(options.words.sheet.layout.heightsNotSetWhy, width, '•')
            : []),
        ]
      : []),
    ...(wanted.has('order') || wanted.has('cautions') ? crewNotes(job, width, plain, options) : []),
    ...(wanted.has('code') ? codeOnList(wanted, width, options) : []),
  ];
  const all = lacks
    ? [...blocks, ...paragraph(options.words.sheet.layout.lettersMissing, width)]
    : blocks;
  return all.length > 0 ? flow(all, columns) : [];
}

/** That no code can be had is said only where nothing else is printed. */
function codeOnList(
  { size }: ReadonlySet<PageKind>,
  width: number,
  { code, words }: SheetOptions,
): readonly Block[] {
  if (!code || (code.is === 'no-address' && size > 1)) return [];
  return codeBlocks(code, width, words.sheet.layout);
}

function materialBlocks(
  job: Job,
  takeoff: Takeoff,
  wanted: ReadonlySet<PageKind>,
  apart: readonly Station[],
  width: number,
  plain: Plain,
  options: SheetOptions,
): readonly Block[] {
  const isHere = ({ key }: TicketTable) => !(wanted.has('pour') && POUR_TABLES.includes(key));
  // The order repeats what the other tickets ask for: it has a page of its own.
  const stations = tickets(job, takeoff).filter(
    ({ station, figures }) => station !== 'order' && figures.length > 0,
  );
  if (stations.length === 0) return [];
  return [
    heading(options.words.sheet.layout.materialList, width),
    ...stations.flatMap((ticket) => {
      const tables = apart.includes(ticket.station) ? [] : ticket.tables.filter(isHere);
      return ticketBlocks(job, { ...ticket, tables }, width, plain, options);
    }),
  ];
}

function ticketBlocks(
  job: Job,
  { station, figures, tables }: Ticket,
  width: number,
  plain: Plain,
  options: SheetOptions,
): readonly Block[] {
  return [
    subheading(options.words.sheet.stations[station], width),
    ...figureBlocks(job, figures, width, plain, options),
    ...ticketTableBlocks(job, tables, width, plain, options),
  ];
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
