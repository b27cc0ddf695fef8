import { demoJob } from '../../../src/job/demo.ts';
import type { Job } from '../../../src/job/job.ts';
import type { OrderPractices } from '../../../src/job/order.ts';
import { orderOf } from '../../../src/job/orderDefaults.ts';
import { withPrices } from '../../../src/job/prices.ts';
import { rectangleJob } from '../../../src/job/start.ts';
import { priceItems } from '../../../src/takeoff/price/items.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { CUBIC_YARD, FOOT, INCH, POUND_KG } from '../../../src/units/grid.ts';
import { MOST_MONEY } from '../../../src/units/money.ts';

export function slab(): Job {
  const made = rectangleJob(12 * FOOT, 10 * FOOT);
  if (!made.ok) throw new Error('A rectangle is a job.');
  return made.value;
}

export function ordering(job: Job, change: Partial<OrderPractices>): Job {
  return {
    ...job,
    practices: { ...job.practices, order: { ...orderOf(job.practices), ...change } },
  };
}

/** Every item that a job asks a price for gets one: 1.00, 2.00, 3.00… */
function allPriced(job: Job): Job {
  const items = priceItems(job, takeoff(job).order!);
  return withPrices(
    job,
    items.map(({ item }, i) => ({ item, price: (i + 1) * 100 })),
  );
}

/** With everything asked for typed. */
export function fullJob(): Job {
  const job = ordering(demoJob(), {
    readyMix: {
      ...orderOf(demoJob().practices).readyMix,
      least: CUBIC_YARD,
      short: 4 * CUBIC_YARD,
      free: 0.5,
      walk: 60 * FOOT,
    },
    haul: {
      ...orderOf(demoJob().practices).haul,
      truck: 1_500 * POUND_KG,
      riding: 400 * POUND_KG,
      trailer: 2_000 * POUND_KG,
    },
  });
  const { practices } = job;
  const hours = (['base', 'forms', 'steel', 'place', 'finish', 'strip', 'haul'] as const).map(
    (task) => ({ task, hours: 2 }),
  );
  return allPriced({
    ...job,
    practices: { ...practices, base: { depth: FOOT / 3, retarder: true } },
    bid: {
      scope: '',
      hours,
      extras: [{ id: 'x1', name: 'Fuel', count: 2.5, price: 399, weight: 3 }],
    },
  });
}

type Part<K extends keyof OrderPractices> = Partial<OrderPractices[K]>;

function full<K extends 'bags' | 'base' | 'retarder' | 'haul'>(part: K, change: Part<K>): Job {
  const job = fullJob();
  return ordering(job, { [part]: { ...orderOf(job.practices)[part], ...change } });
}

function fullAtPrice(item: string, price: number): Job {
  return withPrices(fullJob(), [{ item, price }]);
}

function withMixes(weight: number): Job {
  const job = fullJob();
  const { mix } = job.practices;
  const mixes = mix.mixes.map((one) => ({ ...one, weight }));
  return { ...job, practices: { ...job.practices, mix: { ...mix, mixes } } };
}

/** Jobs that between them say everything there is to say of an order. */
export const ORDER_TROUBLES: Readonly<Record<string, Job>> = {
  full: fullJob(),
  shrink: full('base', { means: 'shrink' }),
  lapWide: full('retarder', { width: 6 * INCH }),
  nothingLeft: full('haul', { truck: POUND_KG, riding: 2 * POUND_KG }),
  pieceHeavy: ordering(fullJob(), {
    haul: { lumber: 500, truck: 40 * POUND_KG },
  }),
  belowPallet: ordering(fullJob(), { haul: { lumber: 500, truck: 1_000 * POUND_KG } }),
  tooDear: fullAtPrice('one-short', MOST_MONEY),
  dear: allPricedAt(MOST_MONEY),
  noEnd: fullAtPrice('one-over', 0),
  jobs: full('bags', { jobs: 5 }),
  covered: full('bags', { over: 0, spread: 0.001 }),
  noReturns: full('bags', { returns: false }),
  ownBags: withMixes(55 * POUND_KG),
  readyMix: ordering(fullJob(), { concrete: 'ready-mix' }),
  manyTrips: manyTrips(),
};

function allPricedAt(price: number): Job {
  const job = fullJob();
  return withPrices(
    job,
    priceItems(job, takeoff(job).order!).map(({ item }) => ({ item, price })),
  );
}

/** A slab as large as a field, fetched a bag at a time. */
function manyTrips(): Job {
  const made = rectangleJob(200 * FOOT, 100 * FOOT);
  if (!made.ok) throw new Error('A rectangle is a job.');
  return ordering(made.value, { haul: { lumber: 500, truck: 200 * POUND_KG } });
}
