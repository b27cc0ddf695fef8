import type { Problem } from '../units/result.ts';
import { fieldProblems } from './fields.ts';
import type { Bid, OrderPractices } from './order.ts';
import { bidSchema } from './orderSchema.ts';

/** What is wrong with a bid. `at` stands before each place (`job.bid.`). */
export function bidProblems(bid: Bid, at: string): readonly Problem[] {
  const fields = fieldProblems(bidSchema, bid, '').map((one) => ({
    ...one,
    where: at + (one.where ?? ''),
  }));
  return fields.length > 0 ? fields : bidDoubles(bid, at);
}

/** Rows of a bid that stand for the same. */
export function bidDoubles({ extras, hours }: Bid, at: string): readonly Problem[] {
  return [
    ...doubles(
      extras.map(({ id }) => id),
      (i) => `${at}extras[${i}].id`,
    ),
    ...doubles(
      hours.map(({ task }) => task),
      (i) => `${at}hours[${i}].task`,
    ),
  ];
}

/** Rows of the ordering practices that stand for the same. */
export function orderDoubles({ prices, bid }: OrderPractices, at: string): readonly Problem[] {
  return [
    ...doubles(
      prices.map(({ item }) => item),
      (i) => `${at}prices[${i}].item`,
    ),
    ...doubles(
      bid.rates.map(({ task }) => task),
      (i) => `${at}bid.rates[${i}].task`,
    ),
  ];
}

function doubles(ids: readonly string[], where: (i: number) => string): readonly Problem[] {
  return ids.flatMap((id, i): readonly Problem[] =>
    ids.indexOf(id) === i ? [] : [{ code: 'field-id-twice', where: where(i), facts: { id } }],
  );
}
