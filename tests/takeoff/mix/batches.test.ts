import fc from 'fast-check';
import { expect, test } from 'vitest';
import { loads, setOf } from '../../../src/takeoff/mix/batches.ts';
import { madeBy, type Step, splitBags } from '../../../src/takeoff/mix/blend.ts';
import { CUBIC_FOOT } from '../../../src/units/grid.ts';

const BIG = { parts: 1, yield: 0.6 * CUBIC_FOOT };

function blend(main: number, other: number) {
  return [
    { ...BIG, parts: main },
    { parts: other, yield: 0.375 * CUBIC_FOOT },
  ] as const;
}

test.each([
  // bags, mixer (ft³), step: batches, full, last
  [59, 1.2, 1, 30, 2, 1],
  [60, 1.2, 1, 30, 2, 2],
  [59, 3, 1, 12, 5, 4],
  [3, 9, 1, 1, 15, 3],
  // A mixer of a bag and a half, filled with whole bags and with halves.
  [7, 0.9, 1, 7, 1, 1],
  [7, 0.9, 0.5, 5, 1.5, 1],
  [2.5, 0.4, 0.5, 5, 0.5, 0.5],
] as const)(
  '%f bags through %f ft³ by %f: %i batches of %f, the last of %f',
  (bags, room, step, batches, full, last) => {
    expect(loads([bags], [BIG], room * CUBIC_FOOT, step)).toEqual({
      batches,
      full: [full],
      last: [last],
      mixed: [bags],
    });
  },
);

test('the fewest bags in the parts: 2 to 1 1/2 is 4 and 3 whole, 2 and 1 1/2 by halves', () => {
  expect(setOf(blend(2, 1.5), 1)).toEqual([4, 3]);
  expect(setOf(blend(2, 1.5), 0.5)).toEqual([2, 1.5]);
  expect(setOf(blend(6, 2), 1)).toEqual([3, 1]);
  expect(setOf([{ ...BIG, parts: 7 }], 0.5)).toEqual([0.5]);
});

test('two mixes: whole sets in each batch', () => {
  expect(loads([30, 10], blend(3, 1), 2.175 * CUBIC_FOOT)).toMatchObject({
    batches: 10,
    full: [3, 1],
    last: [3, 1],
  });
  // 6 to 2 is the same set.
  expect(loads([30, 10], blend(6, 2), 4.4 * CUBIC_FOOT)).toMatchObject({
    batches: 5,
    full: [6, 2],
  });
  // 2 to 1 1/2 makes 1.7625 ft³.
  expect(loads([20, 15], blend(2, 1.5), 1.7625 * CUBIC_FOOT, 0.5)).toMatchObject({
    batches: 10,
    full: [2, 1.5],
    last: [2, 1.5],
  });
});

test('a mixer that doesn’t hold one set: none', () => {
  expect(loads([30, 10], blend(3, 1), 2.17 * CUBIC_FOOT)).toBeUndefined();
  expect(loads([5], [BIG], 0.59 * CUBIC_FOOT)).toBeUndefined();
  expect(loads([5], [BIG], 0.3 * CUBIC_FOOT, 0.5)).toBeDefined();
});

test('a last batch has some of each mix', () => {
  // 10 bags at 3 to 1 are 8 and 2; after two batches of 3 and 1, two of the first would be left alone.
  expect(splitBags(10, blend(3, 1))).toEqual([8, 2]);
  expect(loads([8, 2], blend(3, 1), 2.2 * CUBIC_FOOT)).toEqual({
    batches: 3,
    full: [3, 1],
    last: [2, 1],
    mixed: [8, 3],
  });
});

test('every bag goes through, and no batch is more than the mixer holds', () => {
  const part = fc.integer({ min: 1, max: 24 }).map((quarters) => quarters / 4);
  fc.assert(
    fc.property(
      part,
      part,
      fc.constantFrom<Step>(1, 0.5),
      fc.integer({ min: 1, max: 400 }),
      fc.double({ min: 0.2, max: 9, noNaN: true }),
      (main, other, step, steps, room) => {
        const parts = blend(main, other);
        const bags = splitBags(steps * step, parts, step);
        const through = loads(bags, parts, room * CUBIC_FOOT, step);
        if (!through) {
          expect(madeBy(setOf(parts, step), parts)).toBeGreaterThan(room * CUBIC_FOOT - 320 ** 3);
          return;
        }
        const { batches, full, last, mixed } = through;
        expect(mixed).toEqual(full.map((each, i) => (batches - 1) * each + last[i]!));
        for (const load of [full, last]) {
          expect(madeBy(load, parts)).toBeLessThanOrEqual(room * CUBIC_FOOT + 320 ** 3);
          expect(load.every((each) => each > 0 && Number.isInteger(each / step))).toBe(true);
        }
        // A full batch has the parts exactly.
        expect(full[0]! * other).toBe(full[1]! * main);
        // Nothing is left out, and what is added fits in the last batch.
        mixed.forEach((each, i) => {
          expect(each).toBeGreaterThanOrEqual(bags[i]!);
        });
        expect(mixed[0]! + mixed[1]! - bags[0]! - bags[1]!).toBeLessThan(full[0]! + full[1]!);
      },
    ),
    { seed: 6, numRuns: 400 },
  );
});
