import type { Job } from '../job/job.ts';
import { sayNote, sayQuantity, workingLines } from '../sheet/words/say.ts';
import type { Words } from '../sheet/words/words.ts';
import type { Figure, Note, TicketTable } from '../takeoff/figure.ts';
import { isOn } from '../takeoff/notes.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { tickets } from '../takeoff/tickets.ts';

/** The tickets of a job as plain text, one station under the other; with the working under each figure if asked for. */
export function ticketText(
  words: Words,
  job: Job,
  takeoff: Takeoff,
  withWorkings: boolean,
): string {
  const lines: string[] = [[job.name || words.cli.notNamed, job.site].filter(Boolean).join(' · ')];
  for (const { station, figures, tables } of tickets(job, takeoff)) {
    const notes = takeoff.notes.filter((note) => isOn(station, note));
    if (figures.length === 0 && notes.length === 0) continue;
    lines.push('', words.stations[station].toUpperCase());
    const stops = notes.filter(({ weight }) => weight === 'stop');
    lines.push(...noteLines(words, stops, job));
    for (const figure of figures) lines.push(...figureLines(words, figure, job, withWorkings));
    for (const table of tables) lines.push(...tableLines(words, table, job));
    for (const weight of ['caution', 'assumption'] as const) {
      lines.push(
        ...noteLines(
          words,
          notes.filter((note) => note.weight === weight),
          job,
        ),
      );
    }
  }
  return `${lines.join('\n')}\n`;
}

function figureLines(
  words: Words,
  figure: Figure,
  { units }: Job,
  withWorkings: boolean,
): readonly string[] {
  const value = sayQuantity(words, figure.value, units);
  const working = withWorkings ? workingLines(words, figure.working(), units) : [];
  return [
    `  ${words.figures[figure.key]} ${value.padStart(64 - words.figures[figure.key].length, '.')}`,
    ...working.map((line) => `      ${line}`),
  ];
}

function tableLines(words: Words, table: TicketTable, { units }: Job): readonly string[] {
  const rows = [
    table.columns.map((column) => words.columns[column]),
    ...table.rows.map((row) => row.map((cell) => sayQuantity(words, cell, units))),
  ];
  const widths = table.columns.map((_, i) => Math.max(...rows.map((row) => row[i]?.length ?? 0)));
  return [
    `  ${words.tables[table.key]}`,
    ...rows.map(
      (row) =>
        `    ${row
          .map((cell, i) => cell.padEnd(widths[i]!))
          .join('  ')
          .trimEnd()}`,
    ),
  ];
}

function noteLines(words: Words, notes: readonly Note[], { units }: Job): readonly string[] {
  return notes.map((note) => `  ${words.weights[note.weight]}: ${sayNote(words, note, units)}`);
}
