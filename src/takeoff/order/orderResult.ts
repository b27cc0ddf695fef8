import type { BagMix } from '../../job/job.ts';
import type { Task } from '../../job/order.ts';
import type { Money } from '../../units/money.ts';
import type { Quantity } from '../figure.ts';
import type { BidSums } from '../price/bid.ts';
import type { BagRates, BreakEven, TruckRates } from '../truck/costs.ts';
import type { Haul } from '../truck/haulOrder.ts';
import type { OrderTermKey } from './keys.ts';
import type { OrderLine } from './line.ts';
import type { Spare } from './spare.ts';

/** The bags that are bought, mix by mix: those of the mix's ticket, and spare ones. */
export interface BagOrder {
  readonly bags: readonly { readonly mix: BagMix; readonly count: number }[];
  readonly total: number;
  /** Beyond the ticket's. */
  readonly spare: number;
  /** How the spare was reckoned; absent where its costs aren't known, or one too many costs nothing. */
  readonly by?: Spare;
  /** Both costs are known, but no number of bags is enough. */
  readonly noEnd: boolean;
  /** Whole pallets of one mix; absent where nobody said how many bags one holds. */
  readonly pallets?: number;
  readonly deposit?: Money;
}

/** What is laid under the slab: compacted as it lies, loose as it is bought; cubic grid units. */
export interface BaseNeed {
  readonly compacted: number;
  readonly loose: number;
}

/** One part of what concrete costs, each way. */
export interface CostPart {
  readonly is: OrderTermKey;
  readonly bags: Money;
  readonly truck: Money;
}

/** Concrete from bags and from a truck, side by side, for the volume of this job. */
export interface Comparison {
  /** What is compared: net and allowance, cubic grid units. */
  readonly volume: number;
  /** As ordered: whole bags, and quarters of what ready-mix is sold by. */
  readonly bags: number;
  readonly readyMix: number;
  /** Hours that the truck is on site. */
  readonly onSite: number;
  readonly parts: readonly CostPart[];
  readonly bagCost: Money;
  readonly truckCost: Money;
  readonly rates: { readonly bags: BagRates; readonly truck: TruckRates };
  readonly breakEvens: readonly BreakEven[];
}

/** Hours of one task: typed for this job, or by the practices' rate; absent where neither is known. */
export interface TaskHours {
  readonly task: Task;
  /** How much of it there is; absent for what isn't measured. */
  readonly size?: Quantity;
  readonly hours?: number;
  readonly from: 'typed' | 'rate' | 'missing';
}

/** What is bought, how it gets there, and what the job is offered for. */
export interface OrderResult {
  readonly lines: readonly OrderLine[];
  /** Of the lines with a price; absent where there is none. */
  readonly money?: Money;
  /** Lines without a price: they are in no sum. */
  readonly unpriced: number;
  /** Absent where there is no mix; both ways are known whichever is bought. */
  readonly bags?: BagOrder;
  /** In what it is sold by. */
  readonly readyMix?: number;
  readonly base?: BaseNeed;
  readonly retarder?: { readonly covered: number; readonly rolls: number };
  /** Curing compound, cubic grid units. */
  readonly cure?: number;
  readonly compare?: Comparison;
  readonly haul?: Haul;
  readonly labour: readonly TaskHours[];
  readonly bid?: BidSums;
}
