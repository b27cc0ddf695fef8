import { describe, expect, test } from 'vitest';
import { TRIANGLE_FEET, TRIANGLE_METRIC } from '../../../src/takeoff/layout/rules.ts';
import { largest } from '../../../src/takeoff/layout/threeFourFive.ts';
import { FOOT, INCH, METRE, MILLIMETRE } from '../../../src/units/grid.ts';
import { reference } from '../../references/references.ts';
import { LEANING_IN, layout, padJob, TEN_BY_TWELVE } from './forms.ts';

function feet(next: number, before: number) {
  const found = largest(next * FOOT, before * FOOT, TRIANGLE_FEET);
  return found && [found.next / FOOT, found.before / FOOT, found.across / FOOT];
}

describe('3-4-5', () => {
  test('as large as fits, in whole feet', () => {
    expect(feet(10, 12)).toEqual([9, 12, 15]);
    expect(feet(12, 10)).toEqual([12, 9, 15]);
    expect(feet(3.9, 8)).toEqual([3, 4, 5]);
    expect(feet(100, 6)).toEqual([8, 6, 10]);
    reference('navedtra-14043-diagonal');
    // The rectangle of 35 × 40 ft takes 30-40-50.
    expect(feet(40, 35)).toEqual([40, 30, 50]);
  });

  test('short sides take 9-12-15 in and its multiples; shorter ones none', () => {
    expect(feet(2.5, 10)).toEqual([2.25, 3, 3.75]);
    expect(largest(9 * INCH, 12 * INCH, TRIANGLE_FEET)?.across).toBe(15 * INCH);
    expect(largest(9 * INCH, 12 * INCH - 1, TRIANGLE_FEET)).toBeUndefined();
    expect(largest(0, FOOT, TRIANGLE_FEET)).toBeUndefined();
  });

  test('metric: multiples of 300-400-500 mm', () => {
    reference('metric-set-out-triangle');
    const found = largest(3.1 * METRE, 3.9 * METRE, TRIANGLE_METRIC)!;
    expect([found.next, found.before, found.across].map((one) => one / MILLIMETRE)).toEqual([
      2700, 3600, 4500,
    ]);
  });

  test('is always a right triangle, within both sides, and no larger one fits', () => {
    for (let a = 1; a < 40; a += 0.7) {
      for (let b = 1; b < 40; b += 0.9) {
        const found = feet(a, b);
        if (!found) continue;
        const [next, before, across] = found as [number, number, number];
        expect(next ** 2 + before ** 2).toBe(across ** 2);
        expect(next <= a && before <= b).toBe(true);
        const larger = across >= 5 ? across + 5 : across + 1.25;
        const [three, four] = [larger * 0.6, larger * 0.8];
        expect((three <= a && four <= b) || (four <= a && three <= b)).toBe(false);
      }
    }
  });

  test('only at square corners', () => {
    const rectangle = layout(padJob(TEN_BY_TWELVE)).squares;
    expect(rectangle.map(({ corner }) => corner.letter)).toEqual(['A', 'B', 'C', 'D']);
    expect(layout(padJob(LEANING_IN)).squares).toEqual([]);
    const curved = layout(
      padJob([
        [0, 0, 2],
        [10, 0],
        [10, 12],
        [0, 12],
      ]),
    ).squares;
    expect(curved.map(({ corner }) => corner.letter)).toEqual(['C', 'D']);
  });
});
