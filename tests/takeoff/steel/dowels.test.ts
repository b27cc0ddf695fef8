import { describe, expect, test } from 'vitest';
import { dowelsByThickness } from '../../../src/takeoff/steel/dowels.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { reference } from '../../references/references.ts';
import { jobOf, shape } from '../outline/site.ts';
import { steeled } from './steelJobs.ts';

test.each([
  [5, 5 / 8, 12],
  [6, 3 / 4, 14],
  [7, 7 / 8, 14],
  [8, 1, 14],
  [9, 9 / 8, 16],
  [10, 5 / 4, 16],
])('a slab of %i in: %f by %i in at 12 in', (thickness, diameter, length) => {
  reference('dowel-tables');
  expect(dowelsByThickness(thickness * INCH)).toEqual({
    diameter: diameter * INCH,
    length: length * INCH,
    spacing: 12 * INCH,
  });
});

test('thinner than the table, an eighth of the thickness by 18 in', () => {
  reference('dowel-tables');
  expect(dowelsByThickness(4 * INCH)).toEqual({
    diameter: INCH / 2,
    length: 18 * INCH,
    spacing: 12 * INCH,
  });
});

describe('into the old slab', () => {
  const site = jobOf([
    shape('pad', 'pad', [
      [0, 0],
      [10, 0],
      [10, 8],
      [0, 8],
    ]),
    shape('existing-slab', 'old', [
      [10, -2],
      [20, -2],
      [20, 12],
      [10, 12],
    ]),
  ]);
  const dowels = site.practices.steel.dowels;
  const on = takeoff(steeled(site, { dowels: { ...dowels, use: true } }));

  test('off until asked for, with the reasons each way', () => {
    const { steel, notes } = takeoff(site);
    expect(steel).not.toHaveProperty('dowels');
    expect(notes.map(({ code }) => code)).toContain('dowels-off');
  });

  test('8 ft less 6 in at either end, a foot apart: 8 dowels, on the edge, square to it', () => {
    const { places } = on.steel!.dowels!;
    expect(places).toHaveLength(8);
    for (const { at, outward } of places) {
      expect(at.x).toBe(10 * FOOT);
      expect(at.y).toBeGreaterThanOrEqual(6 * INCH);
      expect(at.y).toBeLessThanOrEqual(7.5 * FOOT);
      expect(outward).toBeCloseTo(0, 12);
    }
    const heights = places.map(({ at }) => at.y).sort((a, b) => a - b);
    heights.slice(1).forEach((y, i) => {
      expect(y - heights[i]!).toBeLessThanOrEqual(12 * INCH);
    });
    expect(on.notes.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['dowels-drill', 'dowels-epoxy']),
    );
  });

  test('stay when there is no other steel; an edge too short for one has none', () => {
    const alone = takeoff(steeled(site, { kind: 'none', dowels: { ...dowels, use: true } }));
    expect(alone.steel!.dowels!.places).toHaveLength(8);
    expect(alone.steel!.mesh).toBeUndefined();
    const far = { ...dowels, use: true, fromCorner: 5 * FOOT };
    expect(takeoff(steeled(site, { dowels: far })).steel!.dowels!.places).toEqual([]);
  });
});
