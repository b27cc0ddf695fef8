import { expect, test } from 'vitest';
import { girthOf } from '../../src/geometry/calipers.ts';
import type { Ring } from '../../src/geometry/point.ts';

const ring = (...places: readonly (readonly [number, number])[]): Ring =>
  places.map(([x, y]) => ({ x, y }));

test.each([
  ['a rectangle', ring([0, 0], [400, 0], [400, 300], [0, 300]), [400, 300, 300]],
  ['the same turned 3 4 5', ring([0, 0], [320, 240], [140, 480], [-180, 240]), [400, 300, 300]],
  [
    'an L is as its rectangle',
    ring([0, 0], [400, 0], [400, 100], [100, 100], [100, 300], [0, 300]),
    [400, 300, 300],
  ],
  // By its legs, of the three rectangles that have the same area; across, 300 × 400 ÷ 500.
  ['a right triangle', ring([0, 0], [400, 0], [0, 300]), [400, 300, 240]],
])('%s', (_, shape, [length, width, narrowest]) => {
  const found = girthOf(shape);
  expect(found.length).toBeCloseTo(length!, 6);
  expect(found.width).toBeCloseTo(width!, 6);
  expect(found.narrowest).toBeCloseTo(narrowest!, 6);
});
