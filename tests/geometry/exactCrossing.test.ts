import { expect, test } from 'vitest';
import type { LooseRing } from '../../src/geometry/engine.ts';
import { settledCorner } from '../../src/geometry/exactCrossing.ts';

const flat: LooseRing = [
  [0, 0],
  [10, 0],
  [10, 10],
];
const steep: LooseRing = [
  [3, -5],
  [4, 6],
  [-20, 30],
];

test('a whole place stays', () => {
  expect(settledCorner(7, 0, [])).toEqual([7, 0]);
});

test('a crossing is found again from its two edges, and rounded once', () => {
  // x = 3 + 5/11, on the first edge of each.
  expect(settledCorner(3.4545454545, 1e-9, [[flat], [steep]])).toEqual([3, 0]);
});

test('halves go away from the origin, on both sides of it, whatever the float says', () => {
  const up: LooseRing = [
    [2, -5],
    [3, 5],
    [40, 40],
  ];
  const down: LooseRing = [
    [-2, 5],
    [-3, -5],
    [-40, -40],
  ];
  const line: LooseRing = [
    [-10, 0],
    [10, 0],
    [0, -10],
  ];
  for (const error of [-1e-7, 0, 1e-7]) {
    expect(settledCorner(2.5 + error, 1e-9, [[line], [up]])).toEqual([3, 0]);
    expect(settledCorner(-2.5 + error, 1e-9, [[line], [down]])).toEqual([-3, 0]);
  }
});

test('with nothing that makes it, it is rounded as it is', () => {
  expect(settledCorner(3.2, 4.7, [[flat]])).toEqual([3, 5]);
});
