import { expect, test } from 'vitest';
import { barLaps } from '../../../src/takeoff/steel/barLaps.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import { slab, steeled } from './steelJobs.ts';

test('two bars of a line of 30 1/2 ft lie beside each other for 15 in, from where the first one ends', () => {
  const { bars } = takeoff(steeled(slab(31, 4), { kind: 'bars' })).steel!;
  const laps = barLaps(bars!);
  expect(laps).toHaveLength(bars!.cuts.laps);
  for (const { from, to } of laps) {
    // 3 in of cover, a bar of 20 ft, 15 in back.
    expect(from.x / FOOT).toBeCloseTo(0.25 + 20 - 1.25, 3);
    expect((to.x - from.x) / INCH).toBeCloseTo(15, 2);
    expect(to.y).toBeCloseTo(from.y, 6);
  }
});

test('how far apart rows are: the breadth inside the cover in as many gaps as the spacing asks for', () => {
  const { bars } = takeoff(steeled(slab(20, 12), { kind: 'bars' })).steel!;
  expect(bars!.ranges.map(({ way, rows }) => [way, rows])).toEqual([
    ['along', 9],
    ['across', 14],
  ]);
  // 11'-6" in 8 gaps and 19'-6" in 13, less 1/16 in at either edge.
  expect(bars!.ranges[0]!.apart / INCH).toBeCloseTo((138 - 1 / 8) / 8, 2);
  expect(bars!.ranges[1]!.apart / INCH).toBeCloseTo((234 - 1 / 8) / 13, 2);
});
