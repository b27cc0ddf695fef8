import { expect, test } from 'vitest';
import { defaultPractices } from '../../src/job/defaults.ts';
import { rowCount } from '../../src/takeoff/steel/rows.ts';
import { lapShare, meshWeight, netCover } from '../../src/takeoff/steel/rules.ts';
import { wireUsed } from '../../src/takeoff/steel/styles.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT, INCH, POUND_KG, SQUARE_FOOT, SQUARE_METRE } from '../../src/units/grid.ts';
import { reference } from '../references/references.ts';
import { slab } from './slabs.ts';

test('a 5 ft roll lapped 6 in adds 4 1/2 ft a row: 11.1 percent, where the book says 10', () => {
  reference('estimating-book-mesh-lap');
  expect(netCover(5 * FOOT, 6 * INCH)).toBe(4.5 * FOOT);
  expect(lapShare(5 * FOOT, 6 * INCH)).toBeCloseTo(0.1111, 4);
  expect(lapShare(5 * FOOT, 4 * INCH)).toBeCloseTo(0.0714, 4);
  // A roll of 150 ft covers 675 ft² net.
  expect((netCover(5 * FOOT, 6 * INCH) * 150 * FOOT) / SQUARE_FOOT).toBe(675);
  // Ten such rows cover 45 ft and one lap; an inch more takes an eleventh.
  expect(rowCount(45 * FOOT + 6 * INCH, 5 * FOOT, 6 * INCH, 0)).toBe(10);
  expect(rowCount(45 * FOOT + 7 * INCH, 5 * FOOT, 6 * INCH, 0)).toBe(11);
});

test('the same through a sketch: a bay 50 ft wide takes 11 rows, not 10 and a tenth', () => {
  reference('estimating-book-mesh-lap');
  const job = slab(149, 50, 4);
  const { steel: own } = job.practices;
  const mesh = { ...own.mesh, lapSides: 6 * INCH, lapEnds: 6 * INCH, cover: 0 };
  const { steel } = takeoff({
    ...job,
    practices: { ...job.practices, steel: { ...own, mesh } },
    meshStock: {
      truck: [],
      yard: [{ id: 'm', form: 'roll', length: 150 * FOOT, width: 5 * FOOT }],
    },
  });
  expect(steel!.mesh!.plan.rows).toBe(11);
});

test.each([
  ['6x6-W1.4', 21],
  ['6x6-W2.0', 29],
  ['6x6-W2.9', 42],
  ['6x6-W4.0', 58],
  ['4x4-W1.4', 31],
  ['4x4-W2.0', 43],
  ['4x4-W2.9', 62],
  ['4x4-W4.0', 85],
])('%s weighs %i lb per 100 ft²', (_, pounds) => {
  reference('welded-wire-table-1975');
  const perSquareMetre = ((pounds * POUND_KG) / 100) * (SQUARE_METRE / SQUARE_FOOT);
  // A roll of 750 ft².
  const roll = meshWeight(750 * SQUARE_FOOT, perSquareMetre) / POUND_KG;
  expect(roll).toBeCloseTo(7.5 * pounds, 9);
});

test('the mesh that a job starts with is the one of 21 lb: a roll of 750 ft² weighs 157.5 lb', () => {
  reference('welded-wire-table-1975');
  expect(
    meshWeight(750 * SQUARE_FOOT, wireUsed(defaultPractices().steel.mesh).weight) / POUND_KG,
  ).toBeCloseTo(157.5, 9);
});
