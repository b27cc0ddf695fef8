import { expect, test } from 'vitest';
import { ORDINARY_SET } from '../../src/job/defaults.ts';
import type { BagMix } from '../../src/job/job.ts';
import { mix } from '../../src/takeoff/mix/mix.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { CUBIC_FOOT, POUND_KG } from '../../src/units/grid.ts';
import { reference } from '../references/references.ts';
import { practicesWith, slab, volumeOf, wasteByShare } from './slabs.ts';

/** Bags that a takeoff asks for so many cubic feet, nothing added. */
function bags(cubicFeet: number, pounds: number, makes: number): number {
  const bag: BagMix = {
    id: 'b',
    name: '',
    weight: pounds * POUND_KG,
    yield: makes * CUBIC_FOOT,
    set: ORDINARY_SET,
  };
  const practices = practicesWith({
    waste: wasteByShare(0),
    mix: {
      mixes: [bag],
      blend: { main: 'b', mainParts: 1, otherParts: 0 },
      batchVolume: 1.2 * CUBIC_FOOT,
      halfBags: false,
    },
  });
  const net = cubicFeet * CUBIC_FOOT;
  return mix(practices, volumeOf(net)).figured!.totalBags;
}

test.each([
  [40, 0.3, 90],
  [50, 0.375, 72],
  [60, 0.45, 60],
  [80, 0.6, 45],
])('a cubic yard is so many %i lb bags of %f ft³: %i', (pounds, makes, count) => {
  reference('bag-yields');
  expect(bags(27, pounds, makes)).toBe(count);
});

test.each([
  [27, 45],
  [26.9, 45],
  [26.4, 44],
  [27.01, 46],
])('%f ft³ of 0.60 ft³ bags: %i', (cubicFeet, count) => {
  reference('bag-yields');
  expect(bags(cubicFeet, 80, 0.6)).toBe(count);
});

test('the same through a sketch: 81 ft² at 4 in is 45 bags, and 46 when it is 1/16 in longer', () => {
  reference('bag-yields');
  const of = (longer: number) => {
    const job = slab(9 + longer / 192, 9, 4);
    const practices = { ...job.practices, waste: wasteByShare(0) };
    return takeoff({ ...job, practices }).mix!.totalBags;
  };
  expect(of(0)).toBe(45);
  expect(of(1)).toBe(46);
});

test('a bag of 80 lb is too much for one person', () => {
  reference('niosh-lifting');
  const codes = (job: ReturnType<typeof slab>) => takeoff(job).notes.map(({ code }) => code);
  const heavy = slab(10, 10, 4);
  expect(codes(heavy)).toContain('heavy-bags');
  const mixes = heavy.practices.mix.mixes.map((one) => ({ ...one, weight: 51 * POUND_KG }));
  const light = {
    ...heavy,
    practices: { ...heavy.practices, mix: { ...heavy.practices.mix, mixes } },
  };
  expect(codes(light)).not.toContain('heavy-bags');
});
