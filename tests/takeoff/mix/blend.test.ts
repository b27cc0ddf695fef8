import { describe, expect, test } from 'vitest';
import { fewestBags, madeBy, splitBags } from '../../../src/takeoff/mix/blend.ts';
import { CUBIC_FOOT } from '../../../src/units/grid.ts';

const BIG = { parts: 1, yield: 0.6 * CUBIC_FOOT };
const SMALL = { parts: 1, yield: 0.375 * CUBIC_FOOT };

function blend(main: number, other: number) {
  return [
    { ...BIG, parts: main },
    { ...SMALL, parts: other },
  ] as const;
}

describe('splitting bags by parts', () => {
  test.each([
    [4, 3, 1, [3, 1]],
    [5, 3, 1, [4, 1]],
    [6, 3, 1, [5, 1]],
    [7, 3, 1, [5, 2]],
    [8, 3, 1, [6, 2]],
    [1, 1, 1, [1, 0]],
    [0, 2, 1, [0, 0]],
  ])('%i bags, %i to %i: %o', (bags, main, other, split) => {
    expect(splitBags(bags, blend(main, other))).toEqual(split);
  });

  test('is never more than half a bag off the parts, and more bags never mean fewer of one', () => {
    for (const [main, other] of [
      [3, 1],
      [1, 3],
      [2, 5],
      [7, 4],
    ] as const) {
      let before = [0, 0] as readonly number[];
      for (let bags = 1; bags < 200; bags++) {
        const split = splitBags(bags, blend(main, other));
        expect(Math.abs(split[0]! - (bags * main) / (main + other))).toBeLessThanOrEqual(0.5);
        expect(split[0]! + split[1]!).toBe(bags);
        expect(split[0]!).toBeGreaterThanOrEqual(before[0]!);
        expect(split[1]!).toBeGreaterThanOrEqual(before[1]!);
        before = split;
      }
    }
  });
});

describe('the fewest bags', () => {
  test('make enough, and one bag fewer doesn’t', () => {
    for (let tenths = 1; tenths < 900; tenths += 7) {
      const needed = (tenths / 10) * CUBIC_FOOT;
      for (const parts of [blend(3, 1), blend(1, 2), [BIG] as const]) {
        const bags = fewestBags(needed, parts);
        const total = bags.reduce((a, b) => a + b, 0);
        expect(madeBy(bags, parts)).toBeGreaterThanOrEqual(needed - 1e9);
        expect(madeBy(splitBags(total - 1, parts), parts)).toBeLessThan(needed + 1e9);
      }
    }
  });

  test('whole multiples of a yield take no bag more, however the yield rounds as a fraction', () => {
    for (const yieldOf of [0.3, 0.375, 0.45, 0.5, 0.6, 2 / 3, 0.7]) {
      for (let count = 1; count < 400; count++) {
        const needed = count * yieldOf * CUBIC_FOOT;
        const bag = { parts: 1, yield: yieldOf * CUBIC_FOOT };
        expect(fewestBags(needed, [bag])).toEqual([count]);
        // And the other way of coming to the same volume.
        const summed = Array.from({ length: count }).reduce((sum: number) => sum + bag.yield, 0);
        expect(fewestBags(summed, [bag])).toEqual([count]);
      }
    }
  });
});
