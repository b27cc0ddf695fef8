import { fieldProblems } from '../fields.ts';
import type { Job } from '../job.ts';
import { orderOf } from '../orderDefaults.ts';
import { pricesSchema } from '../orderSchema.ts';
import { type PriceChange, withPrices } from '../prices.ts';
import type { Outcome } from '../refusal.ts';

export interface SetPrices {
  readonly do: 'set-prices';
  readonly prices: readonly PriceChange[];
}

/** Prices of any items at once, wherever they are kept. A refusal's `where` is the row (`[0].price`). */
export function setPrices(job: Job, { prices }: SetPrices): Outcome {
  const known = prices.filter(({ price }) => price !== null);
  const done = withPrices(job, prices);
  const [problem] = [
    ...fieldProblems(pricesSchema, known, ''),
    ...fieldProblems(pricesSchema, orderOf(done.practices).prices, ''),
  ];
  return problem ? { ok: false, problems: problem } : { ok: true, value: done };
}
