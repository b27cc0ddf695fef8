import { expect, test } from 'vitest';
import { edgeFaults, moveFaults } from './check.ts';

const SEEDS = 20_000;

/** Seeds that once failed, by what was wrong with them. */
const PINNED: Readonly<Record<string, number>> = {
  'a line parallel to the edge, beyond reach, was taken for the edge itself': 475,
  'a wedge between patio and pad, closed at one end': 17,
  'a patch in a slab that steps stand on': 34,
  'joining across two sources dropped a true corner': 175,
};
const PINNED_MOVES: Readonly<Record<string, number>> = {
  'halves of a circle that goes through the clipper rounded apart': 582,
  'a crossing at a slight angle rounded to another place when turned': 4262,
  'a corner in a straight line stayed or went with float error': 3825,
};

test.each(Object.entries(PINNED))('%s', (_, seed) => {
  expect(edgeFaults(seed)).toEqual([]);
});

test.each(Object.entries(PINNED_MOVES))('%s', (_, seed) => {
  expect(moveFaults(seed)).toEqual([]);
});

test('20,000 random slab jobs: every edge knows what it meets, and lengths add up', {
  timeout: 240_000,
}, () => {
  const failed: string[] = [];
  for (let seed = 1; seed <= SEEDS; seed++) {
    const faults = edgeFaults(seed);
    if (faults.length > 0) failed.push(`seed ${seed}: ${faults.join('; ')}`);
  }
  expect(failed).toEqual([]);
});

test('2,000 random slab jobs: shifting and quarter turns change nothing', {
  timeout: 120_000,
}, () => {
  const failed: string[] = [];
  for (let seed = 1; seed <= 2_000; seed++) {
    const faults = moveFaults(seed);
    if (faults.length > 0) failed.push(`seed ${seed}: ${faults.join('; ')}`);
  }
  expect(failed).toEqual([]);
});
