import { describe, expect, test } from 'vitest';
import { formatMoney, MOST_MONEY, parseMoney } from '../../src/units/money.ts';

function read(typed: string, currency = '$') {
  const result = parseMoney(typed, currency);
  return result.ok ? result.value : result.problems.map(({ code }) => code).join();
}

describe('a price is read to the cent', () => {
  test.each([
    ['12.50', 1250],
    ['12.5', 1250],
    ['12', 1200],
    ['12.', 1200],
    ['.75', 75],
    ['$12.50', 1250],
    ['$ 12.50', 1250],
    ['12.50 $', 1250],
    ['12,50', 1250],
    ['12,5', 1250],
    ['0', 0],
    ['-0', 0],
    // 0.1 + 0.2 and the like: cents are read off the digits.
    ['1.10', 110],
    ['19.99', 1999],
    ['100000000', MOST_MONEY],
  ])('%s', (typed, cents) => {
    expect(read(typed)).toBe(cents);
  });

  test('a currency of letters, before or behind', () => {
    expect(read('kr 12.50', 'kr')).toBe(1250);
    expect(read('12.50 KR', 'kr')).toBe(1250);
    expect(read('12.50', '')).toBe(1250);
  });
});

describe('what is no price is refused', () => {
  test.each([
    ['', 'money-empty'],
    ['  ', 'money-empty'],
    ['$', 'money-unreadable'],
    ['-', 'money-unreadable'],
    ['twelve', 'money-unreadable'],
    ['12 50', 'money-unreadable'],
    ['€12', 'money-unreadable'],
    ['$12.50$', 'money-unreadable'],
    ['1e3', 'money-unreadable'],
    ['1,250', 'money-comma'],
    ['1,250.00', 'money-comma'],
    ['12.505', 'money-places'],
    ['0.001', 'money-places'],
    ['-5', 'money-range'],
    ['100000000.01', 'money-range'],
    ['9'.repeat(70), 'money-unreadable'],
  ])('“%s”', (typed, code) => {
    expect(read(typed)).toBe(code);
  });
});

test('is written with two places, and reads back as what it was', () => {
  expect(formatMoney(1250, '$')).toBe('$12.50');
  expect(formatMoney(5, '$')).toBe('$0.05');
  expect(formatMoney(0, '€')).toBe('€0.00');
  expect(formatMoney(123_456_789, 'kr')).toBe('kr 1234567.89');
  expect(formatMoney(-250, '$')).toBe('-$2.50');
  expect(formatMoney(700, '')).toBe('7.00');
  for (const currency of ['$', '€', 'kr', 'CA$', '']) {
    for (const cents of [0, 1, 99, 100, 12_345, MOST_MONEY]) {
      expect(read(formatMoney(cents, currency), currency)).toBe(cents);
    }
  }
});
