import { expect, test } from 'vitest';
import { arcOf } from '../../src/geometry/arc.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT, SQUARE_FOOT } from '../../src/units/grid.ts';
import { reference } from '../references/references.ts';
import { padThrough } from './slabs.ts';

/** Area of a pad through places in feet, divided by a scale so that it fits within a job's 200 m. */
function areaThrough(places: readonly (readonly [number, number])[], scale = 1): number {
  const fitted = places.map(([x, y]) => [x / scale, y / scale] as const);
  return (takeoff(padThrough(fitted)).pour!.area / SQUARE_FOOT) * scale * scale;
}

test('the diagonal of 35 × 40 ft is 53.151 ft (printed 53.1)', () => {
  reference('navedtra-14043-diagonal');
  // A right-angled pad: its third side is the diagonal.
  const { pour } = takeoff(
    padThrough([
      [0, 0],
      [40, 0],
      [0, 35],
    ]),
  );
  const longest = Math.max(...pour!.pieces[0]!.rings[0]!.edges.map(({ length }) => length));
  expect(longest / FOOT).toBeCloseTo(53.151, 3);
});

test('area by coordinates: 140,493.11 ft²', () => {
  reference('surveying-text-coordinate-area');
  const area = areaThrough([
    [1259.97, 406.31],
    [1489.47, 235.12],
    [1126.4, 65.81],
    [942.04, 317.89],
    [1282.54, 675.32],
  ]);
  expect(area).toBeCloseTo(140_493.11, 0);
});

test('a balanced traverse of five sides: 272,608 ft² (computed from its published corners)', () => {
  reference('purdue-traverse');
  const area = areaThrough(
    [
      [10000.0, 10000.0],
      [10125.66, 10255.96],
      [10716.31, 10102.44],
      [10523.62, 9408.37],
      [10517.55, 9611.34],
    ].map(([x, y]) => [x! - 10000, y! - 9400] as const),
    2,
  );
  expect(area).toBeCloseTo(272_608.13, 0);
});

test('a balanced traverse of six legs: 1,715,250.05 ft², as by double meridian distances', () => {
  reference('six-leg-traverse');
  const legs = [
    [491.8995, 45.7328],
    [587.6733, 609.1538],
    [-328.4036, 788.0003],
    [-1000.4252, 215.8168],
    [-125.7134, -1114.6225],
    [374.9694, -544.0812],
  ] as const;
  let [x, y] = [0, 0];
  const places = legs.map(([lat, dep]) => {
    const at = [x, y] as const;
    x += dep;
    y += lat;
    return at;
  });
  // Close again, as a balanced traverse must.
  expect(Math.abs(x)).toBeLessThan(1e-3);
  expect(Math.abs(y)).toBeLessThan(1e-3);
  // Scaled down to fit; the rounding of corners to the grid scales up with it.
  expect(areaThrough(places, 4)).toBeCloseTo(1_715_250.05, 0);
});

test('a curve of radius 200 over 20° has a chord of 69.46', () => {
  reference('circular-curve-20-degrees');
  // From the chord and the sagitta 3.0384 that go with it, the radius and the angle come back.
  const { radius, sweep } = arcOf(
    { x: 0, y: 0 },
    { x: Math.round(69.46 * FOOT), y: 0 },
    Math.round(3.0384 * FOOT),
  );
  expect(radius / FOOT).toBeCloseTo(200, 0);
  expect((sweep * 180) / Math.PI).toBeCloseTo(20, 2);
});
