import { expect, test } from 'vitest';
import { netPour } from '../../../src/takeoff/outline/netPour.ts';
import { longestWay } from '../../../src/takeoff/steel/longestWay.ts';
import { jobOf, type Places, shape } from '../outline/site.ts';

const TALL: Places = [
  [0, 0],
  [6, 0],
  [6, 20],
  [0, 20],
];

function way(places: Places, ...others: Parameters<typeof jobOf>[0]): number {
  return longestWay(netPour(jobOf([shape('pad', 'pad', places), ...others])).pour!, 508);
}

test('is along the longest side', () => {
  expect(way(TALL)).toBeCloseTo(Math.PI / 2, 9);
  expect(way(TALL.map(([x, y]) => [y, x] as const))).toBeCloseTo(0, 9);
});

//     +----+
//     |    +---- patio
//     |    |
//     +----+      three short edges of one side are longer than any other
test('a side goes on where only what it meets changes', () => {
  const slanted: Places = [
    [0, 0],
    [7, 0],
    [7, 20],
    [0, 8],
  ];
  const patio = shape('existing-slab', 'patio', [
    [7, 6],
    [12, 6],
    [12, 13],
    [7, 13],
  ]);
  expect(way(slanted, patio)).toBeCloseTo(Math.PI / 2, 9);
});

test('an arc is no side', () => {
  const bow: Places = [
    [0, 0],
    [6, 0],
    [6, 20, 1],
    [0, 20],
  ];
  expect(way(bow)).toBeCloseTo(Math.PI / 2, 9);
});
