import { describe, expect, test } from 'vitest';
import { formatVolume, formatWeight } from '../../src/units/format.ts';
import { CUBIC_FOOT, CUBIC_METRE, CUBIC_YARD, POUND_KG } from '../../src/units/grid.ts';
import { parseNumber, parseShare, parseVolume, parseWeight } from '../../src/units/measure.ts';
import type { Result } from '../../src/units/result.ts';

function value(result: Result<number>) {
  return result.ok ? result.value : result.problems.map(({ code }) => code).join();
}

describe('volume', () => {
  test.each([
    ['0.60 ft³', 0.6 * CUBIC_FOOT],
    ['.6', 0.6 * CUBIC_FOOT],
    ['0,6 ft3', 0.6 * CUBIC_FOOT],
    ['1.2 cu ft', 1.2 * CUBIC_FOOT],
    ['2 yd³', 2 * CUBIC_YARD],
    ['17 L', 0.017 * CUBIC_METRE],
    ['0.5 m³', 0.5 * CUBIC_METRE],
    // 231 cubic inches to the US gallon, so 1728/231 gallons to the cubic foot.
    ['7.480519480519 gal', CUBIC_FOOT],
  ])('%s', (typed, grid3) => {
    expect((value(parseVolume(typed, 'feet-inches')) as number) / grid3).toBeCloseTo(1, 12);
  });

  test('a bare number is litres in metric', () => {
    expect((value(parseVolume('17', 'metric')) as number) / CUBIC_METRE).toBeCloseTo(0.017, 15);
  });

  test('comes back the same from how it is written', () => {
    for (const text of ['0.60 ft³', '0.38 ft³', '1.20 ft³', '2.35 yd³']) {
      expect(formatVolume(value(parseVolume(text, 'feet-inches')) as number, 'feet-inches')).toBe(
        text,
      );
    }
  });
});

describe('weight', () => {
  test('80 lb is 36.2873896 kg exactly (international pound)', () => {
    expect(value(parseWeight('80', 'feet-inches'))).toBe(36.2873896);
    expect(value(parseWeight('80 lb', 'metric'))).toBe(36.2873896);
    expect(formatWeight(80 * POUND_KG, 'feet-inches')).toBe('80 lb');
  });
  test('kilograms', () => {
    expect(value(parseWeight('25', 'metric'))).toBe(25);
    expect(value(parseWeight('25.5 kg', 'feet-inches'))).toBe(25.5);
  });
});

test('shares', () => {
  expect(value(parseShare('10%'))).toBe(0.1);
  expect(value(parseShare('10'))).toBe(0.1);
  expect(value(parseShare('7,5 %'))).toBe(0.075);
});

test('numbers', () => {
  expect(value(parseNumber('12.5'))).toBe(12.5);
  expect(value(parseNumber('-3'))).toBe(-3);
  expect(value(parseNumber('-0'))).toBe(0);
});

describe('refused', () => {
  test.each([
    [parseNumber(''), 'number-empty'],
    [parseNumber('12 kg'), 'number-unreadable'],
    [parseNumber('1,234'), 'number-comma'],
    [parseNumber('NaN'), 'number-unreadable'],
    [parseNumber('1e999'), 'number-unreadable'],
    [parseVolume('', 'metric'), 'volume-empty'],
    [parseVolume('3 bags', 'metric'), 'volume-unreadable'],
    [parseVolume('-', 'metric'), 'volume-unreadable'],
    [parseWeight('80 oz', 'metric'), 'weight-unreadable'],
    [parseShare('ten'), 'share-unreadable'],
    [parseShare('1,000'), 'share-comma'],
  ])('%#', (result, code) => {
    expect(value(result)).toBe(code);
  });
});
