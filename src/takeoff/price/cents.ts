import { MOST_MONEY, type Money } from '../../units/money.ts';

const THOUSAND = 1_000n;
const MILLION = 1_000_000n;

/**
 * So many (to a thousandth) at a price each, to the nearest cent, a half up; exact. Nothing when it is more than any sum
 * that is written.
 */
export function timesCount(price: Money, count: number): Money | undefined {
  return written(BigInt(price) * BigInt(Math.round(count * 1_000)), THOUSAND);
}

/** A share (to a millionth) of an amount, to the nearest cent, a half up; exact. */
export function shareOf(amount: Money, share: number): Money | undefined {
  return written(BigInt(amount) * millionths(share), MILLION);
}

/** What an amount is of, when so large a share of the whole is not in it: amount ÷ (1 − share). */
export function wholeWithout(amount: Money, share: number): Money | undefined {
  return written(BigInt(amount) * MILLION, MILLION - millionths(share));
}

/** Up to the next whole one of `step`. */
export function upTo(amount: Money, step: Money): Money {
  return Math.ceil(amount / step) * step;
}

/** Whole cents, so exact; nothing when one of them is, or when it is more than any sum that is written. */
export function added(amounts: readonly (Money | undefined)[]): Money | undefined {
  let sum = 0;
  for (const amount of amounts) {
    if (amount === undefined) return undefined;
    sum += amount;
    if (sum > MOST_MONEY) return undefined;
  }
  return sum;
}

function millionths(share: number): bigint {
  return BigInt(Math.round(share * 1e6));
}

function written(over: bigint, under: bigint): Money | undefined {
  const cents = (2n * over + under) / (2n * under);
  return cents > BigInt(MOST_MONEY) ? undefined : Number(cents);
}
