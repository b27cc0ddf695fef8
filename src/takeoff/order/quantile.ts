/**
 * Quantiles of the two distributions that spare bags are reckoned by. Closed series and fractions as in any handbook of
 * mathematical functions; no published text is copied.
 */

/** How much of a normal distribution lies below z. */
export function normalShare(z: number): number {
  return 0.5 * upperShare(-z / Math.SQRT2);
}

/** The z below which a share of a normal distribution lies; the share is between 0 and 1. */
export function normalQuantile(share: number): number {
  return found(share, normalShare);
}

/** How much of Student's distribution lies below t. */
export function studentShare(t: number, degrees: number): number {
  const tail = 0.5 * betaShare(degrees / (degrees + t * t), degrees / 2, 0.5);
  return t > 0 ? 1 - tail : tail;
}

/** The t below which a share of Student's distribution lies; the share is between 0 and 1. */
export function studentQuantile(share: number, degrees: number): number {
  return found(share, (t) => studentShare(t, degrees));
}

/** By halving: a share grows with its quantile, and both distributions are the same on either side. */
function found(share: number, shareBelow: (at: number) => number): number {
  if (share < 0.5) return -found(1 - share, shareBelow);
  let [low, high] = [0, 1];
  while (shareBelow(high) < share && high < 1e12) high *= 2;
  for (let i = 0; i < 200; i++) {
    const half = (low + high) / 2;
    if (half === low || half === high) break;
    if (shareBelow(half) < share) low = half;
    else high = half;
  }
  return high;
}

/** Complementary error function: a series near the middle, a continued fraction in the tail. */
function upperShare(x: number): number {
  if (x < 0) return 2 - upperShare(-x);
  if (x < 2.5) {
    let [term, sum] = [x, x];
    for (let n = 1; Math.abs(term) > 1e-17 * Math.abs(sum); n++) {
      term *= (-x * x) / n;
      sum += term / (2 * n + 1);
      if (term === 0) break;
    }
    return 1 - (2 / Math.sqrt(Math.PI)) * sum;
  }
  let fraction = 0;
  for (let n = 80; n >= 1; n--) fraction = n / 2 / (x + fraction);
  return Math.exp(-x * x) / Math.sqrt(Math.PI) / (x + fraction);
}

/** Regularized incomplete beta function, by its continued fraction. */
function betaShare(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  // The fraction closes fast on one side only.
  if (x > (a + 1) / (a + b + 2)) return 1 - betaShare(1 - x, b, a);
  const front = Math.exp(
    a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b),
  );
  let fraction = 1;
  for (let m = 400; m >= 1; m--) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m - 1) * (a + b + m - 1) * x) / ((a + 2 * m - 2) * (a + 2 * m - 1));
    fraction = 1 + odd / (1 + even / fraction);
  }
  return front / (a * fraction);
}

/** Logarithm of the gamma function: moved up to where Stirling's series is exact to the last place. */
function logGamma(x: number): number {
  let [at, less] = [x, 0];
  while (at < 12) {
    less += Math.log(at);
    at += 1;
  }
  const square = at * at;
  const series = (1 / 12 - (1 / 360 - (1 / 1260 - 1 / 1680 / square) / square) / square) / at;
  return (at - 0.5) * Math.log(at) - at + 0.5 * Math.log(2 * Math.PI) + series - less;
}
