import { expect, test } from 'vitest';
import { doubledArea } from '../../src/geometry/area.ts';
import type { Ring } from '../../src/geometry/point.ts';
import { doubledAreaWithin, isConvex } from '../../src/geometry/window.ts';
import { chance } from '../random/chance.ts';
import { doubledExactArea } from '../random/exactArea.ts';

function ring(...places: readonly (readonly [number, number])[]): Ring {
  return places.map(([x, y]) => ({ x, y }));
}
const square = ring([0, 0], [10, 0], [10, 10], [0, 10]);

test('convex or not', () => {
  expect(isConvex(square)).toBe(true);
  expect(isConvex(ring([0, 0], [5, 0], [10, 0], [10, 10], [0, 10]))).toBe(true);
  expect(isConvex(ring([0, 0], [10, 0], [10, 4], [4, 4], [4, 10], [0, 10]))).toBe(false);
  expect(isConvex(square.toReversed())).toBe(false);
  // Turns left all the way, but twice round.
  expect(isConvex(ring([0, 30], [-28, 9], [18, -24], [0, 31], [-18, -24], [28, 9]))).toBe(false);
});

test('inside, across, beside, touching', () => {
  expect(doubledAreaWithin(ring([2, 2], [4, 2], [4, 4], [2, 4]), square)).toBe(8);
  expect(doubledAreaWithin(square, ring([2, 2], [4, 2], [4, 4], [2, 4]))).toBe(8);
  expect(doubledAreaWithin(ring([5, 5], [15, 5], [15, 15], [5, 15]), square)).toBe(50);
  expect(doubledAreaWithin(ring([10, 0], [20, 0], [20, 10], [10, 10]), square)).toBe(0);
  expect(doubledAreaWithin(ring([11, 0], [20, 0], [20, 10], [11, 10]), square)).toBe(0);
});

test('an odd ring against a triangle, 500 times, as slab decomposition has it', () => {
  const draw = chance(3);
  for (let n = 0; n < 500; n++) {
    const corners = draw.whole(4, 12);
    const odd = Array.from({ length: corners }, (_, i) => {
      const angle = (2 * Math.PI * i) / corners;
      const reach = draw.between(200_000, 1_000_000);
      return { x: Math.round(reach * Math.cos(angle)), y: Math.round(reach * Math.sin(angle)) };
    });
    const at = () => ({ x: draw.whole(-9e5, 9e5), y: draw.whole(-9e5, 9e5) });
    const triangle = [at(), at(), at()];
    if (doubledArea(triangle) < 0) triangle.reverse();
    if (doubledArea(odd) <= 0 || !isConvex(triangle)) continue;
    const exact = doubledExactArea([odd, triangle], (windings) => windings.every((w) => w !== 0));
    expect(Math.abs(doubledAreaWithin(odd, triangle) - exact)).toBeLessThan(2);
  }
});
