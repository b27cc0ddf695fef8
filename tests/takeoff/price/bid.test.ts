import { describe, expect, test } from 'vitest';
import { bidSums } from '../../../src/takeoff/price/bid.ts';
import {
  added,
  shareOf,
  timesCount,
  upTo,
  wholeWithout,
} from '../../../src/takeoff/price/cents.ts';
import { MOST_MONEY } from '../../../src/units/money.ts';
import { chance } from '../../random/chance.ts';

const PLAIN = {
  overhead: 0,
  profitBy: 'markup',
  profit: 0,
  tax: 0,
  taxOn: 'none',
  step: 1,
} as const;

describe('cents', () => {
  test('a count times a price, half a cent up', () => {
    expect(timesCount(599, 61)).toBe(36_539);
    expect(timesCount(4_999, 2.5)).toBe(12_498);
    expect(timesCount(1, 0.5)).toBe(1);
    expect(timesCount(0, 1_000)).toBe(0);
  });

  test('exact where a plain product of numbers would not be', () => {
    expect(timesCount(8_999_999_999, 1.001)).toBe(9_008_999_999);
    expect(timesCount(3, 0.335)).toBe(1);
  });

  test('shares', () => {
    // 0.15 has no exact binary fraction: 15 % of 10.50 is 1.575, half a cent up.
    expect(shareOf(1_050, 0.15)).toBe(158);
    expect(shareOf(100, 1.5)).toBe(150);
    expect(wholeWithout(75_000, 0.25)).toBe(100_000);
  });

  test('what is more than any sum is none', () => {
    expect(timesCount(MOST_MONEY, 2)).toBeUndefined();
    expect(added([MOST_MONEY, 1])).toBeUndefined();
    expect(added([1, undefined])).toBeUndefined();
    expect(added([])).toBe(0);
  });

  test('up to a whole step', () => {
    expect([upTo(1_001, 500), upTo(1_000, 500), upTo(0, 500)]).toEqual([1_500, 1_000, 0]);
  });
});

describe('the bid', () => {
  test('markup: 25 % on 1,000 is 1,250', () => {
    const bid = bidSums(60_000, 40_000, { ...PLAIN, profit: 0.25 })!;
    expect([bid.profit, bid.price]).toEqual([25_000, 125_000]);
  });

  test('margin: 25 % of what it is sold for, so 1,000 becomes 1,333.33', () => {
    const bid = bidSums(60_000, 40_000, { ...PLAIN, profitBy: 'margin', profit: 0.25 })!;
    expect([bid.profit, bid.price]).toEqual([33_333, 133_333]);
    expect(bid.profit / bid.price).toBeCloseTo(0.25, 5);
  });

  test('all of it by hand: 842.17 and 1,260, 12 % overhead, 20 % margin, 7 % on materials, up to a whole 5', () => {
    const bid = bidSums(84_217, 126_000, {
      overhead: 0.12,
      profitBy: 'margin',
      profit: 0.2,
      tax: 0.07,
      taxOn: 'materials',
      step: 500,
    })!;
    // 2102.17 + 252.26 = 2354.43; ÷ 0.8 = 2943.04 (2943.0375); tax 58.95 (58.9519); 3001.99 up to 3005.
    expect(bid).toEqual({
      materials: 84_217,
      labour: 126_000,
      overhead: 25_226,
      profit: 58_861,
      tax: 5_895,
      rounding: 301,
      price: 300_500,
    });
  });

  test('tax on everything is on profit too', () => {
    const bid = bidSums(100_000, 0, { ...PLAIN, profit: 0.1, tax: 0.05, taxOn: 'all' })!;
    expect([bid.tax, bid.price]).toEqual([5_500, 115_500]);
  });

  test('a sum that is more than any written is no bid', () => {
    expect(bidSums(MOST_MONEY, 1, PLAIN)).toBeUndefined();
    expect(bidSums(MOST_MONEY, 0, { ...PLAIN, profit: 0.1 })).toBeUndefined();
  });

  test('random bids: the lines are whole cents and add up to the price, a whole step', () => {
    const draw = chance(271);
    for (let round = 0; round < 500; round++) {
      const step = draw.oneOf([1, 100, 500, 2_500]);
      const bid = bidSums(draw.whole(0, 5_000_000), draw.whole(0, 5_000_000), {
        overhead: draw.share(),
        profitBy: draw.oneOf(['margin', 'markup']),
        profit: draw.between(0, 0.9),
        tax: draw.between(0, 0.2),
        taxOn: draw.oneOf(['materials', 'all', 'none']),
        step,
      })!;
      const { price, ...lines } = bid;
      for (const line of Object.values(lines)) expect(Number.isSafeInteger(line)).toBe(true);
      expect(Object.values(lines).reduce((sum, one) => sum + one, 0)).toBe(price);
      expect(price % step).toBe(0);
      expect(bid.rounding).toBeLessThan(step);
    }
  });
});
