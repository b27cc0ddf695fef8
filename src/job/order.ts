import type { Grid } from '../units/grid.ts';
import type { Money } from '../units/money.ts';

/** What one of something costs. `item` names it: see takeoff/price/items.ts. */
export interface ItemPrice {
  readonly item: string;
  readonly price: Money;
}

/** Work that hours are reckoned for, in the order of the day. */
export const TASKS = [
  'base',
  'forms',
  'steel',
  'place',
  'finish',
  'strip',
  'haul',
  'other',
] as const;
export type Task = (typeof TASKS)[number];

/** The user's own rules of ordering, hauling and pricing: the same from job to job. */
export interface OrderPractices {
  /** Boards, mesh and bars have theirs in their own lists. */
  readonly prices: readonly ItemPrice[];
  readonly concrete: 'bags' | 'ready-mix';
  readonly bags: {
    /** Absent: from the published table, by the weight of the bag. */
    readonly perPallet?: number;
    /** Whether the yard takes back whole bags. */
    readonly returns: boolean;
    /** What is used on the average beyond the net, and how far single jobs stray from that: shares of the net. */
    readonly over: number;
    readonly spread: number;
    /** Jobs of one's own that the two come from; 0 for a guess. */
    readonly jobs: number;
    /** Hours of one person's work a bag, mixing and wheeling. */
    readonly hours: number;
  };
  readonly base: {
    readonly shrink: number;
    /** What a shrinkage of 25 % means. swell: loose = compacted × 1.25. shrink: loose = compacted ÷ 0.75. */
    readonly means: 'swell' | 'shrink';
    /** kg/m³, loose. */
    readonly weight: number;
  };
  readonly retarder: { readonly width: Grid; readonly length: Grid; readonly lap: Grid };
  readonly cure: {
    readonly use: boolean;
    /** Square grid units that one cubic grid unit covers. */
    readonly coverage: number;
    /** What one can holds, cubic grid units. */
    readonly can: number;
  };
  readonly readyMix: {
    readonly soldBy: 'cubic-yard' | 'cubic-metre';
    /** Cubic grid units. least: billed though less is taken. short: below this a load is a short one. */
    readonly least?: number;
    readonly short?: number;
    /** Hours that a cubic grid unit takes down the chute. */
    readonly unload: number;
    /** Hours on site that aren't billed. */
    readonly free?: number;
    /** From the end of the chute to the pad; 0 where it reaches. */
    readonly walk?: Grid;
    readonly barrow: number;
    /** Grid units an hour, walking. */
    readonly pace: number;
    /** Hours lost a trip, filling and dumping. */
    readonly lost: number;
    readonly barrows: number;
  };
  readonly haul: {
    /** kg, from the stickers. */
    readonly truck?: number;
    readonly trailer?: number;
    /** kg of people, mixer, tools and what else rides along. */
    readonly riding?: number;
    /** kg/m³ of form lumber. */
    readonly lumber: number;
  };
  readonly bid: {
    /** Hours of one person's work for one unit of a task: a metre, a square metre, a cubic metre, a trip. */
    readonly rates: readonly { readonly task: Task; readonly hours: number }[];
    /** Share of materials and labour. */
    readonly overhead: number;
    /** margin: share of the price. markup: share of what it costs. */
    readonly profitBy: 'margin' | 'markup';
    readonly profit: number;
    readonly tax: number;
    readonly taxOn: 'materials' | 'all' | 'none';
    /** The price is rounded up to a whole one of these. */
    readonly step: Money;
    readonly exclusions: string;
    readonly terms: string;
  };
}

/** Something bought besides what the sketch asks for. */
export interface ExtraLine {
  readonly id: string;
  readonly name: string;
  /** To a thousandth. */
  readonly count: number;
  /** Of one. */
  readonly price?: Money;
  /** kg of one. */
  readonly weight?: number;
}

/** What is offered for this job alone. */
export interface Bid {
  readonly scope: string;
  /** Hours of one person's work, typed; a task that isn't listed goes by the practices' rate. */
  readonly hours: readonly { readonly task: Task; readonly hours: number }[];
  readonly extras: readonly ExtraLine[];
}
