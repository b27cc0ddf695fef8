import { describe, expect, test } from 'vitest';
import {
  historySpread,
  isOdd,
  ratioOf,
  spareRule,
  suggestedAllowance,
} from '../../../src/takeoff/pourDay/history.ts';
import { chance } from '../../random/chance.ts';

const YIELD = 600;
const DEFAULT = 0.1;

/** A job that took so much of its net. */
function closed(ratio: number) {
  const bag = { mix: 'regular', name: 'Regular', yield: YIELD, left: 0, returned: 0 };
  return { net: 10_000, bags: [{ ...bag, used: (ratio * 10_000) / YIELD }] };
}

test('the ratio is what the used bags make over the net, over all mixes', () => {
  const bag = { name: '', left: 0, returned: 0 };
  const bags = [
    { ...bag, mix: 'a', yield: 600, used: 10 },
    { ...bag, mix: 'b', yield: 400, used: 5 },
  ];
  expect(ratioOf({ net: 7500, bags })).toBeCloseTo(8000 / 7500, 12);
});

describe('the allowance from closed jobs', () => {
  test('with none is the default', () => {
    const none = historySpread([], DEFAULT);
    expect(none.jobs).toBe(0);
    expect(none.weight).toBe(0);
    expect(none.mean).toBe(Math.log(1.1));
    expect(none.meanDeviation).toBeCloseTo(0.05, 12);
    expect(none.deviation).toBeCloseTo(Math.hypot(0.05, 0.07), 12);
    expect(suggestedAllowance([], DEFAULT).share).toBe(0.1);
  });

  test('with one is the closed form: w = 1 ÷ (1 + s²/t²), 49/25 of the default’s word', () => {
    const one = historySpread([closed(1.02)], DEFAULT);
    const weight = 1 / (1 + 0.07 ** 2 / 0.05 ** 2);
    expect(one.weight).toBeCloseTo(weight, 12);
    expect(one.mean).toBeCloseTo((1 - weight) * Math.log(1.1) + weight * Math.log(1.02), 12);
    expect(one.meanDeviation ** 2).toBeCloseTo(1 / (1 / 0.05 ** 2 + 1 / 0.07 ** 2), 12);
  });

  test('with three pools their spread with the prior’s', () => {
    const ratios = [1.02, 1.08, 1.05];
    const logs = ratios.map(Math.log);
    const mean = logs.reduce((a, b) => a + b) / 3;
    const squares = logs.reduce((sum, x) => sum + (x - mean) ** 2, 0);
    const s2 = (4 * 0.07 ** 2 + squares) / 6;
    const weight = 3 / (3 + s2 / 0.05 ** 2);
    const three = historySpread(ratios.map(closed), DEFAULT);
    expect(three.jobDeviation ** 2).toBeCloseTo(s2, 12);
    expect(three.mean).toBeCloseTo((1 - weight) * Math.log(1.1) + weight * mean, 12);
    expect(suggestedAllowance(ratios.map(closed), DEFAULT).share).toBe(0.07);
  });

  test('with many is their mean, surely', () => {
    const luck = chance(7);
    const ratios = Array.from({ length: 400 }, () => 1.04 * Math.exp(luck.between(-0.05, 0.05)));
    const many = suggestedAllowance(ratios.map(closed), DEFAULT);
    expect(many.share).toBe(0.04);
    expect(many.most - many.least).toBeLessThanOrEqual(0.01);
    expect(many.spread.weight).toBeGreaterThan(0.99);
    // An even spread of ±5 %: 0.1 ÷ √12.
    expect(many.spread.jobDeviation).toBeCloseTo(0.1 / Math.sqrt(12), 2);
  });

  test('is never under nothing', () => {
    const thin = Array.from({ length: 50 }, () => closed(0.9));
    expect(suggestedAllowance(thin, DEFAULT)).toMatchObject({ share: 0, least: 0, most: 0 });
  });

  test('leaves out what was counted or drawn wrong', () => {
    expect([0, 0.49, 2.01, Number.NaN, Number.POSITIVE_INFINITY].every(isOdd)).toBe(true);
    expect(historySpread([closed(3), closed(0.1)], DEFAULT)).toEqual(historySpread([], DEFAULT));
  });
});

test('the rule of the spare bags takes mean and spread as shares of the net', () => {
  const spread = historySpread([1.02, 1.08, 1.05].map(closed), DEFAULT);
  const { over, spread: strays, jobs } = spareRule(spread);
  expect(jobs).toBe(3);
  expect(over).toBeCloseTo(Math.exp(spread.mean) - 1, 3);
  expect(strays).toBeCloseTo(Math.exp(spread.mean) * spread.jobDeviation, 3);
  // A crew that uses less than the net is told no less than nothing.
  expect(
    spareRule(
      historySpread(
        Array.from({ length: 50 }, () => closed(0.9)),
        DEFAULT,
      ),
    ).over,
  ).toBe(0);
});

test('the next job’s band holds four of five crews drawn by the model', () => {
  const luck = chance(23);
  const normal = () =>
    Math.sqrt(-2 * Math.log(1 - luck.share())) * Math.cos(2 * Math.PI * luck.share());
  for (const jobs of [0, 1, 3, 8]) {
    let inside = 0;
    const CREWS = 1500;
    for (let crew = 0; crew < CREWS; crew++) {
      const own = Math.log(1 + DEFAULT) + 0.05 * normal();
      const ratio = () => Math.exp(own + 0.07 * normal());
      const { mean, deviation } = historySpread(
        Array.from({ length: jobs }, () => closed(ratio())),
        DEFAULT,
      );
      if (Math.abs(Math.log(ratio()) - mean) <= 1.2816 * deviation) inside++;
    }
    expect(inside / CREWS).toBeGreaterThan(0.76);
    expect(inside / CREWS).toBeLessThan(0.84);
  }
});
