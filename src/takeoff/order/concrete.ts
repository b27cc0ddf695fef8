import type { Job } from '../../job/job.ts';
import { orderOf } from '../../job/orderDefaults.ts';
import { priceOf } from '../../job/prices.ts';
import { CUBIC_METRE, CUBIC_YARD, POUND_KG } from '../../units/grid.ts';
import { meanYield, splitBags } from '../mix/blend.ts';
import { type MixParts, mixParts } from '../mix/parts.ts';
import { added, timesCount } from '../price/cents.ts';
import { text } from '../quantity.ts';
import type { MixResult } from '../result.ts';
import { quarters } from './groundLines.ts';
import { line, type OrderLine } from './line.ts';
import type { BagOrder } from './orderResult.ts';
import { spareBags } from './spare.ts';

/**
 * Bags on a pallet, by the weight of one.
 * @source pallet-bags
 */
const PALLETS: readonly (readonly [number, number])[] = [
  [40, 80],
  [50, 64],
  [60, 56],
  [80, 42],
];

/** Bags that a whole pallet holds: the user's own number, or the published one for bags of that weight. */
export function bagsOnPallet(kg: number, typed: number | undefined): number | undefined {
  if (typed !== undefined) return typed;
  return PALLETS.find(([pounds]) => Math.abs(kg / POUND_KG - pounds) < 0.5)?.[1];
}

export function bagOrder(job: Job, mix: MixResult): BagOrder | undefined {
  const blend = mixParts(job.practices);
  if ('code' in blend) return undefined;
  const rules = orderOf(job.practices).bags;
  const short = priceOf(job, 'one-short');
  const over = rules.returns ? priceOf(job, 'one-over') : bagPrice(job, blend);
  const known = short !== undefined && over !== undefined;
  const by = known
    ? spareBags(mix.net / meanYield(blend), rules, { short, over: Math.round(over) })
    : undefined;
  const total = Math.max(mix.totalBags, by?.take ?? 0);
  // What the mix's ticket opens, and the spare ones in the blend's parts.
  const spare = splitBags(total - mix.totalBags, blend);
  const bags = mix.bags.map(({ bags: opened }, i) => ({
    mix: blend[i]!.mix,
    count: opened + spare[i]!,
  }));
  const pallets = added(
    bags.map(({ mix: { weight }, count }) => {
      const on = bagsOnPallet(weight, rules.perPallet);
      return on === undefined ? undefined : Math.floor(count / on);
    }),
  );
  const one = priceOf(job, 'pallet');
  const deposit = pallets === undefined || one === undefined ? undefined : timesCount(one, pallets);
  return {
    bags,
    total,
    spare: total - mix.totalBags,
    noEnd: known && by === undefined,
    ...(by ? { by } : {}),
    ...(pallets === undefined ? {} : { pallets }),
    ...(deposit === undefined ? {} : { deposit }),
  };
}

/** Of one bag, cents, on the average of the blend; nothing where the price of one of its mixes isn't known. */
export function bagPrice(job: Job, blend: MixParts): number | undefined {
  let [sum, parts] = [0, 0];
  for (const part of blend) {
    const price = priceOf(job, `bag-${part.mix.id}`);
    if (price === undefined) return undefined;
    sum += price * part.parts;
    parts += part.parts;
  }
  return sum / parts;
}

export function bagLines(job: Job, { bags }: BagOrder): readonly OrderLine[] {
  return [
    ...bags.flatMap(({ mix, count }) =>
      line(job, {
        item: `bag-${mix.id}`,
        is: 'order-bag',
        named: [text(mix.name)],
        count,
        unit: 'bag',
        weight: count * mix.weight,
      }),
    ),
    // Who owns a mixer hires none.
    ...(priceOf(job, 'mixer-hire')
      ? line(job, {
          item: 'mixer-hire',
          is: 'order-mixer-hire',
          count: 1,
          unit: 'unit',
          delivered: true,
        })
      : []),
  ];
}

/** Ready-mix up to the next quarter of what it is sold by, never down; in that unit. */
export function readyMixCount({ practices }: Job, needed: number): number {
  return quarters(needed, orderOf(practices).readyMix.soldBy);
}

/** What it is sold by, cubic grid units, and how its prices are told from those of the other unit. */
export function soldBy({ practices }: Job) {
  const unit = orderOf(practices).readyMix.soldBy;
  return unit === 'cubic-yard'
    ? ({ unit, one: CUBIC_YARD, mark: 'yd3' } as const)
    : ({ unit, one: CUBIC_METRE, mark: 'm3' } as const);
}
