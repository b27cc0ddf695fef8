import type { OrderPractices } from '../../job/order.ts';
import type { Money } from '../../units/money.ts';
import { added, shareOf, upTo, wholeWithout } from './cents.ts';

/** From cost to price, line by line: each is whole cents, and together they are the price. */
export interface BidSums {
  readonly materials: Money;
  readonly labour: Money;
  readonly overhead: Money;
  readonly profit: Money;
  readonly tax: Money;
  /** What rounding up to a whole step adds. */
  readonly rounding: Money;
  readonly price: Money;
}

/**
 * What a job is offered for. Overhead is a share of materials and labour. Profit is a markup on all of that
 * (cost × p), or a margin of what it is sold for before tax (cost ÷ (1 − p) − cost).
 * @returns nothing when a sum is more than any that is written
 */
export function bidSums(
  materials: Money,
  labour: Money,
  rules: Pick<OrderPractices['bid'], 'overhead' | 'profitBy' | 'profit' | 'tax' | 'taxOn' | 'step'>,
): BidSums | undefined {
  const cost = added([materials, labour]);
  const overhead = cost === undefined ? undefined : shareOf(cost, rules.overhead);
  const loaded = added([cost, overhead]);
  if (loaded === undefined || overhead === undefined) return undefined;
  const sold = rules.profitBy === 'margin' ? wholeWithout(loaded, rules.profit) : undefined;
  const profit =
    rules.profitBy === 'markup'
      ? shareOf(loaded, rules.profit)
      : sold === undefined
        ? undefined
        : sold - loaded;
  const taxed = rules.taxOn === 'materials' ? materials : added([loaded, profit]);
  const tax =
    rules.taxOn === 'none' ? 0 : taxed === undefined ? undefined : shareOf(taxed, rules.tax);
  const sum = added([loaded, profit, tax]);
  if (sum === undefined || profit === undefined || tax === undefined) return undefined;
  const price = upTo(sum, rules.step);
  return { materials, labour, overhead, profit, tax, rounding: price - sum, price };
}
