import { normalBelow } from './normal.ts';
import { BAND_DEVIATIONS } from './rules.ts';

/** One look at how far the concrete has got: the share that is placed, and what had gone in by then. */
export interface Mark {
  /** 0 to 1. */
  readonly placed: number;
  /** Of the net volume: 0.5 when half of the net has been mixed. */
  readonly used: number;
  /** How far off `placed` may be, one standard deviation. */
  readonly error: number;
}

/** What is believed before the first mark. Shares of the net. */
export interface Plan {
  /** Of the net and what is expected to be lost, over the net. */
  readonly expected: number;
  /** Of the slab's mean depth, as a share of it: one standard deviation of the whole slab, which shows from the start. */
  readonly meanError: number;
  /** Of the ground's bumps over the whole slab: what they add grows and evens out patch by patch. */
  readonly bumpError: number;
}

/** What the whole pour will take, as a share of the net: a normal, cut off at what has gone in already. */
export interface Forecast {
  readonly expected: number;
  readonly deviation: number;
  readonly least: number;
  readonly most: number;
}

/** Marks beyond these tell nothing new, and would cost time: the last ones count. */
const MOST_MARKS = 24;

/**
 * What the whole pour will take, from the plan and every mark.
 *
 * With s placed, U(s) = r·s + σ·B(s): r is how much deeper or shallower than drawn the whole is, a normal about the
 * plan; B a random walk over the area (bumps of the ground add up patch by patch). A mark reads U at a share that is off by
 * a little: y = U(s) + r₀·e. All of it is normal, so what the whole takes, T = U(1), is the closed form of conditioning:
 * E T = r₀ + c′K⁻¹(y − r₀s), V T = τ² + σ² − c′K⁻¹c, K = τ²ss′ + σ²min(s,s′) + r₀²φ²I, c = τ²s + σ²s.
 * Without a mark it is the plan; with all placed and read, it is what went in. Source: Gaussian conditioning (any text on
 * linear models); the values that go in are practices.
 * @param used What has gone in by now, which may be more than at the last mark; the whole can't take less.
 */
export function forecast(plan: Plan, marks: readonly Mark[], used: number): Forecast {
  const { expected: r0, meanError, bumpError } = plan;
  // Both errors are of the plan's depth.
  const tau2 = (r0 * meanError) ** 2;
  const sigma2 = (r0 * bumpError) ** 2;
  const last = marks.filter(({ placed }) => placed > 0).slice(-MOST_MARKS);
  const end = last.at(-1);
  if (end && end.placed >= 1) return banded(Math.max(end.used, used), 0, used);
  const c = last.map(({ placed }) => (tau2 + sigma2) * placed);
  const K = last.map((a, i) =>
    last.map(
      (b, j) =>
        tau2 * a.placed * b.placed +
        sigma2 * Math.min(a.placed, b.placed) +
        (i === j ? (r0 * a.error) ** 2 + LEAST_VARIANCE : 0),
    ),
  );
  const weights = solve(K, c);
  const expected = last.reduce(
    (sum, { placed, used: seen }, i) => sum + weights[i]! * (seen - r0 * placed),
    r0,
  );
  const variance = weights.reduce((left, weight, i) => left - weight * c[i]!, tau2 + sigma2);
  return banded(expected, Math.sqrt(Math.max(0, variance)), used);
}

/** Two marks at one place and without error would make the system singular. */
const LEAST_VARIANCE = 1e-12;

function banded(expected: number, deviation: number, used: number): Forecast {
  const reach = BAND_DEVIATIONS * deviation;
  return {
    expected: Math.max(used, expected),
    deviation,
    least: Math.max(used, expected - reach),
    most: Math.max(used, expected + reach),
  };
}

/** Chance that the whole takes more than there is. */
export function chanceShort({ expected, deviation }: Forecast, has: number): number {
  if (deviation === 0) return expected > has ? 1 : 0;
  return 1 - normalBelow((has - expected) / deviation);
}

/** Solves a symmetric positive definite system by Cholesky's way. */
function solve(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const lower: number[][] = [];
  matrix.forEach((row, i) => {
    const made: number[] = [];
    for (let j = 0; j <= i; j++) {
      let sum = row[j]!;
      for (let k = 0; k < j; k++) sum -= made[k]! * (j === i ? made[k]! : lower[j]![k]!);
      made.push(i === j ? Math.sqrt(sum) : sum / lower[j]![j]!);
    }
    lower.push(made);
  });
  const half: number[] = [];
  right.forEach((value, i) => {
    let sum = value;
    for (let k = 0; k < i; k++) sum -= lower[i]![k]! * half[k]!;
    half.push(sum / lower[i]![i]!);
  });
  const x: number[] = Array.from({ length: right.length }, () => 0);
  for (let i = right.length - 1; i >= 0; i--) {
    let sum = half[i]!;
    for (let k = i + 1; k < right.length; k++) sum -= lower[k]![i]! * x[k]!;
    x[i] = sum / lower[i]![i]!;
  }
  return x;
}
