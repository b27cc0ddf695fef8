import type { Mark } from '../../drawing/marks.ts';
import type { Job } from '../../job/job.ts';
import { bidOf, orderOf } from '../../job/orderDefaults.ts';
import type { Figure, Note, TicketTable } from '../../takeoff/figure.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { ticketOf } from '../../takeoff/tickets.ts';
import { formatMoney } from '../../units/money.ts';
import { line, text } from '../furniture.ts';
import { printable } from '../lettering.ts';
import type { Rect } from '../page.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { type Block, flow, heading, paragraph } from './blocks.ts';
import { costPlot } from './costPlot.ts';
import { columnsOf, figureBlocks, notesBlocks, ticketTableBlocks } from './jobBlocks.ts';

/** A list with prices needs room, mm. */
const COLUMN = 120;

/** What the office reckons with is no part of what a crew reads. */
function isOfTheOffice({ key }: Figure): boolean {
  return key === 'labour-hours' || key.startsWith('bid-');
}

const PRINTED_TABLES: readonly TicketTable['key'][] = ['order-list', 'haul-plan', 'cost-parts'];

/** What to buy and what goes on which trip: as many pages as it takes. None where nothing is ordered. */
export function orderPages(
  job: Job,
  takeoff: Takeoff,
  area: Rect,
  options: SheetOptions,
): readonly (readonly Mark[])[] {
  const { order } = takeoff;
  if (!order || order.lines.length === 0) return [];
  const { sheet } = options.words;
  const columns = columnsOf(area, COLUMN);
  const { width } = columns[0]!;
  let lacks = false;
  const plain = (said: string): string => {
    const done = printable(said);
    if (done.lacks) lacks = true;
    return done.text;
  };
  const { figures, tables } = ticketOf(job, takeoff, 'order');
  const notes = takeoff.notes.filter(isForTheCrew);
  const blocks: readonly Block[] = [
    heading(sheet.layout.order.title, width),
    ...ticketTableBlocks(
      job,
      tables.filter(({ key }) => PRINTED_TABLES.includes(key)),
      width,
      plain,
      options,
    ),
    ...figureBlocks(
      job,
      figures.filter((one) => !isOfTheOffice(one)),
      width,
      plain,
      options,
    ),
    ...(order.compare ? [costPlot(job, order.compare, width, sheet)] : []),
    ...notesBlocks(job, notes, 'caution', width, plain, options),
    ...notesBlocks(job, notes, 'assumption', width, plain, options),
  ];
  return flow(
    lacks ? [...blocks, ...paragraph(sheet.layout.lettersMissing, width)] : blocks,
    columns,
  );
}

function isForTheCrew({ station, code }: Note): boolean {
  return station === 'order' && !code.startsWith('bid-');
}

/** Wide enough to write on, mm. */
const SIGN_MM = 70;

/**
 * One page for the customer: the work, what isn't in it, the terms, and the price. No cost, no hour and no profit of the
 * contractor's stands on it. Without a bid it says that there is no price yet.
 */
export function proposalPages(
  job: Job,
  takeoff: Takeoff,
  area: Rect,
  options: SheetOptions,
): readonly (readonly Mark[])[] {
  const { layout } = options.words.sheet;
  const says = layout.proposal;
  const columns = columnsOf(area, area.width);
  const { width } = columns[0]!;
  const { bid } = orderOf(job.practices);
  const price = takeoff.order?.bid?.price;
  let lacks = false;
  const written = (title: string, said: string, none: string): readonly Block[] => [
    heading(title, width),
    ...(said.trim() === '' ? none : said).split('\n').flatMap((one) => {
      const done = printable(one);
      if (done.lacks) lacks = true;
      return paragraph(done.text, width);
    }),
  ];
  const blocks: readonly Block[] = [
    heading(says.title, width),
    ...written(says.scope, bidOf(job).scope, says.noScope),
    ...written(says.exclusions, bid.exclusions, says.noExclusions),
    ...written(says.terms, bid.terms, says.noTerms),
    heading(says.price, width),
    price === undefined
      ? lineOf(says.noPrice, width)
      : priceLine(printable(formatMoney(price, job.practices.currency)).text),
    ...(price === undefined
      ? []
      : paragraph(says.tax[bid.taxOn === 'none' ? 'none' : 'in'], width)),
    signatures([says.customer, says.contractor], width),
  ];
  return flow(lacks ? [...blocks, ...paragraph(layout.lettersMissing, width)] : blocks, columns);
}

function lineOf(said: string, width: number): Block {
  return paragraph(said, width)[0]!;
}

function priceLine(price: string): Block {
  return {
    height: 11,
    leads: true,
    draw: (x, y) => [text(price, x, y + 7.5, { height: 6, style: 'title' })],
  };
}

function signatures(who: readonly string[], width: number): Block {
  const each = Math.min(SIGN_MM, width / who.length - 6);
  return {
    height: 30,
    leads: false,
    draw: (x, y) =>
      who.flatMap((one, i) => {
        const left = x + i * (each + 10);
        return [
          line(left, y + 20, left + each, y + 20, 'hairline'),
          text(one, left, y + 24.5, { height: 2.5 }),
        ];
      }),
  };
}
