import { memo, useDeferredValue, useState } from 'react';
import type { UnitStyle } from '../../job/job.ts';
import { sayQuantity } from '../../sheet/words/say.ts';
import type { Words } from '../../sheet/words/words.ts';
import type { Quantity, Station, TicketTable } from '../../takeoff/figure.ts';
import { TableCsvButton } from '../handOver/TableCsvButton.tsx';
import { useWords } from '../SessionContext.ts';

interface SlipTableProps {
  readonly table: TicketTable;
  readonly units: UnitStyle;
  /** Whose ticket it is on: it can be saved from there. */
  readonly station?: Station;
  /** Lies open however long it is. */
  readonly isOpen?: boolean;
}

/** Tables no longer than this lie open, and so does the list that a station is there for. */
const SHORT = 8;
const CHIEF: readonly TicketTable['key'][] = ['order-list'];

/** A list of the ticket. Its rows are written only while it is open. */
export function SlipTable({ table, units, station, isOpen }: SlipTableProps) {
  const words = useWords().sheet;
  const short = isOpen ?? (table.rows.length <= SHORT || CHIEF.includes(table.key));
  const [turned, setTurned] = useState<boolean | null>(null);
  const open = turned ?? short;
  // A long list is written between frames; until it is, it says that it isn't up to date.
  const written = useDeferredValue(table);
  if (table.rows.length === 0) return null;
  return (
    <details
      className="slip-table"
      open={open}
      data-standing={written === table ? undefined : 'behind'}
      aria-busy={written !== table}
      onToggle={(event) => {
        if (event.currentTarget.open !== open) setTurned(event.currentTarget.open);
      }}
    >
      <summary>{words.tables[table.key]}</summary>
      {open ? <Rows table={written} units={units} /> : null}
      {open && station ? <TableCsvButton table={table} station={station} units={units} /> : null}
    </details>
  );
}

const Rows = memo(function Rows({ table, units }: SlipTableProps) {
  const words = useWords().sheet;
  const isNumber = table.columns.map((_, column) => !isSaid(table.rows[0]?.[column]));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled by keyboard too.
    <section className="table-scroll" tabIndex={0} aria-label={words.tables[table.key]}>
      <table>
        <caption className="visually-hidden">{words.tables[table.key]}</caption>
        <thead>
          <tr>
            {table.columns.map((column, at) => (
              <th key={column} scope="col" className={isNumber[at] ? 'is-number' : undefined}>
                {words.columns[column]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: rows are in the ticket's own order and have no other name
            <Row key={index} row={row} columns={table.columns} units={units} />
          ))}
        </tbody>
      </table>
    </section>
  );
});

interface RowProps {
  readonly row: TicketTable['rows'][number];
  readonly columns: TicketTable['columns'];
  readonly units: UnitStyle;
}

/** A length among words isn't broken at its fraction. */
function sayCell(words: Words, cell: Quantity, units: UnitStyle): string {
  if (cell.of === 'list') return cell.items.map((one) => sayCell(words, one, units)).join(', ');
  const said = sayQuantity(words, cell, units);
  return cell.of === 'length' ? said.replaceAll(' ', '\u00a0') : said;
}

/** Words, which are broken into lines where numbers are not. */
function isSaid(cell: Quantity | undefined): boolean {
  return cell?.of === 'words' || cell?.of === 'list';
}

/** A row for itself, so that a frame can come between two of them. */
function Row({ row, columns, units }: RowProps) {
  const words = useWords().sheet;
  return (
    <tr>
      {row.map((cell, at) => (
        <td key={columns[at]} className={isSaid(cell) ? undefined : 'is-number'}>
          {sayCell(words, cell, units)}
        </td>
      ))}
    </tr>
  );
}
