import { expect, test } from 'vitest';
import { distanceToEdge, distanceToRing, locate, turn } from '../../src/geometry/locate.ts';
import type { Ring } from '../../src/geometry/point.ts';

const L: Ring = [
  [0, 0],
  [10, 0],
  [10, 4],
  [4, 4],
  [4, 10],
  [0, 10],
].map(([x, y]) => ({ x: x!, y: y! }));

test.each([
  [2, 2, 'inside'],
  [2, 9, 'inside'],
  [9, 2, 'inside'],
  [5, 5, 'outside'],
  [-1, 0, 'outside'],
  [11, 4, 'outside'],
  [5, 10, 'outside'],
  [0, 0, 'on'],
  [10, 4, 'on'],
  [4, 4, 'on'],
  [7, 4, 'on'],
  [4, 7, 'on'],
  [0, 5, 'on'],
  [7, 0, 'on'],
] as const)('(%i, %i) is %s, whichever way the ring runs', (x, y, where) => {
  expect(locate({ x, y }, L)).toBe(where);
  expect(locate({ x, y }, L.toReversed())).toBe(where);
});

test('exact one unit off a line 64 million long', () => {
  const far = 64_000_000;
  const wedge = [
    { x: 0, y: 0 },
    { x: far, y: 0 },
    { x: far, y: far - 1 },
  ];
  expect(locate({ x: far / 2, y: far / 2 }, wedge)).toBe('outside');
  expect(locate({ x: far / 2, y: far / 2 - 1 }, wedge)).toBe('inside');
  expect(turn(wedge[0]!, wedge[2]!, { x: far / 2, y: far / 2 })).toBe(far / 2);
});

test('distances', () => {
  expect(distanceToEdge({ x: 3, y: 4 }, { x: 0, y: 0 }, { x: 10, y: 0 })).toBe(4);
  expect(distanceToEdge({ x: -3, y: 4 }, { x: 0, y: 0 }, { x: 10, y: 0 })).toBe(5);
  expect(distanceToEdge({ x: 3, y: 4 }, { x: 0, y: 0 }, { x: 0, y: 0 })).toBe(5);
  expect(distanceToRing({ x: 6, y: 7 }, L)).toBe(2);
});
