import { expect, test } from 'vitest';
import type { Job } from '../../src/job/job.ts';
import { mix } from '../../src/takeoff/mix/mix.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { formatVolume } from '../../src/units/format.ts';
import {
  CUBIC_FOOT,
  CUBIC_METRE,
  CUBIC_YARD,
  FOOT,
  METRE,
  SQUARE_FOOT,
} from '../../src/units/grid.ts';
import { reference } from '../references/references.ts';
import {
  netCubicFeet,
  padThrough,
  practicesWith,
  slab,
  volumeOf,
  wasteByShare,
  withThickness,
} from './slabs.ts';

/** Net plus allowance in cubic feet at a waste share, with no least count of bags. */
function withWaste(netCubicFeetSum: number, share: number): number {
  const practices = practicesWith({ waste: wasteByShare(share) });
  const net = netCubicFeetSum * CUBIC_FOOT;
  const { figured } = mix(practices, volumeOf(net));
  return figured!.needed / CUBIC_FOOT;
}

test('a wall with a door and its footing: 256 1/2 + 33 3/4 = 290 1/4 ft³ = 10 3/4 yd³', () => {
  reference('farmers-bulletin-1279');
  // The wall lies on its side: 30 × 12 ft, 9 in thick, the door a block-out of 3 × 6 ft.
  const wall = slab(30, 12, 9);
  const door = padThrough([
    [10, 2],
    [13, 2],
    [13, 8],
    [10, 8],
  ]).features[0]!;
  if (door.kind !== 'pad') throw new Error();
  const withDoor: Job = {
    ...wall,
    features: [...wall.features, { ...door, id: 'd', kind: 'block-out' }],
  };
  const [net, footing] = [netCubicFeet(withDoor), netCubicFeet(slab(30, 1.5, 9))];
  expect(net).toBeCloseTo(256.5, 9);
  expect(footing).toBeCloseTo(33.75, 9);
  expect(formatVolume((net + footing) * CUBIC_FOOT, 'feet-inches', 'cubic-yard')).toBe('10.75 yd³');
});

test('a walk in two courses: 45 + 9 ft³', () => {
  reference('farmers-bulletin-1279');
  expect(netCubicFeet(slab(27, 4, 5))).toBeCloseTo(45, 9);
  expect(netCubicFeet(slab(27, 4, 1))).toBeCloseTo(9, 9);
});

test('a round floor 10 ft across, 6 in thick: 39.27 ft³ (the book takes pi as 22/7: 39 2/7)', () => {
  reference('farmers-bulletin-1279');
  // Two half circles: the rise of each is its radius.
  const half = padThrough([
    [0, 0],
    [10, 0],
  ]);
  const pad = half.features[0]!;
  if (pad.kind !== 'pad') throw new Error();
  const corners = pad.shape.corners.map((corner) => ({ ...corner, rise: 5 * FOOT }));
  const round = withThickness(
    { ...half, features: [{ ...pad, shape: { ...pad.shape, corners } }] },
    6,
  );
  const floor = netCubicFeet(round);
  expect(floor).toBeCloseTo(39.27, 3);
  expect(Math.abs(floor - 39 - 2 / 7) / floor).toBeLessThan(0.005);
});

test('the Navy’s estimate, its misprint mended: 527.40 ft³, 580.14 with 10 percent, 21.49 yd³ and not 21', () => {
  reference('navedtra-14070-estimate');
  const items = [
    slab(32, 0.67, 24),
    slab(32, 0.67, 24),
    slab(18.67, 0.67, 24),
    slab(18.67, 0.67, 24),
    slab(33.33, 2, 12),
    slab(33.33, 2, 12),
    slab(17.33, 2, 12),
    slab(17.33, 2, 12),
    slab(30.67, 18.67, 0.33 * 12),
  ].map(netCubicFeet);
  expect(items[4]! + items[5]!).toBeCloseTo(133.32, 2);
  const sum = items.reduce((a, b) => a + b, 0);
  expect(sum).toBeCloseTo(527.4, 1);
  const needed = withWaste(sum, 0.1);
  expect(needed).toBeCloseTo(580.14, 1);
  expect(formatVolume(needed * CUBIC_FOOT, 'feet-inches')).toBe('21.49 yd³');
});

test('four inches are 4/12 ft, not 0.33: 190.87 ft³', () => {
  reference('navedtra-14070-estimate');
  expect(netCubicFeet(slab(30.67, 18.67, 4))).toBeCloseTo(190.87, 2);
});

test('a grade beam 20 ft of 12 × 14 in: 23.33 ft³, 0.864 yd³, 0.933 with 8 percent', () => {
  reference('grade-beam-exercise');
  const beam = netCubicFeet(slab(20, 1, 14));
  expect(beam).toBeCloseTo(23.333, 3);
  expect((beam * CUBIC_FOOT) / CUBIC_YARD).toBeCloseTo(0.864, 3);
  expect((withWaste(beam, 0.08) * CUBIC_FOOT) / CUBIC_YARD).toBeCloseTo(0.933, 3);
});

test('a wall of 280 ft³ and a topping of 80 ft³', () => {
  reference('carpentry-textbook-concrete');
  expect(netCubicFeet(slab(48, 7, 10))).toBeCloseTo(280, 9);
  expect(netCubicFeet(slab(40, 24, 1))).toBeCloseTo(80, 9);
});

test('walks and slabs: 1.481 yd³ (a page prints 1.52), 366 ft² and 4.519 yd³ round a pool, 120 ft³', () => {
  reference('walk-volume-examples');
  const yards = (cubicFeet: number) => (cubicFeet * CUBIC_FOOT) / CUBIC_YARD;
  expect(yards(netCubicFeet(slab(30, 4, 4)))).toBeCloseTo(1.481, 3);
  expect(netCubicFeet(slab(20, 12, 6))).toBeCloseTo(120, 9);
  const deck = slab(41, 26, 4);
  const pool = padThrough([
    [3, 3],
    [38, 3],
    [38, 23],
    [3, 23],
  ]).features[0]!;
  if (pool.kind !== 'pad') throw new Error();
  const walk: Job = {
    ...deck,
    features: [...deck.features, { ...pool, id: 'q', kind: 'block-out' }],
  };
  expect(takeoff(walk).pour!.area / SQUARE_FOOT).toBeCloseTo(366, 9);
  expect(netCubicFeet(walk)).toBeCloseTo(122, 9);
  expect(yards(netCubicFeet(walk))).toBeCloseTo(4.519, 3);
});

test('a quarter ring of radii 20 and 15 ft: 137.44 ft², 1.697 yd³ at 4 in (not twice that)', () => {
  reference('quarter-ring-example');
  // Sagitta of a quarter circle: r (1 − cos 45°). The inner arc runs the other way round.
  const rise = (radius: number) => Math.round(radius * (1 - Math.SQRT1_2) * FOOT);
  const quarter = padThrough([
    [20, 0],
    [0, 20],
    [0, 15],
    [15, 0],
  ]);
  const pad = quarter.features[0]!;
  if (pad.kind !== 'pad') throw new Error();
  const rises = [rise(20), 0, -rise(15), 0];
  const corners = pad.shape.corners.map((corner, i) => ({ ...corner, rise: rises[i]! }));
  const ring: Job = { ...quarter, features: [{ ...pad, shape: { ...pad.shape, corners } }] };
  expect(takeoff(ring).pour!.area / SQUARE_FOOT).toBeCloseTo(137.44, 2);
  expect((netCubicFeet(ring) * CUBIC_FOOT) / CUBIC_YARD).toBeCloseTo(1.697, 3);
});

test('one cubic yard covers 81 ft² at 4 in and 162 ft² at 2 in', () => {
  reference('slab-shortcut');
  expect(netCubicFeet(slab(9, 9, 4))).toBeCloseTo(27, 9);
  expect(netCubicFeet(slab(18, 9, 2))).toBeCloseTo(27, 9);
});

test('units: 1 yd³ is 0.7646 m³, 1 ft³ 0.0283 m³, 1 ft 0.3048 m', () => {
  reference('conversion-factors-appendix');
  expect(CUBIC_YARD / CUBIC_METRE).toBeCloseTo(0.7646, 4);
  expect(CUBIC_FOOT / CUBIC_METRE).toBeCloseTo(0.0283, 4);
  expect(FOOT / METRE).toBe(0.3048);
});
