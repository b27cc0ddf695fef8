import type { UnitStyle } from '../../job/job.ts';
import { tableFileName } from '../../sheet/csv/jobTables.ts';
import { tableCsv } from '../../sheet/csv/tableCsv.ts';
import type { Station, TicketTable } from '../../takeoff/figure.ts';
import { download } from '../jobs/download.ts';
import { useLiveTakeoff, useWords } from '../SessionContext.ts';
import { CSV_TYPE } from './csvFile.ts';

interface TableCsvButtonProps {
  readonly table: TicketTable;
  readonly station: Station;
  readonly units: UnitStyle;
}

/** Saves one table of a ticket as CSV, once it is true of the sketch. */
export function TableCsvButton({ table, station, units }: TableCsvButtonProps) {
  const { app, sheet } = useWords();
  const { standing } = useLiveTakeoff();
  return (
    <button
      type="button"
      className="plain table-csv"
      aria-label={app.handOver.tables.saveTable(sheet.tables[table.key])}
      disabled={standing !== 'current'}
      onClick={() =>
        download(tableFileName(sheet, station, table), tableCsv(sheet, table, units), CSV_TYPE)
      }
    >
      {app.handOver.tables.csv}
    </button>
  );
}
