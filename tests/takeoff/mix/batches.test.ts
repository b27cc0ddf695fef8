import { expect, test } from 'vitest';
import { loads } from '../../../src/takeoff/mix/batches.ts';
import { CUBIC_FOOT } from '../../../src/units/grid.ts';

const BIG = { parts: 1, yield: 0.6 * CUBIC_FOOT };

function blend(main: number, other: number) {
  return [
    { ...BIG, parts: main },
    { parts: other, yield: 0.375 * CUBIC_FOOT },
  ] as const;
}

test.each([
  // bags, mixer (ft³): batches, full, last
  [59, 1.2, 30, 2, 1],
  [60, 1.2, 30, 2, 2],
  [59, 3, 12, 5, 4],
  [3, 9, 1, 15, 3],
  [4, 0.5, 6, 0.75, 0.25],
])(
  '%i bags through %f ft³: %i batches of %f, the last of %f',
  (bags, room, batches, full, last) => {
    const through = loads([bags], [BIG], room * CUBIC_FOOT)!;
    expect(through.batches).toBe(batches);
    expect(through.full).toEqual([full]);
    expect(through.last[0]).toBeCloseTo(last, 9);
    expect(through.partBags).toBe(full < 1);
  },
);

test('two mixes: whole sets in each batch', () => {
  expect(loads([30, 10], blend(3, 1), 2.175 * CUBIC_FOOT)).toEqual({
    batches: 10,
    full: [3, 1],
    last: [3, 1],
    partBags: false,
  });
  // 6 to 2 is the same set.
  expect(loads([30, 10], blend(6, 2), 4.4 * CUBIC_FOOT)).toMatchObject({
    batches: 5,
    full: [6, 2],
  });
});

test('a mixer too small for a set takes part of it, in the same parts', () => {
  expect(loads([30, 10], blend(3, 1), 1.2 * CUBIC_FOOT)).toMatchObject({
    batches: 20,
    full: [1.5, 0.5],
    partBags: true,
  });
});

test('a mixer that doesn’t hold a quarter of a set: none', () => {
  expect(loads([30, 10], blend(3, 1), 0.5 * CUBIC_FOOT)).toBeUndefined();
});

test('every bag goes through, and no batch is more than the mixer holds', () => {
  for (const [main, other] of [
    [3, 1],
    [1, 3],
    [5, 3],
    [2, 7],
  ] as const) {
    for (const room of [0.7, 1.2, 2.2, 3.5, 6]) {
      for (let bags = 1; bags < 60; bags++) {
        const first = Math.round((bags * main) / (main + other));
        const parts = blend(main, other);
        const through = loads([first, bags - first], parts, room * CUBIC_FOOT);
        if (!through) continue;
        const made = (load: readonly number[]) =>
          parts.reduce((sum, part, i) => sum + load[i]! * part.yield, 0) / CUBIC_FOOT;
        expect(made(through.full)).toBeLessThanOrEqual(room + 1e-6);
        expect(made(through.last)).toBeLessThanOrEqual(room + 1e-6);
        // The batches hold all: full ones up to the last, which is what is left or an even share of it.
        const [all, most] = [made([first, bags - first]), made(through.full)];
        expect(through.batches * most).toBeGreaterThanOrEqual(all - 2 * room);
      }
    }
  }
});
