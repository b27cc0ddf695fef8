import * as v from 'valibot';
import { CUBIC_METRE, INCH, METRE } from '../units/grid.ts';
import { MOST_MONEY } from '../units/money.ts';
import { TASKS } from './order.ts';
import { id, positive, text, whole } from './schemaParts.ts';
import { TEXT_MOST } from './textLimits.ts';

/** No more prices or lines than this are on any list. Our own limit. */
export const MOST_PRICES = 1_000;
const MOST_HOURS = 100_000;

const money = whole(0, MOST_MONEY);
const share = v.pipe(v.number(), v.minValue(0), v.maxValue(1));
/** A share of the price: all of it would leave nothing to pay the cost with. */
const partShare = v.pipe(v.number(), v.minValue(0), v.maxValue(0.95));
const upTo = (most: number) => v.pipe(v.number(), v.minValue(0), v.maxValue(most));
const hours = upTo(MOST_HOURS);
const volume = positive(1_000 * CUBIC_METRE);
const task = v.picklist(TASKS);
/** The id of a row with what it is a row of in front. */
const item = v.pipe(v.string(), v.regex(/^[A-Za-z0-9_-]{1,60}$/));
const taskHours = v.strictObject({ task, hours });

export const pricesSchema = v.pipe(
  v.array(v.strictObject({ item, price: money })),
  v.maxLength(MOST_PRICES),
);

export const orderSchema = v.strictObject({
  prices: pricesSchema,
  concrete: v.picklist(['bags', 'ready-mix']),
  bags: v.strictObject({
    perPallet: v.exactOptional(whole(1, 1_000)),
    returns: v.boolean(),
    over: share,
    spread: share,
    jobs: whole(0, 10_000),
    hours: upTo(100),
  }),
  base: v.strictObject({
    shrink: partShare,
    means: v.picklist(['swell', 'shrink']),
    weight: positive(10_000),
  }),
  retarder: v.strictObject({
    width: whole(INCH, 100 * METRE),
    length: whole(INCH, 1_000 * METRE),
    lap: whole(0, 10 * METRE),
  }),
  cure: v.strictObject({ use: v.boolean(), coverage: positive(10), can: volume }),
  readyMix: v.strictObject({
    soldBy: v.picklist(['cubic-yard', 'cubic-metre']),
    least: v.exactOptional(upTo(1_000 * CUBIC_METRE)),
    short: v.exactOptional(upTo(1_000 * CUBIC_METRE)),
    unload: upTo(1),
    free: v.exactOptional(upTo(100)),
    walk: v.exactOptional(whole(0, 1_000 * METRE)),
    barrow: volume,
    pace: positive(100_000 * METRE),
    lost: upTo(100),
    barrows: whole(1, 100),
  }),
  haul: v.strictObject({
    truck: v.exactOptional(upTo(100_000)),
    trailer: v.exactOptional(upTo(100_000)),
    riding: v.exactOptional(upTo(100_000)),
    lumber: positive(10_000),
  }),
  bid: v.strictObject({
    rates: v.pipe(v.array(taskHours), v.maxLength(TASKS.length)),
    overhead: upTo(10),
    profitBy: v.picklist(['margin', 'markup']),
    profit: partShare,
    tax: share,
    taxOn: v.picklist(['materials', 'all', 'none']),
    step: whole(1, 1_000_000),
    exclusions: text(TEXT_MOST.terms),
    terms: text(TEXT_MOST.terms),
  }),
});

export const bidSchema = v.strictObject({
  scope: text(TEXT_MOST.terms),
  hours: v.pipe(v.array(taskHours), v.maxLength(TASKS.length)),
  extras: v.pipe(
    v.array(
      v.strictObject({
        id,
        name: text(TEXT_MOST.name),
        count: positive(1_000_000),
        price: v.exactOptional(money),
        weight: v.exactOptional(upTo(100_000)),
      }),
    ),
    v.maxLength(200),
  ),
});
