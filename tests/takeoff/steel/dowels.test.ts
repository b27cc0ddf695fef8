import { describe, expect, test } from 'vitest';
import {
  type DowelSeam,
  dowelSeams,
  dowelsByThickness,
} from '../../../src/takeoff/steel/dowels.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { ticketOf } from '../../../src/takeoff/tickets.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { reference } from '../../references/references.ts';
import { jobOf, shape } from '../outline/site.ts';
import { STEEL_TROUBLES, steeled } from './steelJobs.ts';

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
    const { seams } = on.steel!.dowels!;
    expect(seams.map(({ mark }) => mark)).toEqual(['D1']);
    const [{ holes, outward, length }] = seams as [DowelSeam];
    expect(holes).toHaveLength(8);
    expect(outward).toBeCloseTo(0, 12);
    expect(length).toBe(8 * FOOT);
    for (const { at } of holes) {
      expect(at.x).toBe(10 * FOOT);
      expect(at.y).toBeGreaterThanOrEqual(6 * INCH);
      expect(at.y).toBeLessThanOrEqual(7.5 * FOOT);
    }
    const heights = holes.map(({ at }) => at.y).sort((a, b) => a - b);
    heights.slice(1).forEach((y, i) => {
      expect(y - heights[i]!).toBeLessThanOrEqual(12 * INCH);
    });
    expect(on.notes.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['dowels-drill', 'dowels-epoxy']),
    );
  });

  test('stay when there is no other steel; an edge too short for one has none', () => {
    const alone = takeoff(steeled(site, { kind: 'none', dowels: { ...dowels, use: true } }));
    expect(alone.steel!.dowels!.seams[0]!.holes).toHaveLength(8);
    expect(alone.steel!.mesh).toBeUndefined();
    const far = { ...dowels, use: true, fromCorner: 5 * FOOT };
    expect(takeoff(steeled(site, { dowels: far })).steel!.dowels!.seams).toEqual([]);
  });

  test('the table gives every hole by its distance from where its seam starts', () => {
    const { tables } = ticketOf(site, on, 'steel');
    const { rows } = tables.find(({ key }) => key === 'dowel-holes')!;
    expect(rows).toHaveLength(8);
    // 7 ft in 7 gaps, from 6 in on.
    rows.forEach(([, , along], i) => {
      expect(along).toMatchObject({ of: 'length', grid: (0.5 + i) * FOOT });
    });
  });

  test('kept from the ends of joints as from corners; an end elsewhere changes nothing', () => {
    const pour = on.pour!;
    const rule = { spacing: FOOT, fromEnds: 6 * INCH, closeness: INCH / 16, jointEnds: [] };
    const alongs = (jointEnds: readonly { x: number; y: number }[]) =>
      dowelSeams(pour, { ...rule, jointEnds })[0]!.holes.map(({ along }) => along / INCH);
    // From 0 to 40 in and from 40 to 96 in, 6 in clear at every end: 28 in in 3 gaps, 44 in in 4.
    const joined = alongs([{ x: 10 * FOOT, y: 40 * INCH }]);
    expect(joined.map((one) => Math.round(one * 10) / 10)).toEqual([
      6, 15.3, 24.7, 34, 46, 57, 68, 79, 90,
    ]);
    expect(alongs([{ x: 5 * FOOT, y: 40 * INCH }])).toEqual(alongs([]));
    // Two joints a foot apart leave no room for more than one between them.
    const near = alongs([
      { x: 10 * FOOT, y: 40 * INCH },
      { x: 10 * FOOT, y: 52 * INCH },
    ]);
    expect(near).toContain(46);
    for (const one of near) {
      for (const stop of [0, 40, 52, 96]) expect(Math.abs(one - stop)).toBeGreaterThan(6 - 1e-4);
    }
  });
});

test('dowels that meet in the corner of an old slab are told of, and where', () => {
  const note = takeoff(STEEL_TROUBLES['dowels-meet']!).notes.find(
    ({ code }) => code === 'dowels-meet',
  );
  // 6 in from the corner on either side, 8 in deep.
  expect(note?.at).toHaveLength(1);
  const apart = takeoff(STEEL_TROUBLES['dowels-drill']!).notes.map(({ code }) => code);
  expect(apart).not.toContain('dowels-meet');
});
