import type { UnitStyle } from '../../job/job.ts';
import type { TicketTable } from '../../takeoff/figure.ts';
import { sayQuantity } from '../words/say.ts';
import type { Words } from '../words/words.ts';
import { type Cell, csvText } from './csvText.ts';
import { plainQuantity } from './plainQuantity.ts';

/**
 * A ticket's table as CSV: every column as it is read on the ticket, and behind it, where it measures something, the same
 * as plain numbers under a head that names their unit. A column of several units has a column of numbers for each.
 */
export function tableCsv(words: Words, table: TicketTable, units: UnitStyle): string {
  const columns = table.columns.map((column, at) => {
    const name = words.columns[column];
    const plain = table.rows.map((row) => plainQuantity(words, row[at]!, units));
    const measured = [...new Set(plain.flatMap((one) => (one ? [one.unit] : [])))];
    return {
      heads: [name, ...measured.map((unit) => (unit === '' ? name : `${name} (${unit})`))],
      cells: table.rows.map((row, r): readonly Cell[] => [
        sayQuantity(words, row[at]!, units),
        ...measured.map((unit) => (plain[r]?.unit === unit ? plain[r].number : '')),
      ]),
    };
  });
  return csvText([
    columns.flatMap(({ heads }) => heads),
    ...table.rows.map((_, r) => columns.flatMap(({ cells }) => cells[r]!)),
  ]);
}
