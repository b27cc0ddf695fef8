import {
  CUBIC_FOOT,
  CUBIC_YARD,
  FOOT,
  INCH,
  POUND_PER_CUBIC_FOOT,
  SQUARE_FOOT,
} from '../units/grid.ts';
import type { Job, Practices } from './job.ts';
import type { Bid, OrderPractices } from './order.ts';

const MINUTE = 1 / 60;
const GALLON = 231 * INCH ** 3;

/** What a new job starts with of ordering and pricing. No price and no supplier's term is among it: those are asked for. */
function defaultOrder(): OrderPractices {
  return {
    prices: [],
    concrete: 'bags',
    // Allowances are seen from 3 to 20 %: a twentieth over, give or take a twentieth, until there are jobs to go by.
    // Three people mix and place about 20 bags an hour: common practice.
    bags: { returns: true, over: 0.05, spread: 0.05, jobs: 0, hours: 3 / 20 },
    // Loose gravel weighs 2,700 to 3,000 lb/yd³ (published); a quarter is a common shrinkage, no source.
    base: { shrink: 0.25, means: 'swell', weight: (2_700 / 27) * POUND_PER_CUBIC_FOOT },
    // Rolls of 10 by 100 ft lapped 6 in: common practice, no source.
    retarder: { width: 10 * FOOT, length: 100 * FOOT, lap: 6 * INCH },
    // 200 ft² to the gallon: the usual rate for curing compound, from memory. Read the can.
    cure: { use: true, coverage: (200 * SQUARE_FOOT) / GALLON, can: GALLON },
    readyMix: {
      soldBy: 'cubic-yard',
      // 7 to 10 minutes a cubic yard: common practice.
      unload: (8.5 * MINUTE) / CUBIC_YARD,
      // 2 to 3 ft³ of wet concrete is what a person wheels: common practice.
      barrow: 2.5 * CUBIC_FOOT,
      // 200 ft a minute and three quarters of a minute lost a trip: a handbook of 1908.
      pace: 200 * 60 * FOOT,
      lost: 0.75 * MINUTE,
      barrows: 2,
    },
    // Softwood of the yard: 35 lb/ft³, common practice, no source.
    haul: { lumber: 35 * POUND_PER_CUBIC_FOOT },
    bid: {
      rates: [],
      overhead: 0,
      profitBy: 'markup',
      profit: 0,
      tax: 0,
      taxOn: 'none',
      step: 100,
      exclusions: '',
      terms: '',
    },
  };
}

const DEFAULT_ORDER = defaultOrder();
const EMPTY_BID: Bid = { scope: '', hours: [], extras: [] };

/** The ordering practices, as they were set or as they start. */
export function orderOf({ order = DEFAULT_ORDER }: Pick<Practices, 'order'>): OrderPractices {
  return order;
}

/** The bid, as far as anything of it was written. */
export function bidOf({ bid = EMPTY_BID }: Pick<Job, 'bid'>): Bid {
  return bid;
}
