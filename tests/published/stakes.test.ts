import { expect, test } from 'vitest';
import { defaultPractices } from '../../src/job/defaults.ts';
import { stakePlaces } from '../../src/takeoff/stakes/rules.ts';
import { FOOT, INCH, POUND_KG } from '../../src/units/grid.ts';
import { reference } from '../references/references.ts';
import { spacings } from '../takeoff/spacings.ts';
import { staked } from '../takeoff/stakes/staked.ts';
import { slab } from './slabs.ts';

test.each([
  [28, 24, 15],
  [24, 14, 22],
])('supports on %i ft at %i in: %i', (feet, inches, count) => {
  reference('en5151-support-count');
  expect(stakePlaces(feet * FOOT, inches * INCH, 0, 0).count).toBe(count);
  // And through a sketch: two runs of that length, two of 1 ft with a stake at either end.
  const job = slab(feet, 1, 4);
  const practices = { ...spacings(inches * INCH), stakeFromEnd: 0 };
  const { byRun } = staked(job, practices).stakes!;
  expect(byRun.map((run) => run.count)).toEqual([count, 2, count, 2]);
});

test('stakes for 2x4 forms are no more than 3 ft apart unless somebody says so', () => {
  reference('stake-spacing-article');
  expect(defaultPractices().stakeSpacings['2x4']).toBe(3 * FOOT);
  const { byRun } = staked(slab(23, 11, 4)).stakes!;
  expect(Math.max(...byRun.map(({ gap }) => gap))).toBeLessThanOrEqual(3 * FOOT);
});

test.each([
  [2, 170],
  [2, 100],
  [3, 50],
])('%i nails a stake at %i in a pound', (nails, perPound) => {
  reference('nails-per-pound');
  const job = slab(10, 10, 4);
  const practices = {
    ...job.practices,
    fastening: {
      ...job.practices.fastening,
      nailsPerPound: perPound,
      perStake: nails,
      perCorner: 0,
    },
  };
  const { stakes, fastening } = staked(job, practices).stakes!;
  expect(fastening.weight! / POUND_KG).toBeCloseTo((nails * stakes.length) / perPound, 12);
});
