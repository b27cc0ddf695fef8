import { parse } from 'csv-parse/sync';
import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { demoJob } from '../../../src/job/demo.ts';
import type { Job } from '../../../src/job/job.ts';
import { blankJob } from '../../../src/job/start.ts';
import { jobTables } from '../../../src/sheet/csv/jobTables.ts';
import { tableCsv } from '../../../src/sheet/csv/tableCsv.ts';
import { en } from '../../../src/sheet/words/en.ts';
import { sayQuantity } from '../../../src/sheet/words/say.ts';
import { zipOf } from '../../../src/storage/zip.ts';
import type { TicketTable } from '../../../src/takeoff/figure.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { tickets } from '../../../src/takeoff/tickets.ts';
import { CUBIC_FOOT, CUBIC_METRE, FOOT, INCH, MILLIMETRE } from '../../../src/units/grid.ts';

type Row = Readonly<Record<string, string>>;

function rowsOf(text: string): readonly (readonly string[])[] {
  return parse(text, { bom: true });
}

function recordsOf(text: string): readonly Row[] {
  return parse(text, { bom: true, columns: true });
}

const job = demoJob();
const taken = takeoff(job);

describe('the tables of the sample job', () => {
  const files = jobTables(en, job, taken);
  const tables = tickets(job, taken).flatMap((ticket) => ticket.tables);

  test('every table of every ticket is there, and the figures', () => {
    expect(files.map(({ title }) => title)).toEqual([
      'Figures',
      ...tables.filter(({ rows }) => rows.length > 0).map(({ key }) => en.tables[key]),
    ]);
    expect(new Set(files.map(({ fileName }) => fileName)).size).toBe(files.length);
  });

  test('every cell is read as it stands on the ticket, behind it the number', () => {
    for (const table of tables) {
      const [heads, ...rows] = rowsOf(tableCsv(en, table, job.units));
      expect(rows).toHaveLength(table.rows.length);
      let at = 0;
      table.columns.forEach((column, c) => {
        expect(heads![at]).toBe(en.columns[column]);
        const next = table.columns[c + 1];
        table.rows.forEach((row, r) => {
          const text = sayQuantity(en, row[c]!, job.units);
          expect([text, `'${text}`]).toContain(rows[r]![at]);
        });
        at += 1;
        while (at < heads!.length && heads![at] !== (next && en.columns[next])) {
          for (const row of rows) expect(row[at]).toMatch(/^(-?\d+(\.\d+)?)?$/);
          at += 1;
        }
      });
      expect(at).toBe(heads!.length);
    }
  });

  test('columns add up to the figures of their tickets', () => {
    const figures = recordsOf(files[0]!.text);
    const figure = (name: string) =>
      Number(figures.find((row) => row['Figure'] === name)?.['Number']);
    const sum = (title: string, column: string) =>
      recordsOf(files.find((file) => file.title === title)!.text).reduce(
        (total, row) => total + Number(row[column]),
        0,
      );
    expect(sum(en.tables['bags-by-mix'], 'Bags (number)')).toBe(figure(en.figures.bags));
    expect(sum(en.tables['runs'], 'Length (in)')).toBeCloseTo(figure(en.figures['form-length']), 3);
  });

  test('a zip of them is read by any unzipper, and two of one name are two files', () => {
    const named = files.map(({ fileName, text }) => ({ name: fileName, text }));
    const zip = zipOf([...named, named[0]!], new Date('2026-03-04T05:06:08'));
    const inside = unzipSync(zip);
    expect(Object.keys(inside)).toEqual([...named.map(({ name }) => name), 'Figures-2.csv']);
    for (const { name, text } of named) {
      expect(Buffer.from(inside[name]!).toString('utf8')).toBe(text);
    }
  });
});

describe('units', () => {
  const table: TicketTable = {
    key: 'runs',
    columns: ['mark', 'length', 'gap'],
    rows: [
      [
        { of: 'text', text: '=R1' },
        { of: 'length', grid: 10 * INCH },
        { of: 'volume', grid3: 2 * CUBIC_FOOT },
      ],
      [
        { of: 'text', text: 'R2' },
        { of: 'length', grid: -6 * FOOT },
        { of: 'text', text: '–' },
      ],
      [
        { of: 'text', text: 'R3' },
        { of: 'money', cents: -1250, currency: '$' },
        { of: 'volume', grid3: CUBIC_METRE },
      ],
    ],
  };
  const heads = [en.columns.mark, en.columns.length];

  test('stand in the heads; what has none is left empty; negative numbers stay numbers', () => {
    expect(rowsOf(tableCsv(en, table, 'feet-inches'))).toEqual([
      [...heads, 'Length (in)', 'Length ($)', en.columns.gap, `${en.columns.gap} (ft³)`],
      ["'=R1", '10"', '10', '', '2.00 ft³', '2'],
      ['R2', "'-6'-0\"", '-72', '', '–', ''],
      ['R3', "'-$12.50", '', '-12.5', '1.31 yd³', '35.314667'],
    ]);
  });

  test('follow the job', () => {
    const [first, one] = rowsOf(tableCsv(en, table, 'metric'));
    expect(first![2]).toBe('Length (mm)');
    expect(Number(one![2])).toBe((10 * INCH) / MILLIMETRE);
    expect(rowsOf(tableCsv(en, table, 'decimal-feet'))[0]![2]).toBe('Length (ft)');
  });
});

test('names that would run as formulas are disarmed wherever they come to stand', () => {
  const mixes = job.practices.mix.mixes.map((mix) => ({ ...mix, name: `=cmd|'${mix.name}'!A1` }));
  const armed: Job = {
    ...job,
    practices: { ...job.practices, mix: { ...job.practices.mix, mixes } },
  };
  const texts = jobTables(en, armed, takeoff(armed)).map(({ text }) => text);
  expect(texts.join('')).toContain("'=cmd|");
  for (const text of texts) {
    for (const cell of rowsOf(text).flat()) {
      if (/^[=+\-@]/.test(cell)) expect(cell).toMatch(/^-\d+(\.\d+)?$/);
    }
  }
});

test('a job that gives no figures gives no tables', () => {
  expect(jobTables(en, blankJob(), takeoff(blankJob()))).toEqual([]);
});
