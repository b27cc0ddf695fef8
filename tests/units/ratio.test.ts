import { expect, test } from 'vitest';
import { add, decimal, nearestWhole, ratio, times, toNumber } from '../../src/units/ratio.ts';

test('decimals are exact', () => {
  expect(decimal('12.25')).toEqual({ top: 1225n, bottom: 100n });
  expect(decimal('.5')).toEqual({ top: 5n, bottom: 10n });
  expect(decimal('12.')).toEqual({ top: 12n, bottom: 1n });
  // Where plain numbers would say 0.30000000000000004.
  expect(toNumber(add(decimal('0.1'), decimal('0.2')))).toBe(0.3);
});

test('rounded to the nearest, halves up, and says when it was', () => {
  expect(nearestWhole(ratio(5, 2))).toEqual({ whole: 3n, exact: false });
  expect(nearestWhole(ratio(7, 3))).toEqual({ whole: 2n, exact: false });
  expect(nearestWhole(times(ratio(7, 3), ratio(3)))).toEqual({ whole: 7n, exact: true });
});
