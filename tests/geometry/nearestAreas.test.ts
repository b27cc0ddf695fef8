import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearestAreas } from '../../src/geometry/nearestAreas.ts';
import type { Point, Polygon } from '../../src/geometry/point.ts';

/** A U of 60 × 40 with a hole in its left leg. */
const U: Polygon = {
  outer: [
    { x: 0, y: 0 },
    { x: 60, y: 0 },
    { x: 60, y: 40 },
    { x: 40, y: 40 },
    { x: 40, y: 20 },
    { x: 20, y: 20 },
    { x: 20, y: 40 },
    { x: 0, y: 40 },
  ],
  holes: [
    [
      { x: 5, y: 5 },
      { x: 5, y: 15 },
      { x: 15, y: 15 },
      { x: 15, y: 5 },
    ],
  ],
};
const AREA = 60 * 40 - 20 * 20 - 10 * 10;

const places = fc.array(
  fc.record({ x: fc.integer({ min: -10, max: 70 }), y: fc.integer({ min: -10, max: 50 }) }),
  { minLength: 1, maxLength: 9 },
);

test('what is nearest to each of some places is all of it together', () => {
  fc.assert(
    fc.property(places, (some) => {
      const areas = nearestAreas([U], some);
      expect(areas.every((area) => area >= -1e-6)).toBe(true);
      expect(areas.reduce((sum, area) => sum + area, 0)).toBeCloseTo(AREA, 6);
    }),
    { seed: 5, numRuns: 300 },
  );
});

test('as counted square by square', () => {
  const some: readonly Point[] = [
    { x: 10, y: 35 },
    { x: 50, y: 30 },
    { x: 31, y: 4 },
  ];
  const counted = some.map(() => 0);
  const STEP = 0.25;
  for (let x = STEP / 2; x < 60; x += STEP) {
    for (let y = STEP / 2; y < 40; y += STEP) {
      if (!isIn({ x, y })) continue;
      const far = some.map((one) => Math.hypot(one.x - x, one.y - y));
      counted[far.indexOf(Math.min(...far))]! += STEP ** 2;
    }
  }
  nearestAreas([U], some).forEach((area, i) => {
    expect(Math.abs(area - counted[i]!)).toBeLessThan(8);
  });
});

function isIn({ x, y }: Point): boolean {
  const inLegs = x < 20 || x > 40 || y < 20;
  return inLegs && !(x > 5 && x < 15 && y > 5 && y < 15);
}
