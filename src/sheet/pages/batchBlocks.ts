import type { Job } from '../../job/job.ts';
import type { Figure, TicketTable } from '../../takeoff/figure.ts';
import type { ColumnKey, TableKey } from '../../takeoff/keys.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { ticketOf } from '../../takeoff/tickets.ts';
import { formatNumber } from '../../units/format.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import { sayQuantity } from '../words/say.ts';
import { type Block, heading, paragraph, subheading } from './blocks.ts';
import { figureBlocks, type Plain, ticketTableBlocks } from './jobBlocks.ts';
import { tickRows } from './tickRows.ts';

/** What stands over the list: the depth it rests on, what is opened, what goes into a batch. */
const OVER: readonly Figure['key'][] = [
  'thickness',
  'net-volume',
  'bags-expected',
  'bags',
  'batch-full',
  'batches',
  'last-batch',
  'water-least',
  'water-most',
];

/** The tables that stand on the pages of the pour. */
export const POUR_TABLES: readonly TableKey[] = [
  'batch-list',
  'checkpoints',
  'placing-strips',
  'placing-offers',
];

/** The batches with a box to tick each, and what should be gone when each panel is full. */
export function batchBlocks(
  job: Job,
  takeoff: Takeoff,
  width: number,
  plain: Plain,
  options: SheetOptions,
): readonly Block[] {
  const { mix } = takeoff;
  if (!mix) return [];
  const says = options.words.sheet.layout.pour;
  const { figures, tables } = ticketOf(job, takeoff, 'mix');
  const table = (key: TableKey) => tables.find((one) => one.key === key);
  const over = OVER.flatMap((key) => figures.filter((figure) => figure.key === key));
  const bagsByMix = table('bags-by-mix');
  const batches = table('batch-list');
  const points = table('checkpoints');
  return [
    heading(says.batches, width),
    ...figureBlocks(job, over, width, plain, options),
    ...(bagsByMix && mix.bags.length > 1
      ? ticketTableBlocks(job, [bagsByMix], width, plain, options)
      : []),
    ...(mix.water.from === 'bag' ? [] : paragraph(plain(says.waterByBag), width, '!')),
    ...(batches && batches.rows.length > 0
      ? [
          subheading(says.tick, width),
          ...ticked(job, batches, width, plain, options, (column) => {
            if (column === 'bags-main') return mixName(job, mix.bags[0]?.mix);
            return column === 'bags-other' ? mixName(job, mix.bags[1]?.mix) : undefined;
          }),
        ]
      : paragraph(plain(says.noBatches), width)),
    ...(points
      ? [
          heading(says.checkpoints, width),
          ...paragraph(plain(says.checkpointsSay), width),
          ...ticked(job, points, width, plain, options, () => undefined, [says.counted]),
        ]
      : []),
  ];
}

function mixName({ practices }: Job, id: string | undefined): string | undefined {
  return practices.mix.mixes.find((mix) => mix.id === id)?.name;
}

/**
 * A ticket's table with boxes to tick.
 * @param named A head of its own for a column, instead of the words that all tables have.
 * @param blanks Heads of columns that are filled in by hand.
 */
function ticked(
  job: Job,
  { columns, rows }: TicketTable,
  width: number,
  plain: Plain,
  { words: { sheet } }: SheetOptions,
  named: (column: ColumnKey) => string | undefined,
  blanks: readonly string[] = [],
): readonly Block[] {
  const cell = (value: Figure['value']) =>
    value.of === 'number'
      ? formatNumber(value.number)
      : plain(sayQuantity(sheet, value, job.units));
  return tickRows(
    [...columns.map((column) => plain(named(column) ?? sheet.columns[column])), ...blanks],
    rows.map((row) => [...row.map(cell), ...blanks.map(() => '')]),
    width,
  );
}
