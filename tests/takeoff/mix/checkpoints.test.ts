import { expect, test } from 'vitest';
import type { Job } from '../../../src/job/job.ts';
import { checkpoints } from '../../../src/takeoff/mix/checkpoints.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FOOT, INCH, SQUARE_FOOT } from '../../../src/units/grid.ts';
import { slab } from '../../published/slabs.ts';

function pointsOf(job: Job) {
  const { pour, volume, mix, joints } = takeoff(job);
  return { mix: mix!, points: checkpoints(job.practices, pour!, volume!, mix!, joints?.layout) };
}

test('a slab without joints: by quarters, up to what the net alone takes', () => {
  // 8 × 9 ft, 4 in: 24 ft³, 40 bags of 0.6.
  const { points, mix } = pointsOf(slab(9, 8, 4));
  expect(mix.expectedBags).toBe(40);
  expect(
    points.map(({ placed, bags, bagsSoFar, batchesSoFar }) => [
      placed,
      bags,
      bagsSoFar,
      Math.round(batchesSoFar!),
    ]),
  ).toEqual([
    [{ share: 0.25 }, 10, 10, 5],
    [{ share: 0.5 }, 10, 20, 10],
    [{ share: 0.75 }, 10, 30, 15],
    [{ share: 1 }, 10, 40, 20],
  ]);
});

test('panel by panel, in the order of their marks, in half bags that add up', () => {
  const { points, mix } = pointsOf(slab(30, 4, 4));
  expect(points.length).toBeGreaterThan(2);
  expect(points.map(({ placed }) => placed)).toEqual(
    points.map((_, i) => ({ panel: `P${i + 1}` })),
  );
  expect(points.at(-1)!.bagsSoFar).toBe(mix.expectedBags);
  expect(points.reduce((sum, { bags }) => sum + bags, 0)).toBe(mix.expectedBags);
  expect(points.reduce((sum, { area }) => sum + area, 0) / SQUARE_FOOT).toBeCloseTo(120, 6);
});

test('a thickened edge is counted where it lies', () => {
  const plain = slab(30, 10, 4);
  const job: Job = {
    ...plain,
    practices: {
      ...plain.practices,
      joints: { ...plain.practices.joints, layout: 'by-hand' },
      thickenedEdge: { use: true, depth: 12 * INCH, width: FOOT, taper: 0 },
    },
    features: [
      ...plain.features,
      ...[10, 20].map((x, i) => ({
        id: `j${i}`,
        name: '',
        kind: 'joint' as const,
        joint: 'control' as const,
        shape: {
          form: 'outline' as const,
          closed: false,
          corners: [0, 10].map((y, at) => ({
            id: `k${i}${at}`,
            x: x * FOOT,
            y: y * FOOT,
            rise: 0,
          })),
        },
      })),
    ],
  };
  const { points, mix } = pointsOf(job);
  // The ends have edges on three sides (28 ft² of trench), the middle on two (20): 100 · 4/12 + 28 · 8/12, and + 20 · 8/12.
  const [end, middle] = [100 / 3 + (28 * 2) / 3, 100 / 3 + (20 * 2) / 3];
  const share = end / (2 * end + middle);
  expect(points).toHaveLength(3);
  expect(points[0]!.bagsSoFar).toBe(Math.round(2 * share * mix.expectedBags) / 2);
  expect(points[1]!.bags).toBeLessThan(points[0]!.bags);
});
