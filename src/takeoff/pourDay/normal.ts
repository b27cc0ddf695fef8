/**
 * Chance that a standard normal is at most `x`, within 1e-7.
 * Source: the polynomial 26.2.17 of the Handbook of Mathematical Functions (NBS, 1964), from memory; tested against
 * values of its tables.
 */
export function normalBelow(x: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(x));
  const tail =
    (Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI)) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return x >= 0 ? 1 - tail : tail;
}
