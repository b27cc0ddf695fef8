import { expect, test } from 'vitest';
import { type BoardProblem, keyOf, type NoPlan } from '../../../src/takeoff/boards/plan.ts';
import { FOOT } from '../../../src/units/grid.ts';

const problem: BoardProblem = {
  size: '2x4',
  demands: [],
  stock: [{ id: 'y', from: 'yard', length: 8 * FOOT, price: 500 }],
  pricedBy: 'money',
  kerf: 0,
  shortest: FOOT,
  splices: true,
};

test('the same question has the same key, another has another', () => {
  expect(keyOf({ ...problem })).toBe(keyOf(problem));
  expect(keyOf({ ...problem, splices: false })).not.toBe(keyOf(problem));
});

test('why there is no plan is plain data', () => {
  const none: NoPlan = { is: 'run-too-long', run: 'R1', longest: 8 * FOOT };
  expect(JSON.parse(JSON.stringify(none))).toEqual(none);
});
