import { expect, test } from 'vitest';
import { MOST_BOARDS, withInYard, withOnTruck } from '../../src/job/boardLists.ts';
import type { Lumber } from '../../src/job/job.ts';
import { lumberProblems } from '../../src/job/lumberProblems.ts';
import { FOOT } from '../../src/units/grid.ts';

const board = { size: '2x4', length: 12 * FOOT, count: 2, twisted: false } as const;
const none: Lumber = { truck: [], yard: [] };

test('boards alike stand in one row, others in one of their own', () => {
  const more = [
    board,
    { ...board, twisted: true },
    { ...board, count: 3 },
    { ...board, length: 4 * FOOT },
  ];
  expect(withOnTruck(none, more).truck).toEqual([
    { id: 't1', ...board, count: 5 },
    { id: 't2', ...board, twisted: true },
    { id: 't3', ...board, length: 4 * FOOT },
  ]);
  expect(withOnTruck(none, [])).toBe(none);
});

test('a full row isn’t overfilled, and no id is given twice', () => {
  const full: Lumber = {
    truck: [{ id: 't1', ...board, count: MOST_BOARDS - 1 }],
    yard: [{ id: 't2', size: '2x4', length: 8 * FOOT }],
  };
  const next = withOnTruck(full, [board]);
  expect(next.truck.map(({ id, count }) => [id, count])).toEqual([
    ['t1', 999],
    ['t3', 2],
  ]);
  expect(lumberProblems(next)).toEqual([]);
});

test('a length listed at the yard gets the new price, or loses it', () => {
  const priced = withInYard(none, { size: '2x4', length: 8 * FOOT, price: 450 });
  expect(priced.yard).toEqual([{ id: 'y1', size: '2x4', length: 8 * FOOT, price: 450 }]);
  expect(withInYard(priced, { size: '2x4', length: 8 * FOOT }).yard).toEqual([
    { id: 'y1', size: '2x4', length: 8 * FOOT },
  ]);
  expect(withInYard(priced, { size: '2x6', length: 8 * FOOT }).yard).toHaveLength(2);
});
