import { describe, expect, test } from 'vitest';
import { defaultPractices } from '../../src/job/defaults.ts';
import { BAR_SIZES, barOf } from '../../src/takeoff/steel/bars.ts';
import { dragArea, dragInputs } from '../../src/takeoff/steel/drag.ts';
import {
  MESH_STYLES,
  SQUARE_INCH_PER_FOOT,
  STEEL_DENSITY,
  wireOf,
  wireUsed,
} from '../../src/takeoff/steel/styles.ts';
import { FOOT, INCH, METRE, POUND_KG, SQUARE_FOOT, SQUARE_METRE } from '../../src/units/grid.ts';
import { reference } from '../references/references.ts';

const POUND_PER_100_SQUARE_FEET = (POUND_KG / 100) * (SQUARE_METRE / SQUARE_FOOT);

describe('mesh styles', () => {
  test.each([
    ['6x6-W1.4', 0.028, 21],
    ['6x6-W2.0', 0.04, 29],
    ['6x6-W2.9', 0.058, 42],
    ['6x6-W4.0', 0.08, 58],
    ['4x4-W1.4', 0.042, 31],
    ['4x4-W2.0', 0.06, 43],
    ['4x4-W2.9', 0.087, 62],
    ['4x4-W4.0', 0.12, 85],
  ] as const)('%s: %f in² to the foot each way, %i lb per 100 ft²', (style, area, pounds) => {
    reference('welded-wire-table-1975');
    const wire = wireOf(style);
    expect(wire.area / SQUARE_INCH_PER_FOOT).toBeCloseTo(area, 12);
    expect(wire.weight / POUND_PER_100_SQUARE_FEET).toBeCloseTo(pounds, 9);
  });

  test('each weighs what its wires weigh, to a pound: a roll 5 ft wide, wires an inch past the last ones', () => {
    for (const style of MESH_STYLES) {
      const { square, area, weight } = wireOf(style);
      const wires = (60 * INCH) / square + 1;
      // Along: so many wires over 5 ft. Across: one a square, each 5 ft 2 in long.
      const along = (area * wires * square) / (5 * FOOT);
      const across = (area * 62) / 60;
      const computed = ((along + across) / 1e6) * STEEL_DENSITY;
      expect(
        Math.abs(computed - weight) / POUND_PER_100_SQUARE_FEET,
        `${style}: ${computed / POUND_PER_100_SQUARE_FEET}`,
      ).toBeLessThan(1);
    }
  });

  test('8 gauge, 0.162 in, is W2.1; the tables call it W2.0', () => {
    expect(wireOf('6x6-W2.1').diameter / INCH).toBeCloseTo(0.1635, 3);
    expect((Math.PI / 4) * 0.162 ** 2 * 100).toBeCloseTo(2.06, 2);
    expect(wireOf('6x6-W2.0').diameter / INCH).toBeCloseTo(0.1596, 3);
  });

  test('one’s own: half the weight lies each way', () => {
    const { square, weight } = wireOf('6x6-W2.9');
    const own = wireUsed({
      style: 'own',
      own: { square, weight },
      lapEnds: 0,
      lapSides: 0,
      cover: 0,
      leastPiece: 0,
    });
    // The published weight counts overhangs too: within 5 percent.
    expect(own.area / wireOf('6x6-W2.9').area).toBeCloseTo(1.03, 1);
    expect(own.diameter / wireOf('6x6-W2.9').diameter).toBeCloseTo(1.01, 1);
  });
});

test.each([
  ['#3', 0.375, 0.11, 0.376],
  ['#4', 0.5, 0.2, 0.668],
  ['#5', 0.625, 0.31, 1.043],
  ['#6', 0.75, 0.44, 1.502],
  ['#7', 0.875, 0.6, 2.044],
  ['#8', 1, 0.79, 2.67],
] as const)('%s bar: %f in, %f in², %f lb/ft', (size, diameter, area, pounds) => {
  reference('rebar-sizes');
  const bar = barOf(size);
  expect(bar.diameter / INCH).toBe(diameter);
  expect(bar.area / 25.4 ** 2).toBeCloseTo(area, 12);
  expect((bar.weight / POUND_KG / METRE) * FOOT).toBeCloseTo(pounds, 12);
});

test('bars weigh 3.40 lb/ft a square inch: the table agrees with itself', () => {
  reference('rebar-sizes');
  for (const size of BAR_SIZES) {
    const { diameter, weight } = barOf(size);
    const exact = (Math.PI / 4) * (diameter / INCH) ** 2;
    expect((weight / POUND_KG / METRE) * FOOT).toBeCloseTo(3.4 * exact, 2);
  }
});

describe('subgrade drag, As = F L w ÷ (2 fs): 8 in slab of 100 psf, F 1.5, 24 ft between joints', () => {
  const PSI = (POUND_KG * 9.80665) / 0.0254 ** 2;
  const needed = (ksi: number) =>
    dragArea({
      friction: 1.5,
      length: 24 * 0.3048,
      weight: 100 * 144 ** -1 * PSI,
      stress: ((ksi * 1000 * 2) / 3) * PSI,
    }) / SQUARE_INCH_PER_FOOT;

  test('asks for 0.045 in² a foot of Grade 60, 0.042 of 65 ksi wire', () => {
    reference('subgrade-drag-note');
    expect(needed(60)).toBeCloseTo(0.045, 9);
    expect(needed(65)).toBeCloseTo(0.0415, 4);
    // #3 at 29 in.
    expect((barOf('#3').area / 25.4 ** 2) * (12 / 29)).toBeCloseTo(0.0455, 4);
  });

  test('6x6-W2.1 just meets the wire’s; W1.4 doesn’t', () => {
    reference('subgrade-drag-note');
    expect(wireOf('6x6-W2.1').area / SQUARE_INCH_PER_FOOT).toBeGreaterThan(needed(65));
    expect(wireOf('6x6-W1.4').area / SQUARE_INCH_PER_FOOT).toBeLessThan(needed(65));
  });

  test('a slab of 8 in by the practices weighs those 100 psf', () => {
    reference('subgrade-drag-note');
    const { weight } = dragInputs({ ...defaultPractices(), thickness: 8 * INCH });
    expect((weight / PSI) * 144).toBeCloseTo(100, 6);
  });
});
