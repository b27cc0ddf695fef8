import type { Job } from '../job/job.ts';
import { sayNote, sayQuantity, sayWorking } from '../sheet/words/say.ts';
import type { Words } from '../sheet/words/words.ts';
import type { Figure } from '../takeoff/figure.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { tickets } from '../takeoff/tickets.ts';

/**
 * The takeoff as plain data for other programs: the tickets as they are read (values both as quantities in grid units and
 * as text in the job's units), the notes, and the parts of the takeoff in full, in grid units (1/320 mm).
 */
export function takeoffJson(words: Words, job: Job, takeoff: Takeoff): object {
  const { notes, ...parts } = takeoff;
  return {
    job: { name: job.name, site: job.site, units: job.units },
    tickets: tickets(job, takeoff).map(({ station, figures, tables }) => ({
      station,
      figures: figures.map((figure) => figureJson(words, figure, job)),
      tables: tables.map(({ key, columns, rows }) => ({
        key,
        columns,
        rows: rows.map((row) =>
          row.map((value) => ({ value, text: sayQuantity(words, value, job.units) })),
        ),
      })),
    })),
    notes: notes.map((note) => ({ ...note, text: sayNote(words, note, job.units) })),
    parts,
  };
}

function figureJson(words: Words, figure: Figure, { units }: Job): object {
  const working = figure.working();
  return {
    key: figure.key,
    name: words.figures[figure.key],
    value: figure.value,
    text: sayQuantity(words, figure.value, units),
    ...(figure.role ? { role: figure.role } : {}),
    working: { ...working, text: sayWorking(words, working, units) },
  };
}
