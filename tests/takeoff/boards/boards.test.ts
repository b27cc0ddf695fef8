import { describe, expect, test } from 'vitest';
import { checkPlan } from '../../../src/takeoff/boards/checkPlan.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FOOT } from '../../../src/units/grid.ts';
import { BOARD_TROUBLES, boardJob, lumberOf, TWELVE_BY_TEN } from './boardJobs.ts';

const SIXTEENS = lumberOf([{ size: '2x4', length: 16 * FOOT, count: 9 }]);

describe('what must be said of boards', () => {
  test.each(Object.entries(BOARD_TROUBLES))('%s', (code, job) => {
    const { boards, notes } = takeoff(job);
    const note = notes.find((one) => one.code === code);
    expect(note).toBeDefined();
    // With a stop there is no plan; with anything less there is one, and it is sound.
    expect(boards === undefined).toBe(note?.weight === 'stop');
    if (boards) expect(checkPlan(boards.problem, boards.plan)).toEqual([]);
  });
});

test('what the search found for this very problem is taken, and for another one left aside', () => {
  const job = boardJob(TWELVE_BY_TEN, SIXTEENS);
  const { key, plan } = takeoff(job).boards!;
  const proved = { ...plan, proof: { is: 'proved', seconds: 1 } } as const;
  expect(takeoff(job, { boards: { key, plan: proved } }).boards?.plan).toBe(proved);
  expect(takeoff(job, { boards: { key: `${key} `, plan: proved } }).boards?.plan).toEqual(plan);
});

test('twisted boards are no part of the plan unless they may be used', () => {
  const lumber = lumberOf([
    { size: '2x4', length: 16 * FOOT, count: 9, twisted: true },
    { size: '2x4', length: 14 * FOOT, count: 9 },
    { size: '2x6', length: 16 * FOOT, count: 9 },
  ]);
  const stock = (useTwisted: boolean) =>
    takeoff(boardJob(TWELVE_BY_TEN, lumber, { useTwisted })).boards?.problem.stock.map(
      ({ id }) => id,
    );
  expect(stock(false)).toEqual(['t1']);
  expect(stock(true)).toEqual(['t0', 't1']);
});

test('money only where the yard’s every price of that size is known', () => {
  const yard = [
    { size: '2x4', length: 14 * FOOT, price: 899 },
    { size: '2x4', length: 16 * FOOT, price: 1049 },
    { size: '2x6', length: 16 * FOOT },
  ] as const;
  const whole = { splices: false };
  const priced = takeoff(boardJob(TWELVE_BY_TEN, lumberOf([], yard), whole)).boards!;
  expect(priced.problem.pricedBy).toBe('money');
  // A board a side: 14 ft serve 12'-1 1/2" and 10'-1 1/2" alike, and none serves two.
  expect(priced.plan.cost.price).toBe(4 * 899);
  const { price: _, ...bare } = yard[1];
  const other = takeoff(boardJob(TWELVE_BY_TEN, lumberOf([], [yard[0], bare])));
  expect(other.boards?.problem.pricedBy).toBe('length');
  expect(other.boards?.problem.stock.map(({ price }) => price)).toEqual([14 * FOOT, 16 * FOOT]);
  expect(other.notes.some(({ code }) => code === 'boards-price-missing')).toBe(true);
});
