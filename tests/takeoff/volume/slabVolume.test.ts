import { expect, test } from 'vitest';
import type { BoardSize } from '../../../src/job/job.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { CUBIC_FOOT, INCH } from '../../../src/units/grid.ts';
import { jobOf, shape } from '../outline/site.ts';

const square = jobOf([
  shape('pad', 'pad', [
    [0, 0],
    [12, 0],
    [12, 10],
    [0, 10],
  ]),
]);

function poured(thickness: number, formBoard: BoardSize, gapUnderForm: number) {
  const practices = { ...square.practices, thickness, formBoard, gapUnderForm };
  return takeoff({ ...square, practices });
}

function note(result: ReturnType<typeof poured>, code: string) {
  return result.notes.find((one) => one.code === code);
}

test('net is area × thickness, whatever the form gives', () => {
  const { volume } = poured(4 * INCH, '2x6', 0);
  expect(volume!.net / CUBIC_FOOT).toBeCloseTo(40, 9);
  expect(volume!.formDepth).toBe(5.5 * INCH);
  expect(volume!.atFormDepth / CUBIC_FOOT).toBeCloseTo(55, 9);
});

test('a form of the same depth needs no caution', () => {
  const result = poured(4 * INCH, '2x4', INCH / 2);
  for (const code of ['form-deeper', 'form-shallower', 'nominal-depth']) {
    expect(note(result, code)).toBeUndefined();
  }
});

test('a deeper form says how much more concrete it takes', () => {
  const facts = note(poured(4 * INCH, '2x6', 0), 'form-deeper')!.facts!;
  const more = facts['difference']!;
  expect(more.of === 'volume' && more.grid3 / CUBIC_FOOT).toBeCloseTo(15, 9);
});

test('a 2x4 on the ground for four inches: five cubic feet less, and not as deep as it is called', () => {
  const result = poured(4 * INCH, '2x4', 0);
  const less = note(result, 'form-shallower')!.facts!['difference']!;
  expect(less.of === 'volume' && less.grid3 / CUBIC_FOOT).toBeCloseTo(5, 9);
  expect(note(result, 'nominal-depth')).toBeDefined();
  // Another thickness is no mistake of names, and with a gap the board isn't taken for the depth.
  expect(note(poured(5 * INCH, '2x4', 0), 'nominal-depth')).toBeUndefined();
  expect(note(poured(4 * INCH, '2x4', INCH), 'nominal-depth')).toBeUndefined();
  // At 3 1/2 in nobody takes the name for the depth.
  expect(note(poured(3.5 * INCH, '2x4', 0), 'nominal-depth')).toBeUndefined();
});

test('thinner than a published code asks: a caution, and no less concrete', () => {
  const thin = poured(3 * INCH, '2x4', 0);
  expect(note(thin, 'slab-thin')?.weight).toBe('caution');
  expect(thin.volume!.net / CUBIC_FOOT).toBeCloseTo(30, 9);
  expect(note(poured(3.5 * INCH, '2x4', 0), 'slab-thin')).toBeUndefined();
});

test('the ground is taken as flat: a quarter inch over 120 ft² is 2.5 ft³', () => {
  const more = note(poured(4 * INCH, '2x4', 0), 'flat-ground')!.facts!['more']!;
  expect(more.of === 'volume' && more.grid3 / CUBIC_FOOT).toBeCloseTo(2.5, 9);
});

test.each([0, -INCH, Number.NaN])('a thickness of %f: no volume, no bags, and why', (thickness) => {
  const result = poured(thickness, '2x4', 0);
  expect(result.volume).toBeUndefined();
  expect(result.mix).toBeUndefined();
  expect(note(result, 'thickness-zero')?.weight).toBe('stop');
  // What doesn't depend on it is there.
  expect(result.stakes).toBeDefined();
  expect(result.steel).toBeDefined();
});
