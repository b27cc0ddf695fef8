import type { CloseOut } from '../../job/pourLog.ts';
import {
  BAND_DEVIATIONS,
  PRIOR_JOB_DEVIATION,
  PRIOR_JOB_WEIGHT,
  PRIOR_MEAN_DEVIATION,
  RATIO_LEAST,
  RATIO_MOST,
} from './rules.ts';

/** Concrete that the bags used of a closed job make, cubic grid units. */
export function usedVolume({ bags }: Pick<CloseOut, 'bags'>): number {
  return bags.reduce((sum, { used, yield: makes }) => sum + used * makes, 0);
}

/** Used over net of a closed job. */
export function ratioOf(closed: Pick<CloseOut, 'bags' | 'net'>): number {
  return usedVolume(closed) / closed.net;
}

/** A ratio so far off that something was counted or drawn wrong. */
export function isOdd(ratio: number): boolean {
  return !(ratio >= RATIO_LEAST && ratio <= RATIO_MOST);
}

/** What the closed jobs say of the next one's used : net. Logarithms are natural. */
export interface Spread {
  /** Jobs that count. */
  readonly jobs: number;
  /** Mean of the ratio's logarithm, as it is believed now, and how sure that is. */
  readonly mean: number;
  readonly meanDeviation: number;
  /** From job to job. */
  readonly jobDeviation: number;
  /** Of the next job: both together. */
  readonly deviation: number;
  /** How much the jobs count against the default, 0 to 1. */
  readonly weight: number;
}

/**
 * Mean and spread of log(used ÷ net), shrunk toward the default allowance while jobs are few.
 *
 * Normal-normal model with x = log ratio: x ~ N(μ, s²), μ ~ N(m₀, t²), m₀ = log(1 + default).
 * s² = (ν·s₀² + Σ(x − x̄)²) ÷ (ν + max(0, n − 1)): the jobs' own spread, pooled with a prior worth ν jobs.
 * w = n ÷ (n + s²/t²), mean = (1 − w)·m₀ + w·x̄, its variance = 1 ÷ (1/t² + n/s²), of the next job: that + s².
 * No jobs: the default. Many: their mean. Source: conjugate normal model (any Bayesian text); t, s₀ and ν in rules.ts.
 */
export function historySpread(
  jobs: readonly Pick<CloseOut, 'bags' | 'net'>[],
  usual: number,
): Spread {
  const logs = jobs
    .map(ratioOf)
    .filter((ratio) => !isOdd(ratio))
    .map(Math.log);
  const n = logs.length;
  const m0 = Math.log(1 + usual);
  const average = n === 0 ? m0 : logs.reduce((sum, x) => sum + x, 0) / n;
  const squares = logs.reduce((sum, x) => sum + (x - average) ** 2, 0);
  const s2 =
    (PRIOR_JOB_WEIGHT * PRIOR_JOB_DEVIATION ** 2 + squares) /
    (PRIOR_JOB_WEIGHT + Math.max(0, n - 1));
  const t2 = PRIOR_MEAN_DEVIATION ** 2;
  const weight = n / (n + s2 / t2);
  const meanVariance = 1 / (1 / t2 + n / s2);
  return {
    jobs: n,
    mean: (1 - weight) * m0 + weight * average,
    meanDeviation: Math.sqrt(meanVariance),
    jobDeviation: Math.sqrt(s2),
    deviation: Math.sqrt(meanVariance + s2),
    weight,
  };
}

/** An allowance to offer: the share itself, and where the crew's true mean lies in four cases of five. Shares of the net. */
export interface Suggested {
  readonly share: number;
  readonly least: number;
  readonly most: number;
  readonly spread: Spread;
}

/** Never under nothing: an allowance takes nothing off the net. To a whole percent, as allowances are said. */
export function suggestedAllowance(
  jobs: readonly Pick<CloseOut, 'bags' | 'net'>[],
  usual: number,
): Suggested {
  const spread = historySpread(jobs, usual);
  const { mean, meanDeviation } = spread;
  const at = (log: number) => Math.max(0, Math.round((Math.exp(log) - 1) * 100) / 100);
  const reach = BAND_DEVIATIONS * meanDeviation;
  return { share: at(mean), least: at(mean - reach), most: at(mean + reach), spread };
}

/** What the closed jobs say for the rule of the spare bags: shares of the net, and how many jobs they come from. */
export interface SpareRule {
  readonly over: number;
  readonly spread: number;
  readonly jobs: number;
}

/** The mean shrunk as in historySpread, the spread from job to job pooled with the prior's, to a tenth of a percent. */
export function spareRule({ mean, jobDeviation, jobs }: Spread): SpareRule {
  const tenths = (share: number) => Math.min(1, Math.max(0, Math.round(share * 1000) / 1000));
  return {
    over: tenths(Math.exp(mean) - 1),
    // A deviation of the logarithm is one of the ratio by as much as the ratio is.
    spread: tenths(Math.exp(mean) * jobDeviation),
    jobs,
  };
}
