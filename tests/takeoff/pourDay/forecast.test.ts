import { describe, expect, test } from 'vitest';
import {
  chanceShort,
  forecast,
  type Mark,
  type Plan,
} from '../../../src/takeoff/pourDay/forecast.ts';
import { normalBelow } from '../../../src/takeoff/pourDay/normal.ts';
import { type Chance, chance } from '../../random/chance.ts';

const PLAN: Plan = { expected: 1.1, meanError: 0.07, bumpError: 0.03 };

/** A standard normal, by the polar way of Box and Muller. */
function normal({ share }: Chance): number {
  return Math.sqrt(-2 * Math.log(1 - share())) * Math.cos(2 * Math.PI * share());
}

test('the normal agrees with the tables', () => {
  // Values of any table of the standard normal.
  expect(normalBelow(0)).toBeCloseTo(0.5, 6);
  expect(normalBelow(1)).toBeCloseTo(0.8413447, 6);
  expect(normalBelow(-1.96)).toBeCloseTo(0.0249979, 6);
  expect(normalBelow(1.2815516)).toBeCloseTo(0.9, 6);
  expect(normalBelow(8)).toBeCloseTo(1, 12);
});

describe('the forecast', () => {
  test('is the plan before the first mark', () => {
    const { expected, deviation } = forecast(PLAN, [], 0);
    expect(expected).toBe(1.1);
    expect(deviation).toBeCloseTo(1.1 * Math.hypot(0.07, 0.03), 12);
  });

  test('is what went in once all is placed, however it was planned', () => {
    const marks: Mark[] = [
      { placed: 0.5, used: 0.4, error: 0.02 },
      { placed: 1, used: 0.83, error: 0.02 },
    ];
    const done = forecast(PLAN, marks, 0.83);
    expect(done).toEqual({ expected: 0.83, deviation: 0, least: 0.83, most: 0.83 });
    expect(chanceShort(done, 0.82)).toBe(1);
    expect(chanceShort(done, 0.84)).toBe(0);
  });

  test('of one mark is the closed form', () => {
    const mark: Mark = { placed: 0.5, used: 0.65, error: 0.02 };
    const [tau2, sigma2, noise] = [0.077 ** 2, 0.033 ** 2, 0.022 ** 2];
    const c = (tau2 + sigma2) * 0.5;
    const k = tau2 * 0.25 + sigma2 * 0.5 + noise;
    const { expected, deviation } = forecast(PLAN, [mark], 0.65);
    expect(expected).toBeCloseTo(1.1 + (c / k) * (0.65 - 0.55), 6);
    expect(deviation ** 2).toBeCloseTo(tau2 + sigma2 - c ** 2 / k, 9);
  });

  test('goes to used ÷ placed where nothing was known before', () => {
    const open: Plan = { expected: 1, meanError: 10, bumpError: 0 };
    const { expected } = forecast(open, [{ placed: 0.4, used: 0.5, error: 0 }], 0.5);
    expect(expected).toBeCloseTo(1.25, 4);
  });

  test('stays at the plan where the plan is sure', () => {
    const sure: Plan = { expected: 1.1, meanError: 0, bumpError: 0 };
    const { expected } = forecast(sure, [{ placed: 0.4, used: 0.5, error: 0.05 }], 0.5);
    expect(expected).toBeCloseTo(1.1, 9);
  });

  test('is never less than what went in, and takes marks at one place or none placed', () => {
    const marks: Mark[] = [
      { placed: 0, used: 0.1, error: 0 },
      { placed: 0.3, used: 0.33, error: 0 },
      { placed: 0.3, used: 0.33, error: 0 },
    ];
    const { expected, least, most } = forecast(PLAN, marks, 2);
    expect([expected, least, most]).toEqual([2, 2, 2]);
    const { expected: sane } = forecast(PLAN, marks, 0.33);
    expect(sane).toBeGreaterThan(1);
    expect(sane).toBeLessThan(1.2);
  });

  test('with each mark grows surer', () => {
    const marks = [0.2, 0.4, 0.6, 0.8, 0.95].map(
      (placed): Mark => ({ placed, used: placed * 1.2, error: 0.01 }),
    );
    const deviations = marks.map((_, i) => forecast(PLAN, marks.slice(0, i + 1), 0).deviation);
    expect(deviations).toEqual(deviations.toSorted((a, b) => b - a));
    expect(deviations.at(-1)!).toBeLessThan(0.02);
  });
});

test('in simulated pours the band holds as many as it says, and the forecast comes to the truth', () => {
  const luck = chance(61);
  const stops = [0.25, 0.5, 0.75, 0.95];
  const inside = stops.map(() => 0);
  const off = stops.map(() => 0);
  const POURS = 2000;
  for (let pour = 0; pour < POURS; pour++) {
    const r = 1.1 * (1 + 0.07 * normal(luck));
    // The walk at the stops and at the end.
    let walk = 0;
    let before = 0;
    const marks: Mark[] = [];
    const seen = stops.map((stop) => {
      walk += 1.1 * 0.03 * Math.sqrt(stop - before) * normal(luck);
      before = stop;
      const used = r * stop + walk;
      marks.push({ placed: stop + 0.015 * normal(luck), used, error: 0.015 });
      return forecast(PLAN, marks, 0);
    });
    const truth = r + walk + 1.1 * 0.03 * Math.sqrt(1 - before) * normal(luck);
    seen.forEach(({ expected, least, most }, i) => {
      if (truth >= least && truth <= most) inside[i]! += 1;
      off[i]! += Math.abs(expected - truth);
    });
  }
  // 2000 draws of four in five: a standard deviation of 0.9 %.
  for (const count of inside) {
    expect(count / POURS).toBeGreaterThan(0.77);
    expect(count / POURS).toBeLessThan(0.83);
  }
  const mean = off.map((sum) => sum / POURS);
  expect(mean).toEqual(mean.toSorted((a, b) => b - a));
  expect(mean.at(-1)!).toBeLessThan(0.02);
});
