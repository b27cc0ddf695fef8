import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { demoJob } from '../../../src/job/demo.ts';
import type { Job } from '../../../src/job/job.ts';
import { JOB_PROBLEMS } from '../../../src/job/problems.ts';
import { en } from '../../../src/sheet/words/en.ts';
import { sayNote, sayQuantity, workingLines } from '../../../src/sheet/words/say.ts';
import { STORAGE_PROBLEMS } from '../../../src/storage/problems.ts';
import { TRADE_NOTE_CODES } from '../../../src/takeoff/notes.ts';
import { OUTLINE_NOTE_CODES } from '../../../src/takeoff/outline/notes.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { tickets } from '../../../src/takeoff/tickets.ts';
import { CUBIC_FOOT, FOOT, INCH } from '../../../src/units/grid.ts';
import { UNIT_PROBLEMS } from '../../../src/units/problems.ts';
import { wasteByShare } from '../../published/slabs.ts';
import { BOARD_TROUBLES } from '../../takeoff/boards/boardJobs.ts';
import { JOINT_TROUBLES } from '../../takeoff/joints/jointJobs.ts';
import { MIX_TROUBLES } from '../../takeoff/mix/mixJobs.ts';
import { ORDER_TROUBLES } from '../../takeoff/order/orderJobs.ts';
import { PLACING_JOBS } from '../../takeoff/placing/placingJobs.ts';
import { spacings } from '../../takeoff/spacings.ts';
import { STAKE_JOBS } from '../../takeoff/stakes/stakeJobs.ts';
import { STEEL_TROUBLES } from '../../takeoff/steel/steelJobs.ts';
import { WEATHER_JOBS } from '../../takeoff/weather/weatherJobs.ts';

const SRC = join(import.meta.dirname, '../../../src');

function sourcesOf(room: string): readonly string[] {
  return readdirSync(join(SRC, room), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => readFileSync(join(SRC, room, path), 'utf8'));
}

/** Codes that are given out in a room's source, as they are written there. */
function codesIn(room: string, ways: readonly RegExp[]): readonly string[] {
  return sourcesOf(room).flatMap((text) =>
    ways.flatMap((way) => [...text.matchAll(way)].map((found) => found[1]!)),
  );
}

describe('every code has a sentence', () => {
  test('of problems: as listed, and as found in the source', () => {
    const listed = [...UNIT_PROBLEMS, ...JOB_PROBLEMS, ...STORAGE_PROBLEMS];
    const found = ['units', 'job', 'storage'].flatMap((room) =>
      codesIn(room, [
        /code: '([\w-]+)'/g,
        /refuse\(\s*'([\w-]+)'/g,
        /trouble\('([\w-]+)'/g,
        /say\('([\w-]+)'/g,
      ]),
    );
    expect(found.length).toBeGreaterThan(20);
    for (const code of [...listed, ...found]) expect(en.problems, code).toHaveProperty(code);
  });

  test('of notes: as listed, and as found in the source', () => {
    const listed = [...OUTLINE_NOTE_CODES, ...TRADE_NOTE_CODES];
    const found = codesIn('takeoff', [
      /outlineNote\(\s*'([\w-]+)'/g,
      /tradeNote\(\s*'\w+',\s*'\w+',\s*'([\w-]+)'/g,
    ]);
    expect(found.length).toBeGreaterThan(40);
    for (const code of [...listed, ...found]) expect(en.notes, code).toHaveProperty(code);
  });

  test('and every trade note that is listed is given somewhere', () => {
    const text = sourcesOf('takeoff').join('\n');
    const unused = TRADE_NOTE_CODES.filter((code) => text.split(`'${code}'`).length < 3);
    expect(unused).toEqual([]);
  });
});

test('sentences are whole: they end, and have no two spaces', () => {
  for (const sentence of [...Object.values(en.notes), ...Object.values(en.problems)]) {
    expect(sentence).toMatch(/[.?:)]$|\{\w+\}$/);
    expect(sentence).not.toContain('  ');
  }
});

/** Jobs that between them give many notes. */
function troubled(): readonly Job[] {
  const job = demoJob();
  const { practices } = job;
  const { steel, mix } = practices;
  const { mesh } = steel;
  const changed = [
    {},
    { thickness: 5 * INCH },
    { thickness: 4 * INCH, gapUnderForm: 0 },
    { thickness: 3 * INCH },
    { thickness: 0 },
    { thickenedEdge: { ...practices.thickenedEdge, use: true } },
    { thickenedEdge: { ...practices.thickenedEdge, use: true, depth: 4 * INCH } },
    { gapUnderForm: -9 * INCH },
    spacings(0),
    spacings(1),
    { fastening: { ...practices.fastening, nailsPerPound: 0 } },
    { steel: { ...steel, mesh: { ...mesh, cover: 20 * FOOT } } },
    { steel: { ...steel, mesh: { ...mesh, lapSides: 5 * FOOT } } },
    { steel: { ...steel, mesh: { ...mesh, lapSides: 5 * FOOT - 1 } } },
    { steel: { ...steel, mesh: { ...mesh, lapEnds: -1 } } },
    { isolation: { ...practices.isolation, pieceLength: 0 } },
    {
      isolation: {
        ...practices.isolation,
        existing: false,
        wall: false,
        steps: false,
        blockOut: false,
      },
    },
    { mix: { ...mix, batchVolume: 0 } },
    { mix: { ...mix, batchVolume: 1.2 * CUBIC_FOOT } },
    { mix: { ...mix, blend: { main: 'gone', mainParts: 1, otherParts: 0 } } },
    { mix: { ...mix, blend: { main: 'regular', mainParts: 0, otherParts: 0 } } },
    { mix: { ...mix, mixes: mix.mixes.map((one) => ({ ...one, yield: 0 })) } },
    { mix: { ...mix, mixes: mix.mixes.map((one) => ({ ...one, yield: 1e9 })) } },
    { mix: { ...mix, mixes: mix.mixes.map((one) => ({ ...one, weight: 0 })) } },
    { waste: { ...practices.waste, share: -1 } },
    { waste: wasteByShare(0.1) },
  ];
  return [
    ...changed.map((change) => ({ ...job, practices: { ...practices, ...change } })),
    { ...job, features: job.features.filter(({ kind }) => kind !== 'pad') },
    ...Object.values(BOARD_TROUBLES),
    ...Object.values(STEEL_TROUBLES),
    ...Object.values(MIX_TROUBLES),
    ...Object.values(JOINT_TROUBLES),
    ...Object.values(ORDER_TROUBLES),
    ...Object.values(STAKE_JOBS),
    ...Object.values(WEATHER_JOBS),
    ...Object.values(PLACING_JOBS),
  ];
}

/** What a sentence may not have left in it. */
const OPEN = /[{}]|NaN|Infinity|undefined/;

test('whatever goes wrong, every note, figure and working can be said with nothing left open', () => {
  const said = new Set<string>();
  const open: string[] = [];
  const look = (sentence: string) => {
    if (OPEN.test(sentence)) open.push(sentence);
  };
  for (const job of troubled()) {
    const result = takeoff(job);
    const all = tickets(job, result).map(({ figures, tables }) => ({
      tables,
      figures: figures.map(({ key, value, working }) => ({ key, value, working: working() })),
    }));
    for (const style of ['feet-inches', 'decimal-feet', 'metric'] as const) {
      for (const note of result.notes) {
        said.add(note.code);
        look(sayNote(en, note, style));
      }
      for (const { figures, tables } of all) {
        for (const { key, value, working } of figures) {
          if (!(key in en.figures)) open.push(key);
          look(sayQuantity(en, value, style));
          look(workingLines(en, working, style).join('\n'));
        }
        for (const { rows } of tables) {
          for (const cell of rows.flat()) sayQuantity(en, cell, style);
        }
      }
    }
  }
  expect(open).toEqual([]);
  const never = TRADE_NOTE_CODES.filter((code) => !said.has(code));
  expect(never).toEqual([]);
});
