import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  evaporationBand,
  nomograph,
  POUND_PER_SQUARE_FOOT,
  paperSi,
  paperUs,
} from '../../src/takeoff/weather/evaporation.ts';
import { fromFahrenheit, MILE_KM } from '../../src/units/temperature.ts';
import { reference } from '../references/references.ts';

/** °F, %, mph, lb/ft²/h: both forms of the equation, reckoned elsewhere. */
const TABLE = join(import.meta.dirname, 'evaporationTable.csv');

const at = (concrete: number, air: number, humidity: number, mph: number) => ({
  concrete: fromFahrenheit(concrete),
  air: fromFahrenheit(air),
  humidity: humidity / 100,
  wind: mph * MILE_KM,
});
const pounds = (rate: number) => rate / POUND_PER_SQUARE_FOOT;

type Row = readonly [number, number, number, number, number, number];

function rowsOfTable(): readonly Row[] {
  const [, ...lines] = readFileSync(TABLE, 'utf8').trim().split('\n');
  return lines.map((line) => line.split(',').map(Number) as unknown as Row);
}

describe('the two forms of the published equation', () => {
  test('come to the table of both, to the digits shown', () => {
    const rows = rowsOfTable();
    expect(rows.length).toBe(120);
    for (const [air, concrete, humidity, wind, us, si] of rows) {
      const inputs = at(concrete, air, humidity, wind);
      // Three places are shown; those that end in a half may have been rounded either way.
      expect(Math.abs(pounds(paperUs(inputs)) - us)).toBeLessThanOrEqual(0.000501);
      expect(Math.abs(pounds(paperSi(inputs)) - si)).toBeLessThanOrEqual(0.000501);
    }
  });

  // 70 °F, 70 %, 10 mph by hand: (21.111 + 18)^2.5 = 9566; × 0.3 × (16.093 + 4) × 5e-6 = 0.2883 kg/m².
  test('a point worked by hand', () => {
    expect(reference('evaporation-paper-1998').says).toContain('(V+4)');
    expect(paperSi(at(70, 70, 70, 10))).toBeCloseTo(0.2883, 4);
  });
});

/** concrete, air °F, humidity %, mph; the published table; the two forms and the nomograph's equation, lb/ft²/h. */
const PUBLISHED = [
  [70, 70, 70, 0, 0.015, 0.0123, 0.0118, 0.0121],
  [70, 70, 70, 10, 0.062, 0.0615, 0.0591, 0.0581],
  [70, 70, 70, 25, 0.135, 0.1353, 0.13, 0.1272],
  [70, 70, 10, 10, 0.175, 0.1845, 0.1772, 0.1744],
  [50, 50, 70, 10, 0.026, 0.0265, 0.0256, 0.0285],
  [80, 80, 70, 10, 0.077, 0.0859, 0.0823, 0.0812],
  [100, 100, 70, 10, 0.18, 0.15, 0.1434, 0.152],
  [70, 80, 70, 10, 0, 0.0046, 0.0048, 0.0044],
  [70, 30, 70, 10, 0.165, 0.1877, 0.18, 0.1633],
  [60, 40, 100, 10, 0.075, 0.0888, 0.0851, 0.0719],
  [80, 70, 50, 10, 0.175, 0.1837, 0.176, 0.1737],
  [70, 40, 50, 10, 0.162, 0.1797, 0.1723, 0.1614],
  [70, 40, 50, 25, 0.357, 0.3953, 0.3793, 0.3529],
  [80, 40, 100, 10, 0.205, 0.2356, 0.2253, 0.2057],
  [90, 90, 10, 25, 0.74, 0.7607, 0.7287, 0.7336],
] as const;

test.each(PUBLISHED)(
  '%i/%i °F, %i %%, %i mph',
  (concrete, air, humidity, mph, table, us, si, psi) => {
    const inputs = at(concrete, air, humidity, mph);
    expect(reference('evaporation-nomograph').read).toBe('memory');
    expect(pounds(paperUs(inputs))).toBeCloseTo(us, 4);
    expect(pounds(paperSi(inputs))).toBeCloseTo(si, 4);
    expect(Math.abs(pounds(nomograph(inputs)) - psi)).toBeLessThan(0.0001);
    // The table is remembered, and the equations are models: within a quarter of it, or 0.01.
    const far = Math.max(0.25 * table, 0.01);
    for (const model of [paperUs, paperSi, nomograph]) {
      expect(Math.abs(pounds(model(inputs)) - table)).toBeLessThanOrEqual(far);
    }
  },
);

test('the band goes from the lowest equation to the highest, and 40 % beyond them', () => {
  expect(reference('evaporation-uncertainty-2020').says).toContain('40 %');
  const inputs = at(90, 90, 30, 10);
  const { low, high, least, most } = evaporationBand(inputs);
  const models = [paperSi, paperUs, nomograph].map((model) => model(inputs));
  expect([low, high]).toEqual([Math.min(...models), Math.max(...models)]);
  expect([least / low, most / high]).toEqual([expect.closeTo(0.6), expect.closeTo(1.4)]);
  // 90 °F, 30 %, 10 mph: 0.27 lb/ft²/h by the form in °F.
  expect(pounds(paperUs(inputs))).toBeCloseTo(0.269, 3);
});

test('never below nothing, however damp and warm the air', () => {
  expect(evaporationBand(at(40, 100, 100, 20))).toEqual({ low: 0, high: 0, least: 0, most: 0 });
});
