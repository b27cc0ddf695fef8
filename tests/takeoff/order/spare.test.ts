import { describe, expect, test } from 'vitest';
import { normalShare, studentShare } from '../../../src/takeoff/order/quantile.ts';
import { spareBags } from '../../../src/takeoff/order/spare.ts';
import { chance } from '../../random/chance.ts';

const GUESS = { over: 0.05, spread: 0.05, jobs: 0 };

describe('how many bags to take', () => {
  test('worked by hand: 60 bags net, 5 % over, 5 % spread, 30 to 5', () => {
    // q = 30 / 35 = 0.857; z = 1.0676; 63 + 1.0676 × 3 = 66.2.
    const spare = spareBags(60, GUESS, { short: 3_000, over: 500 })!;
    expect(spare.ratio).toBeCloseTo(6 / 7, 12);
    expect(spare.expected).toBeCloseTo(63, 12);
    expect(spare.deviation).toBeCloseTo(3, 12);
    expect(spare.quantile).toBeCloseTo(1.0676, 4);
    expect(spare.take).toBe(67);
  });

  test('both as dear: the average, rounded up', () => {
    expect(spareBags(60, GUESS, { short: 700, over: 700 })!.take).toBe(63);
  });

  test('no spread: the average, whatever it costs', () => {
    expect(spareBags(60, { ...GUESS, spread: 0 }, { short: 9_000, over: 1 })!.take).toBe(63);
  });

  test('running short costs nothing: none is worth taking', () => {
    expect(spareBags(60, GUESS, { short: 0, over: 500 })!.take).toBe(0);
  });

  test('one too many costs nothing: no number is enough', () => {
    expect(spareBags(60, GUESS, { short: 500, over: 0 })).toBeUndefined();
  });

  test('few jobs are less sure than many', () => {
    const take = (jobs: number) =>
      spareBags(100, { ...GUESS, jobs }, { short: 9_000, over: 1_000 })!.take;
    expect(take(2)).toBeGreaterThan(take(4));
    expect(take(4)).toBeGreaterThan(take(100));
    expect(take(1)).toBe(take(0));
    expect(take(10_000)).toBe(take(0));
  });
});

/** What a number of bags costs on the average: the need is in whole bags, each with its part of the distribution. */
function averageCost(
  take: number,
  stakes: { readonly short: number; readonly over: number },
  shares: readonly number[],
): number {
  return shares.reduce((sum, share, need) => {
    const wrong = need > take ? (need - take) * stakes.short : (take - need) * stakes.over;
    return sum + share * wrong;
  }, 0);
}

test('is what costs least of all numbers, tried one by one', () => {
  const draw = chance(20_411);
  for (let round = 0; round < 40; round++) {
    const net = draw.whole(10, 70);
    const jobs = round % 3 === 0 ? 0 : draw.whole(6, 25);
    const rules = { over: draw.between(0, 0.1), spread: draw.between(0.02, 0.12), jobs };
    const stakes = { short: draw.whole(1, 5_000), over: draw.whole(200, 1_200) };
    const spare = spareBags(net, rules, stakes)!;
    const below = (bags: number) => {
      const at = (bags - spare.expected) / spare.deviation;
      return jobs === 0 ? normalShare(at) : studentShare(at, jobs - 1);
    };
    const shares = Array.from(
      { length: 3 * net + 60 },
      (_, need) => below(need) - (need === 0 ? 0 : below(need - 1)),
    );
    const costs = shares.map((_, take) => averageCost(take, stakes, shares));
    expect(costs[spare.take]).toBeLessThanOrEqual(Math.min(...costs) + 1e-6);
  }
});
