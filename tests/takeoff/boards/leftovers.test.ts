import { expect, test } from 'vitest';
import { lumberProblems } from '../../../src/job/lumberProblems.ts';
import { leftovers } from '../../../src/takeoff/boards/leftovers.ts';
import type { BoardPlan, CutBoard } from '../../../src/takeoff/boards/plan.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { boardJob, lumberOf, TWELVE_BY_TEN } from './boardJobs.ts';

function cut(from: 'truck' | 'yard', stock: string, length: number, left: number): CutBoard {
  return { mark: 'A', stock, from, length: length * FOOT, pieces: [], cuts: 1, left };
}

function planOf(...boards: readonly CutBoard[]): BoardPlan {
  return { boards, cost: { price: 0, cuts: 0, splices: 0, waste: 0 }, proof: { is: 'first' } };
}

const job = boardJob(
  TWELVE_BY_TEN,
  lumberOf(
    [
      { size: '2x4', length: 16 * FOOT, count: 3 },
      { size: '2x4', length: 14 * FOOT, count: 1, twisted: true },
      { size: '2x6', length: 12 * FOOT, count: 5 },
      { size: '2x4', length: 2 * FOOT, count: 1 },
    ],
    [{ size: '2x4', length: 12 * FOOT, price: 700 }],
  ),
);

test('used boards are off the truck, rests from 16 in up are on it, alike ones in one row', () => {
  const plan = planOf(
    cut('truck', 't0', 16, 2 * FOOT),
    cut('truck', 't0', 16, 15 * INCH),
    cut('truck', 't1', 14, 3 * FOOT),
    cut('yard', 'y0', 12, 16 * INCH),
  );
  const truck = leftovers(job, plan);
  expect(
    truck.map(({ size, length, count, twisted }) => [size, length / FOOT, count, twisted]),
  ).toEqual([
    ['2x4', 16, 1, false],
    ['2x6', 12, 5, false],
    ['2x4', 2, 2, false],
    // What is left of a twisted board is twisted.
    ['2x4', 3, 1, true],
    ['2x4', 16 / 12, 1, false],
  ]);
  expect(lumberProblems({ ...job.lumber, truck })).toEqual([]);
});

test('a list of boards holds none under a foot, however short a piece may be', () => {
  const short = boardJob(TWELVE_BY_TEN, job.lumber, { shortest: 6 * INCH });
  const rest = (left: number) => leftovers(short, planOf(cut('yard', 'y0', 12, left))).length;
  expect(rest(11 * INCH)).toBe(job.lumber.truck.length);
  expect(rest(12 * INCH)).toBe(job.lumber.truck.length + 1);
});

test('nothing used, nothing changed', () => {
  expect(leftovers(job, planOf())).toEqual(job.lumber.truck);
});
