import { expect, test } from 'vitest';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { tickets } from '../../../src/takeoff/tickets.ts';
import { CUBIC_FOOT, INCH } from '../../../src/units/grid.ts';
import { tapedSlab } from '../mix/mixJobs.ts';

const CORNERS = [
  [3, 0, 0],
  [3, 10, 0],
  [5, 10, 10],
  [3, 0, 10],
] as const;

test('corners 3, 3, 3, 5 in on 10 × 10 ft: 3 1/2 in on the whole, 3.333 or 3.667 by the diagonal alone', () => {
  const { volume } = takeoff(tapedSlab(CORNERS));
  expect(volume!.ground!.mean / INCH).toBeCloseTo(3.5, 9);
  expect(volume!.ground!.twist!.low / INCH).toBeCloseTo(10 / 3, 9);
  expect(volume!.ground!.twist!.high / INCH).toBeCloseTo(11 / 3, 9);
  expect(volume!.net / CUBIC_FOOT).toBeCloseTo(100 * (3.5 / 12), 9);
});

test('a reading in the middle weighs as the half of the slab that is nearest to it', () => {
  const { volume } = takeoff(tapedSlab([...CORNERS, [4, 5, 5]]));
  const { readings, mean, weighed, twist } = volume!.ground!;
  expect(weighed).toBe('by-area');
  [0.125, 0.125, 0.125, 0.125, 0.5].forEach((part, i) => {
    expect(readings[i]!.weight).toBeCloseTo(part, 12);
  });
  expect(mean / INCH).toBeCloseTo(3.75, 9);
  expect(twist).toBeUndefined();
});

test('without places all weigh alike: mean and standard error of a sample', () => {
  // 4, 4 1/2, 3 1/2, 4 1/2, 4: mean 4.1, squares off it 0.01 + 0.16 + 0.36 + 0.16 + 0.01 = 0.7; √(0.7 ÷ 4) ÷ √5.
  const { volume, mix } = takeoff(tapedSlab([[4], [4.5, 3, 3], [3.5], [4.5], [4]]));
  const { ground } = volume!;
  expect(ground!.weighed).toBe('alike');
  expect(ground!.mean / INCH).toBeCloseTo(4.1, 9);
  expect(ground!.deviation / INCH).toBeCloseTo(0.41833, 5);
  expect(ground!.error / INCH).toBeCloseTo(0.18708, 5);
  // The spread of the allowance: 100 ft² of it.
  const spread = mix!.allowanceParts.find(({ part }) => part === 'spread')!;
  expect(spread.volume / CUBIC_FOOT).toBeCloseTo((100 * 0.18708) / 12, 3);
  // Twice of it at worst, and 2 percent spilled.
  expect((mix!.worst - mix!.net) / CUBIC_FOOT).toBeCloseTo(
    (2 * 100 * 0.18708) / 12 + (0.02 * mix!.net) / CUBIC_FOOT,
    2,
  );
});

test('the depth used is the one that is said everywhere', () => {
  const job = tapedSlab([[4.25], [4.5], [4], [4.5], [4.25]]);
  const result = takeoff(job);
  // 4.3 in.
  const used = Math.round(4.3 * INCH);
  expect(result.volume!.thickness).toBe(used);
  const figures = tickets(job, result).flatMap((ticket) => ticket.figures);
  expect(figures.find(({ key }) => key === 'thickness')!.value).toEqual({
    of: 'length',
    grid: used,
  });
  expect(result.notes.find(({ code }) => code === 'depth-from-readings')!.facts!['depth']).toEqual({
    of: 'length',
    grid: used,
  });
  // Figured with the thickness, the readings are told beside it.
  const beside = takeoff({ ...job, ground: { ...job.ground, depthBy: 'thickness' } });
  expect(beside.volume!.thickness).toBe(4 * INCH);
  expect(beside.notes.map(({ code }) => code)).toContain('readings-deeper');
});

test('readings outside the pour, all on one spot, or in a row: a mean all the same', () => {
  for (const readings of [
    [
      [4, 50, 50],
      [5, 60, 60],
      [4, 70, 70],
    ],
    [
      [4, 5, 5],
      [5, 5, 5],
      [4, 5, 5],
    ],
    [
      [4, 1, 5],
      [5, 4, 5],
      [4, 9, 5],
      [4, 6, 5],
    ],
  ] as const) {
    const { ground } = takeoff(tapedSlab(readings)).volume!;
    expect(ground!.mean).toBeGreaterThanOrEqual(4 * INCH);
    expect(ground!.mean).toBeLessThanOrEqual(5 * INCH);
    expect(ground!.error).toBeGreaterThanOrEqual(0);
    expect(ground!.twist).toBeUndefined();
  }
});

test('readings all alike are no nearer to the truth than a tape comes: 1/8 in over the root of three', () => {
  const { ground } = takeoff(tapedSlab([[4], [4], [4]])).volume!;
  expect(ground!.error / INCH).toBeCloseTo(0.125 / Math.sqrt(3), 9);
});
