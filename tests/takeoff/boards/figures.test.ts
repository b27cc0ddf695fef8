import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/job/job.ts';
import { en } from '../../../src/sheet/words/en.ts';
import { sayQuantity, workingLines } from '../../../src/sheet/words/say.ts';
import { BOARD_FIGURE_KEYS } from '../../../src/takeoff/boards/keys.ts';
import type { BoardPlan, Proof } from '../../../src/takeoff/boards/plan.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { ticketOf } from '../../../src/takeoff/tickets.ts';
import { FOOT } from '../../../src/units/grid.ts';
import { BOARD_TROUBLES, boardJob, lumberOf, TWELVE_BY_TEN } from './boardJobs.ts';

function ticket(job: Job, proof?: Proof) {
  const first = takeoff(job);
  const { key, plan } = first.boards!;
  const searched: BoardPlan = proof ? { ...plan, proof } : plan;
  return ticketOf(job, takeoff(job, { boards: { key, plan: searched } }), 'forms');
}

function said(job: Job, proof?: Proof): Readonly<Record<string, string>> {
  return Object.fromEntries(
    ticket(job, proof).figures.map(({ key, value }) => [key, sayQuantity(en, value, job.units)]),
  );
}

function rows(job: Job, key: string): readonly string[] {
  const table = ticket(job).tables.find((one) => one.key === key);
  return (table?.rows ?? []).map((row) =>
    row.map((cell) => sayQuantity(en, cell, job.units)).join(' | '),
  );
}

/** Two 16s on the truck; the yard sells 12s and 14s. No splices, so each side is one piece. */
const job = boardJob(
  TWELVE_BY_TEN,
  lumberOf(
    [{ size: '2x4', length: 14 * FOOT, count: 2 }],
    [
      { size: '2x4', length: 14 * FOOT, price: 1149 },
      { size: '2x4', length: 12 * FOOT, price: 987 },
    ],
  ),
  { splices: false },
);

describe('twelve by ten, two 14s on the truck', () => {
  // The sides need 12'-1 1/2" twice and 10'-1 1/2" twice. A 14 or a 12 serves one of them, so four boards. The long
  // ones must come from 14s: those of the truck. The short ones from 12s, bought: run long by 2 ft they need
  // 12 ft at most 12'-0", so a 12 is used up with no cut; so is a 14 on 12 ft.
  test('figures', () => {
    expect(said(job)).toMatchObject({
      'boards-bought': '2 boards',
      'boards-money': '$19.74',
      'boards-from-truck': '2 boards',
      'board-cuts': '0 cuts',
      'board-splices': '0 splices',
      // 2 × 14 + 2 × 12 less 2 × 12'-1 1/2" + 2 × 10'-1 1/2".
      'boards-waste': '7\'-6"',
      'boards-proof': 'first answer',
    });
    expect(said(job)).not.toHaveProperty('board-cleats');
  });

  test('what to buy, with its sum', () => {
    expect(rows(job, 'board-buy')).toEqual(['12\'-0" | 2 | $9.87 | $19.74']);
  });

  test('the cut list has every piece, the runs say how they end', () => {
    expect(rows(job, 'board-cut-list')).toEqual([
      'A | truck | 14\'-0" | A1 | R1 | 14\'-0" | 0"',
      'B | truck | 14\'-0" | B1 | R3 | 14\'-0" | 0"',
      'C | yard | 12\'-0" | C1 | R2 | 12\'-0" | 0"',
      'D | yard | 12\'-0" | D1 | R4 | 12\'-0" | 0"',
    ]);
    expect(rows(job, 'board-runs')).toEqual([
      'R1 | butts | passes | 12\'-1 1/2" | A1',
      'R2 | butts | passes | 10\'-1 1/2" | C1',
      'R3 | butts | passes | 12\'-1 1/2" | B1',
      'R4 | butts | passes | 10\'-1 1/2" | D1',
    ]);
    expect(rows(job, 'board-rests')).toEqual([]);
  });
});

test('with room for no long boards they are cut, and the rests worth keeping listed', () => {
  const cut = { ...job.practices.boards, runLong: 0 };
  const short = { ...job, practices: { ...job.practices, boards: cut } };
  // 14'-0" − 12'-1 1/2" − 1/8" = 1'-10 3/8", 12'-0" − 10'-1 1/2" − 1/8" the same.
  expect(rows(short, 'board-rests')).toEqual(['A', 'B', 'C', 'D'].map((x) => `${x} | 1'-10 3/8"`));
  expect(said(short)['board-cuts']).toBe('4 cuts');
});

test('a spliced run has a cleat, and its pieces in order', () => {
  const spliced = BOARD_TROUBLES['boards-spliced']!;
  // 24 ft of 16s: two pieces on each long side.
  expect(said(spliced)).toMatchObject({ 'board-splices': '2 splices', 'board-cleats': '2 cleats' });
  expect(rows(spliced, 'board-runs')[0]).toMatch(
    /^R1 \| butts \| passes \| 24'-1 1\/2" \| \w+ \+ \w+$/,
  );
});

test('how sure the plan is', () => {
  expect(said(job, { is: 'proved', seconds: 2 })['boards-proof']).toBe('proved best');
  expect(said(job, { is: 'gap', of: 'price', bound: 1900, seconds: 20 })['boards-proof']).toBe(
    'not proved',
  );
  const lines = (proof: Proof) =>
    ticket(job, proof)
      .figures.filter(({ key }) => key === 'boards-proof')
      .flatMap(({ working }) => workingLines(en, working(), job.units))
      .join('\n');
  const money = lines({ is: 'gap', of: 'price', bound: 1900, seconds: 20 });
  expect(money).toContain('This plan has: $19.74');
  expect(money).toContain('No plan can have less than: $19.00');
  expect(lines({ is: 'gap', of: 'cuts', bound: 0, seconds: 20 })).toContain('less than: 0 cuts');
  expect(lines({ is: 'gap', of: 'splices', bound: 0, seconds: 20 })).toContain('0 splices');
  expect(lines({ is: 'gap', of: 'waste', bound: FOOT, seconds: 20 })).toContain('1\'-0"');
  expect(lines({ is: 'proved', seconds: 2 })).toContain('Search, seconds: 2');
});

test('between them, jobs have every figure of the boards', () => {
  const all = [job, ...Object.values(BOARD_TROUBLES)].flatMap((one) =>
    ticketOf(one, takeoff(one), 'forms').figures.map(({ key }) => key as string),
  );
  const unpriced = boardJob(TWELVE_BY_TEN, lumberOf([], [{ size: '2x4', length: 16 * FOOT }]));
  const more = ticketOf(unpriced, takeoff(unpriced), 'forms').figures.map(
    ({ key }) => key as string,
  );
  expect(BOARD_FIGURE_KEYS.filter((key) => ![...all, ...more].includes(key))).toEqual([]);
});
