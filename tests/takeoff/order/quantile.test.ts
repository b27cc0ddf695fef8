import { describe, expect, test } from 'vitest';
import {
  normalQuantile,
  normalShare,
  studentQuantile,
  studentShare,
} from '../../../src/takeoff/order/quantile.ts';

// Tables of the statistics handbooks, from memory: every one has them, to three or four places.
describe('the normal distribution', () => {
  test.each([
    [0.5, 0],
    [0.75, 0.6745],
    [0.9, 1.2816],
    [0.95, 1.6449],
    [0.975, 1.96],
    [0.99, 2.3263],
    [0.999, 3.0902],
    [0.05, -1.6449],
  ])('%d of it lies below %d', (share, z) => {
    expect(normalQuantile(share)).toBeCloseTo(z, 4);
    expect(normalShare(normalQuantile(share))).toBeCloseTo(share, 12);
  });

  test('agrees with the sum of its density', () => {
    for (const z of [-4, -2.4, -0.3, 0.7, 2.6, 3.6]) {
      const steps = 40_000;
      const from = -12;
      let sum = 0;
      for (let i = 0; i < steps; i++) {
        const at = from + ((i + 0.5) * (z - from)) / steps;
        sum += (Math.exp((-at * at) / 2) / Math.sqrt(2 * Math.PI)) * ((z - from) / steps);
      }
      expect(normalShare(z)).toBeCloseTo(sum, 7);
    }
  });
});

describe('Student’s distribution', () => {
  test.each([
    [0.95, 1, 6.314],
    [0.975, 1, 12.706],
    [0.9, 2, 1.886],
    [0.975, 4, 2.776],
    [0.95, 9, 1.833],
    [0.99, 9, 2.821],
    [0.975, 30, 2.042],
    [0.995, 120, 2.617],
    [0.05, 9, -1.833],
    [0.5, 3, 0],
  ])('%d of it at %d degrees lies below %d', (share, degrees, t) => {
    expect(Math.abs(studentQuantile(share, degrees) - t)).toBeLessThan(0.0006);
    expect(studentShare(studentQuantile(share, degrees), degrees)).toBeCloseTo(share, 10);
  });

  test('with one degree is the arctangent, exactly', () => {
    for (const t of [-30, -1, -0.2, 0.5, 3, 400]) {
      expect(studentShare(t, 1)).toBeCloseTo(0.5 + Math.atan(t) / Math.PI, 12);
    }
  });

  test('with many degrees is the normal one', () => {
    expect(studentQuantile(0.9, 1e6)).toBeCloseTo(normalQuantile(0.9), 5);
  });
});
