import type { Job } from '../../job/job.ts';
import { fileNameOf } from '../../storage/files.ts';
import type { Station, Ticket, TicketTable } from '../../takeoff/figure.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { tickets } from '../../takeoff/tickets.ts';
import { sayQuantity } from '../words/say.ts';
import type { Words } from '../words/words.ts';
import { csvText } from './csvText.ts';
import { plainQuantity } from './plainQuantity.ts';
import { tableCsv } from './tableCsv.ts';

/** A table as a file, ready to be saved. */
export interface TableFile {
  readonly station: Station | null;
  /** What it is called on the ticket. */
  readonly title: string;
  readonly fileName: string;
  readonly text: string;
}

/** All figures of all tickets in one table, then each ticket's own tables. None when nothing is figured. */
export function jobTables(words: Words, job: Job, takeoff: Takeoff): readonly TableFile[] {
  const all = tickets(job, takeoff).filter(({ figures }) => figures.length > 0);
  if (all.length === 0) return [];
  return [
    {
      station: null,
      title: words.csv.figures,
      fileName: fileNameOf({ name: words.csv.figures }, 'csv'),
      text: figuresCsv(words, job, all),
    },
    ...all.flatMap(({ station, tables }) =>
      tables
        .filter(({ rows }) => rows.length > 0)
        .map((table) => ({
          station,
          title: words.tables[table.key],
          fileName: tableFileName(words, station, table),
          text: tableCsv(words, table, job.units),
        })),
    ),
  ];
}

/** The file of one table: its station and what it is called there. */
export function tableFileName(words: Words, station: Station, { key }: TicketTable): string {
  return fileNameOf({ name: `${words.stations[station]} ${words.tables[key]}` }, 'csv');
}

function figuresCsv(words: Words, { units }: Job, all: readonly Ticket[]): string {
  const heads = words.csv.heads;
  return csvText([
    [heads.station, heads.figure, heads.shown, heads.number, heads.unit, heads.kind],
    ...all.flatMap(({ station, figures }) =>
      figures.map(({ key, value, role }) => {
        const plain = plainQuantity(words, value, units);
        return [
          words.stations[station],
          words.figures[key],
          sayQuantity(words, value, units),
          plain?.number ?? '',
          plain?.unit ?? '',
          role ? words.csv.roles[role] : '',
        ];
      }),
    ),
  ]);
}
