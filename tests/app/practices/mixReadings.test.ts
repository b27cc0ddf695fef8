import { describe, expect, test } from 'vitest';
import {
  extraReading,
  minutesReading,
  partsReading,
  waterReading,
} from '../../../src/app/practices/mixReadings.ts';
import { CUBIC_FOOT, LITRE, QUART } from '../../../src/units/grid.ts';
import type { Result } from '../../../src/units/result.ts';

function read<T>({ parse }: { readonly parse: (text: string) => Result<T> }, text: string) {
  const result = parse(text);
  return result.ok ? result.value : result.problems.map(({ code }) => code).join();
}

describe('parts of a blend', () => {
  test.each([
    ['2', 2],
    ['1 1/2', 1.5],
    ['1.5', 1.5],
    ['3/4', 0.75],
    ['0.25', 0.25],
    [' 2 1/4 ', 2.25],
    ['0', 'out-of-range'],
    ['-1', 'out-of-range'],
    ['21', 'out-of-range'],
    ['1/3', 'not-quarters'],
    ['0.3', 'not-quarters'],
    ['1 1/8', 'not-quarters'],
    ['', 'number-unreadable'],
    ['two', 'number-unreadable'],
  ])('%j is %j', (text, value) => {
    expect(read(partsReading(1), text)).toBe(value);
  });
  test.each([0.25, 0.5, 0.75, 1, 1.5, 2.25, 17])('%f is read as it is written', (parts) => {
    const reading = partsReading(parts);
    expect(read(reading, reading.text)).toBe(parts);
  });
});

describe('water of a bag', () => {
  const us = waterReading(undefined, {}, 'feet-inches');
  test('a bare number is quarts, in metric litres; pints, gallons and litres as they are', () => {
    expect(read(us, '3')).toBe(Math.round(3 * QUART));
    expect(read(us, '6 pints')).toBe(Math.round(3 * QUART));
    expect(read(us, '0.75 gal')).toBe(Math.round(3 * QUART));
    expect(read(us, '2.8 L')).toBe(Math.round(2.8 * LITRE));
    expect(read(waterReading(undefined, {}, 'metric'), '2.8')).toBe(Math.round(2.8 * LITRE));
  });
  test('nothing typed is not known; the least no more than the most', () => {
    expect(us.text).toBe('');
    expect(read(us, ' ')).toBe(null);
    const least = waterReading(3 * QUART, { most: 4 * QUART }, 'feet-inches');
    expect(least.text).toBe('3 qt');
    expect(read(least, '5')).toBe('out-of-range');
    expect(read(us, '0')).toBe('out-of-range');
    expect(read(us, '-3')).toBe('out-of-range');
    expect(read(us, 'some')).toBe('volume-unreadable');
    expect(read(us, '1000 gal')).toBe('out-of-range');
  });
});

describe('minutes', () => {
  test.each([
    ['30', 30],
    ['30 min', 30],
    ['4 h', 240],
    ['4 h 30', 270],
    ['4:30', 270],
    ['1.5 h', 90],
    ['0', 'out-of-range'],
    ['2000', 'out-of-range'],
    ['soon', 'not-minutes'],
    ['1.234 h', 'not-minutes'],
  ])('%j is %j', (text, value) => {
    expect(read(minutesReading(60, 1, 1000), text)).toBe(value);
  });
  test.each([1, 59, 60, 61, 240, 270])('%i is read as it is written', (minutes) => {
    const reading = minutesReading(minutes, 1, 1000);
    expect(read(reading, reading.text)).toBe(minutes);
  });
});

test('an extra by hand', () => {
  const reading = extraReading(CUBIC_FOOT, 'feet-inches');
  expect(reading.text).toBe('1 ft³');
  expect(read(reading, '0.1 yd³')).toBeCloseTo(2.7 * CUBIC_FOOT, -2);
  expect(read(reading, '0')).toBe('out-of-range');
});
