import { expect, test } from 'vitest';
import { DRESSED, formDepth, nominalDepth } from '../../src/takeoff/forms/rules.ts';
import { INCH } from '../../src/units/grid.ts';
import { reference } from '../references/references.ts';
import { figure, netCubicFeet, slab } from './slabs.ts';

test.each([
  ['1x4', 0.75, 3.5],
  ['1x6', 0.75, 5.5],
  ['2x4', 1.5, 3.5],
  ['2x6', 1.5, 5.5],
  ['2x8', 1.5, 7.25],
  ['2x10', 1.5, 9.25],
  ['2x12', 1.5, 11.25],
] as const)('a dry %s is %f × %f in', (board, thickness, depth) => {
  reference('ps-20-lumber-sizes');
  expect(DRESSED[board]).toEqual({ thickness: thickness * INCH, depth: depth * INCH });
});

test.each([
  ['2x4', 5.25, 5.89],
  ['2x6', 8.25, 8.93],
  ['2x8', 10.875, 12.19],
] as const)('a %s has the area of today’s size, %f in², and not %f', (board, today, obsolete) => {
  reference('lumber-areas');
  reference('obsolete-lumber-sizes');
  const { thickness, depth } = DRESSED[board];
  const area = (thickness * depth) / INCH ** 2;
  expect(area).toBe(today);
  expect(Math.abs(area - obsolete)).toBeGreaterThan(0.5);
});

test('a 2x4 on the ground gives 3 1/2 in, one eighth less concrete than its name', () => {
  reference('ps-20-lumber-sizes');
  expect(nominalDepth('2x4')).toBe(4 * INCH);
  expect(formDepth('2x4', 0)).toBe(3.5 * INCH);
  expect(formDepth('2x4', INCH / 2)).toBe(4 * INCH);
  const job = slab(12, 10, 4);
  const flat = { ...job, practices: { ...job.practices, gapUnderForm: 0 } };
  const given = figure(flat, 'form-depth-volume');
  if (given.of !== 'volume') throw new Error();
  expect(given.grid3 / (netCubicFeet(flat) * 97_536 ** 3)).toBeCloseTo(0.875, 12);
});
