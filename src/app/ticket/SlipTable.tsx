import type { UnitStyle } from '../../job/job.ts';
import { sayQuantity } from '../../sheet/words/say.ts';
import type { TicketTable } from '../../takeoff/figure.ts';
import { useWords } from '../SessionContext.ts';

interface SlipTableProps {
  readonly table: TicketTable;
  readonly units: UnitStyle;
}

export function SlipTable({ table, units }: SlipTableProps) {
  const words = useWords().sheet;
  if (table.rows.length === 0) return null;
  const isNumber = table.columns.map((_, column) => table.rows[0]?.[column]?.of !== 'words');
  return (
    <details className="slip-table" open={table.rows.length <= 8}>
      <summary>{words.tables[table.key]}</summary>
      <div className="table-scroll">
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
              <tr key={index}>
                {row.map((cell, at) => (
                  <td key={table.columns[at]} className={isNumber[at] ? 'is-number' : undefined}>
                    {sayQuantity(words, cell, units)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
