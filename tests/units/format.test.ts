import { expect, test } from 'vitest';
import {
  formatAngle,
  formatArea,
  formatNumber,
  formatShare,
  formatVolume,
  formatWeight,
} from '../../src/units/format.ts';
import {
  CUBIC_FOOT,
  CUBIC_METRE,
  CUBIC_YARD,
  SQUARE_FOOT,
  SQUARE_METRE,
} from '../../src/units/grid.ts';

test('areas', () => {
  expect(formatArea(120 * SQUARE_FOOT, 'feet-inches')).toBe('120.0 ft²');
  expect(formatArea(120 * SQUARE_FOOT, 'metric')).toBe('11.15 m²');
  expect(formatArea(SQUARE_METRE, 'decimal-feet')).toBe('10.8 ft²');
  expect(formatArea(-0, 'metric')).toBe('0.00 m²');
  expect(formatArea(-1, 'metric')).toBe('0.00 m²');
});

test('the area of a 3 in pipe is small, not nothing', () => {
  expect(formatArea((Math.PI / 64) * SQUARE_FOOT, 'feet-inches')).toBe('0.049 ft²');
  expect(formatArea((Math.PI / 64) * SQUARE_FOOT, 'metric')).toBe('0.0046 m²');
});

test('volumes take the unit that suits their size, or the one asked for', () => {
  expect(formatVolume(40 * CUBIC_FOOT, 'feet-inches')).toBe('1.48 yd³');
  expect(formatVolume(40 * CUBIC_FOOT, 'feet-inches', 'cubic-foot')).toBe('40.00 ft³');
  expect(formatVolume(0.6 * CUBIC_FOOT, 'feet-inches')).toBe('0.60 ft³');
  expect(formatVolume(CUBIC_YARD, 'decimal-feet')).toBe('1.00 yd³');
  expect(formatVolume(1.5 * CUBIC_METRE, 'metric')).toBe('1.500 m³');
  expect(formatVolume(0.017 * CUBIC_METRE, 'metric')).toBe('17.00 L');
});

test('weights, shares, angles, numbers', () => {
  expect(formatWeight(36.2873896, 'feet-inches')).toBe('80 lb');
  expect(formatWeight(36.2873896, 'metric')).toBe('36.29 kg');
  expect(formatWeight(2140.95, 'feet-inches')).toBe('4720 lb');
  expect(formatShare(0.1)).toBe('10%');
  expect(formatShare(0.075)).toBe('7.5%');
  expect(formatAngle(90)).toBe('90°');
  expect(formatNumber(12)).toBe('12');
  expect(formatNumber(100)).toBe('100');
  expect(formatNumber(12.5)).toBe('12.5');
  expect(formatNumber(-0.001)).toBe('0');
  expect(formatNumber(1200, 0)).toBe('1200');
});
