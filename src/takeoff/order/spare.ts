import type { OrderPractices } from '../../job/order.ts';
import type { Money } from '../../units/money.ts';
import { normalQuantile, studentQuantile } from './quantile.ts';

/** What one bag too few and one too many cost. */
export interface BagStakes {
  readonly short: Money;
  readonly over: Money;
}

/** How many bags to take, by what being wrong either way costs. Bags are of the blend's average yield. */
export interface Spare extends BagStakes {
  /** How sure to be that the bags last. */
  readonly ratio: number;
  /** Bags used on the average, and how far a job strays from that. */
  readonly expected: number;
  readonly deviation: number;
  /** By how many deviations to go over; -Infinity where running short costs nothing. */
  readonly quantile: number;
  readonly take: number;
}

/**
 * The bags at which one more costs as much on the average as one fewer: short ÷ (short + over) of all jobs get by with
 * them. A spread taken from few jobs is itself unsure: Student's distribution, and a little wider for one job more, take
 * the place of the normal one.
 * @source critical-ratio
 * @param net What the pour takes, in bags.
 * @param practice `over` and `spread` are shares of the net.
 * @returns nothing when one too many costs nothing: then no number is enough
 */
export function spareBags(
  net: number,
  { over, spread, jobs }: Pick<OrderPractices['bags'], 'over' | 'spread' | 'jobs'>,
  stakes: BagStakes,
): Spare | undefined {
  if (!(stakes.over > 0)) return undefined;
  const ratio = stakes.short / (stakes.short + stakes.over);
  const known = jobs >= 2;
  const expected = net * (1 + over);
  const deviation = net * spread * (known ? Math.sqrt(1 + 1 / jobs) : 1);
  const quantile =
    ratio === 0
      ? Number.NEGATIVE_INFINITY
      : known
        ? studentQuantile(ratio, jobs - 1)
        : normalQuantile(ratio);
  const bags = deviation === 0 ? expected : expected + quantile * deviation;
  // A whole number that is a hair over by the arithmetic alone is not one bag more.
  const take = ratio === 0 ? 0 : Math.max(0, Math.ceil(bags - 1e-9));
  return { ...stakes, ratio, expected, deviation, quantile, take };
}
