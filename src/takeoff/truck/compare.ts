import type { Job } from '../../job/job.ts';
import { orderOf } from '../../job/orderDefaults.ts';
import { priceOf } from '../../job/prices.ts';
import { meanYield } from '../mix/blend.ts';
import { mixParts } from '../mix/parts.ts';
import { bagPrice, readyMixCount, soldBy } from '../order/concrete.ts';
import type { OrderTermKey } from '../order/keys.ts';
import type { BagOrder, Comparison, CostPart } from '../order/orderResult.ts';
import { added, timesCount } from '../price/cents.ts';
import type { MixResult } from '../result.ts';
import { type BagRates, breakEvens, type TruckRates } from './costs.ts';

/** What nobody has said yet. */
export interface Asked {
  readonly asked: readonly OrderTermKey[];
}

/**
 * Both ways for this job, by the user's own rates; or those that are still to be asked for. How fast a barrow goes is the
 * practices' too; it starts from a handbook.
 * @source wheelbarrow-1908
 */
export function compare(
  job: Job,
  mix: MixResult,
  bagOrder: BagOrder,
): Comparison | Asked | 'too-dear' {
  const rates = ratesOf(job);
  if ('asked' in rates) return rates;
  const { bags, truck } = rates;
  const count = readyMixCount(job, mix.needed);
  const volume = count * truck.unit;
  const onSite = volume * truck.onSite;
  const cents = (amount: number) => Math.round(amount);
  const hire = bags.hire;
  const missing = Math.max(0, truck.short - volume) / truck.unit;
  const bagSum = added(
    bagOrder.bags.map(({ mix: { id }, count: each }) =>
      timesCount(priceOf(job, `bag-${id}`) ?? 0, each),
    ),
  );
  if (bagSum === undefined) return 'too-dear';
  const parts: readonly CostPart[] = [
    {
      is: 'part-concrete',
      bags: bagSum,
      truck: cents(Math.max(count, truck.least / truck.unit) * truck.price),
    },
    { is: 'part-work', bags: cents(bagOrder.total * bags.hours * bags.labour), truck: 0 },
    {
      is: 'part-wheeling',
      bags: 0,
      truck: cents(onSite * truck.wheelers * truck.labour),
    },
    { is: 'order-mixer-hire', bags: hire, truck: 0 },
    {
      is: 'order-short-load',
      bags: 0,
      truck: volume < truck.short ? truck.flat + cents(missing * truck.missing) : 0,
    },
    {
      is: 'order-waiting',
      bags: 0,
      truck: cents(Math.max(0, onSite - truck.free) * truck.waiting),
    },
  ];
  const bagCost = added(parts.map((part) => part.bags));
  const truckCost = added(parts.map((part) => part.truck));
  if (bagCost === undefined || truckCost === undefined) return 'too-dear';
  return {
    volume: mix.needed,
    bags: bagOrder.total,
    readyMix: count,
    onSite,
    parts: parts.filter((part) => part.bags > 0 || part.truck > 0),
    bagCost,
    truckCost,
    rates,
    breakEvens: breakEvens(bags, truck),
  };
}

function ratesOf(job: Job): { readonly bags: BagRates; readonly truck: TruckRates } | Asked {
  const order = orderOf(job.practices);
  const { readyMix } = order;
  const blend = mixParts(job.practices);
  const { one, mark } = soldBy(job);
  const bag = 'code' in blend ? undefined : bagPrice(job, blend);
  const labour = priceOf(job, 'labour-hour');
  const hire = priceOf(job, 'mixer-hire');
  const price = priceOf(job, `ready-mix-${mark}`);
  const flat = priceOf(job, 'short-load');
  const missing = priceOf(job, `missing-${mark}`);
  const waiting = priceOf(job, 'waiting-minute');
  const { least, short, free, walk } = readyMix;
  const asked: OrderTermKey[] = [];
  const need = (is: OrderTermKey, known: boolean) => {
    if (!known) asked.push(is);
  };
  need('order-bag', bag !== undefined);
  need('order-mixer-hire', hire !== undefined);
  need('price-labour', labour !== undefined);
  need('order-ready-mix', price !== undefined);
  need('rate-least', least !== undefined);
  need('rate-short', short !== undefined);
  need('order-short-load', short === 0 || flat !== undefined || missing !== undefined);
  need('rate-free', free !== undefined);
  need('order-waiting', waiting !== undefined);
  need('rate-walk', walk !== undefined);
  if (
    'code' in blend ||
    bag === undefined ||
    hire === undefined ||
    labour === undefined ||
    price === undefined ||
    least === undefined ||
    short === undefined ||
    free === undefined ||
    waiting === undefined ||
    walk === undefined ||
    asked.length > 0
  ) {
    return { asked };
  }
  const run = walk > 0 ? (2 * walk) / readyMix.pace + readyMix.lost : 0;
  const wheeling = run / readyMix.barrow / readyMix.barrows;
  return {
    bags: { bag, yield: meanYield(blend), hours: order.bags.hours, labour, hire },
    truck: {
      unit: one,
      price,
      least,
      short,
      flat: flat ?? 0,
      missing: missing ?? 0,
      onSite: Math.max(readyMix.unload, wheeling),
      free,
      waiting: waiting * 60,
      wheelers: walk > 0 ? readyMix.barrows : 0,
      labour,
    },
  };
}
