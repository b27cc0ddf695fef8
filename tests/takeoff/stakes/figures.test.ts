import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/job/job.ts';
import { en } from '../../../src/sheet/words/en.ts';
import { sayQuantity, workingLines } from '../../../src/sheet/words/say.ts';
import {
  STAKE_FIGURE_KEYS,
  STAKE_INPUT_KEYS,
  STAKE_NOTE_CODES,
} from '../../../src/takeoff/stakes/keys.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { ticketOf } from '../../../src/takeoff/tickets.ts';
import { INCH, POUND_KG } from '../../../src/units/grid.ts';
import { reference } from '../../references/references.ts';
import { jobOf, shape } from '../outline/site.ts';
import { staked } from './staked.ts';
import { STAKE_JOBS } from './stakeJobs.ts';

const { plain } = STAKE_JOBS;

function formsTicket(job: Job) {
  return ticketOf(job, takeoff(job), 'forms');
}

function figure(job: Job, key: string) {
  return formsTicket(job).figures.find((one) => one.key === key);
}

function said(job: Job, key: string) {
  const one = figure(job, key);
  return one && sayQuantity(en, one.value, 'feet-inches');
}

describe('between them, some jobs', () => {
  const all = Object.values(STAKE_JOBS);

  test('have every figure, every input and every note of the stakes', () => {
    const figures = all.flatMap((job) => formsTicket(job).figures);
    const keys = new Set<string>(figures.map(({ key }) => key));
    expect(STAKE_FIGURE_KEYS.filter((key) => !keys.has(key))).toEqual([]);
    const inputs = new Set<string>(
      figures.flatMap((one) => one.working().inputs.map(({ key }) => key)),
    );
    expect(STAKE_INPUT_KEYS.filter((key) => !inputs.has(key))).toEqual([]);
    const codes = new Set(all.flatMap((job) => takeoff(job).notes.map(({ code }) => code)));
    const elsewhere = ['stake-spacing-zero', 'nails-per-pound-zero', 'stakes-too-many'];
    const never = STAKE_NOTE_CODES.filter((code) => !codes.has(code));
    expect(never.filter((code) => !elsewhere.includes(code))).toEqual([]);
  });

  test('add up: places of all runs are the stakes and all that holds the form besides', () => {
    for (const [name, job] of Object.entries(STAKE_JOBS)) {
      const { stakes } = takeoff(job);
      if (!stakes) continue;
      const places = stakes.byRun.reduce((sum, { count }) => sum + count, 0);
      expect(stakes.stakes.length + stakes.held.length, name).toBe(places);
      expect(stakes.byRun.reduce((sum, { held }) => sum + held, 0)).toBe(stakes.held.length);
    }
  });
});

describe('the spacing used', () => {
  test('shows what each rule would allow, and which governs', () => {
    const lines = workingLines(en, figure(plain, 'stake-spacing-used')!.working(), 'feet-inches');
    const has = (line: string) => expect(lines.join('\n')).toContain(line);
    // 43.75 lb/ft² at the bottom of 3 1/2 in, 6.38 lb/ft in all; 149, 67 and 96 in.
    has('Concrete presses at the bottom of the board with: 43.8 lb/ft²');
    has('Thrust on the form: 6.4 lb/ft');
    has('Fresh concrete weighs: 150 lb/ft³');
    has('Modulus of elasticity of the board: 1200000 psi');
    has("Spacing by bending stress: 12'-5");
    has("Spacing by how far the board bows: 5'-7");
    has("Spacing by bow as a share of it: 8'-0");
    has('What governs: your practice');
    expect(workingLines(en, figure(plain, 'stake-spacing-used')!.working(), 'metric')).toContain(
      'Fresh concrete weighs: 2402.8 kg/m³ (your practices)',
    );
    expect(said(STAKE_JOBS['board bends'], 'stake-spacing-used')).not.toBe(`3'-0"`);
  });

  test('is in the table of runs', () => {
    const table = formsTicket(plain).tables.find(({ key }) => key === 'runs')!;
    const at = table.columns.indexOf('most-apart');
    expect(table.rows.map((row) => sayQuantity(en, row[at]!, 'feet-inches'))).toEqual(
      Array(4).fill(`3'-0"`),
    );
  });
});

describe('fastening', () => {
  test('nails by weight from nails to the pound, in whole boxes', () => {
    reference('nails-per-pound');
    // 18 stakes and 4 corners at two: 44 of 8d at 100 to the pound.
    const fastening = { ...plain.practices.fastening, nailsPerPound: 100 };
    const job = { ...plain, practices: { ...plain.practices, fastening } };
    expect(said(job, 'nails')).toBe('44 nails');
    expect(figure(job, 'nail-weight')!.value).toEqual({ of: 'weight', kg: 0.44 * POUND_KG });
    expect(said(job, 'fastening-boxes')).toBe('1 box');
    const boxes = (nailBox: number, nailsPerPound: number) =>
      staked(plain, { fastening: { ...fastening, nailsPerPound, nailBox } }).stakes!.fastening
        .boxes;
    // Exactly a pound of 44, and one nail over it.
    expect(boxes(POUND_KG, 44)).toBe(1);
    expect(boxes(POUND_KG, 43)).toBe(2);
    expect(boxes(5 * POUND_KG, 8)).toBe(2);
    expect(boxes(0.25, 44)).toBe(2);
  });

  test('screws by the box, with no weight', () => {
    const job = STAKE_JOBS.screws;
    expect(said(job, 'nails')).toBe('44 screws');
    expect(figure(job, 'nail-weight')).toBeUndefined();
    expect(said(job, 'fastening-boxes')).toBe('1 box');
  });

  test('cleats and their nails from the splices', () => {
    const splices = new Map([['R1', [5 * 97536, 8 * 97536]]]);
    const { stakes } = staked(plain, {}, splices);
    expect(stakes!.fastening.cleats).toBe(2);
    expect(stakes!.fastening.count).toBe(2 * stakes!.stakes.length + 2 * 4 + 8 * 2);
  });

  test('a kicker is nailed at both of its ends, an inside stake as any', () => {
    const high = staked(STAKE_JOBS['high form']).stakes!;
    expect(high.fastening.count).toBe(2 * high.stakes.length * 3 + 2 * 4);
    const inside = staked(STAKE_JOBS['roots far out']).stakes!;
    expect(inside.fastening.count).toBe(2 * (inside.stakes.length + inside.held.length) + 2 * 4);
  });
});

describe('the stake list', () => {
  const rows = (job: Job) =>
    formsTicket(job)
      .tables.find(({ key }) => key === 'stake-list')!
      .rows.map((row) => row.map((cell) => sayQuantity(en, cell, 'feet-inches')));

  test('names each by its run, the corner it is measured from, how far, side and kind', () => {
    const all = rows(plain);
    expect(all).toHaveLength(18);
    expect(all.slice(0, 2)).toEqual([
      ['R1', 'A', `1'-0"`, 'outside', 'stake'],
      ['R1', 'A', `3'-6"`, 'outside', 'stake'],
    ]);
    expect(all.find(([mark]) => mark === 'R3')![1]).toBe('C');
    expect(rows(STAKE_JOBS['roots far out'])[0]).toEqual([
      'R1',
      'A',
      `1'-0"`,
      'inside',
      'inside stake',
    ]);
    expect(rows(STAKE_JOBS['set in roots']).map((row) => row[4])).toContain('stake, set by hand');
    expect(rows(STAKE_JOBS['high form'])[0]![4]).toBe('stake and kicker');
  });

  test('measures from the run’s start where no lettered corner is, and names the pad where there are several', () => {
    const slab = shape('existing-slab', 'old', [
      [-1, -3],
      [4, -3],
      [4, 1],
      [-1, 1],
    ]);
    const cut = jobOf([...plain.features, slab]);
    expect(rows(cut)[0]!.slice(0, 2)).toEqual(['R1', 'B']);
    // What is left of the front starts where the slab ends.
    expect(rows(cut).at(-1)!.slice(1, 2)).toEqual(['run start']);
    const other = shape('pad', 'walk', [
      [20, 0],
      [24, 0],
      [24, 10],
      [20, 10],
    ]);
    expect(new Set(rows(jobOf([...plain.features, other])).map((row) => row[1]))).toContain(
      'walk B',
    );
  });

  test('holds all of them, run by run, in order', () => {
    const { stakes, held } = takeoff(STAKE_JOBS.sample).stakes!;
    expect(rows(STAKE_JOBS.sample)).toHaveLength(stakes.length + held.length);
  });
});

test('curves are said, with how far the board may stand off', () => {
  const round = jobOf([
    shape('pad', 'pad', [
      [4, 0, 4],
      [-4, 0, 4],
    ]),
  ]);
  const note = takeoff(round).notes.find(({ code }) => code === 'stakes-on-curves')!;
  expect(note.facts!['flat']).toEqual({ of: 'length', grid: INCH / 2 });
});
