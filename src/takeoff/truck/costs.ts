import type { Money } from '../../units/money.ts';

/** What concrete from bags costs. Volumes are cubic grid units, times hours. */
export interface BagRates {
  /** Of one bag, on the average of the blend. */
  readonly bag: number;
  readonly yield: number;
  /** Of one person's work a bag, and what an hour of it costs. */
  readonly hours: number;
  readonly labour: Money;
  readonly hire: Money;
}

/** What concrete from a truck costs. */
export interface TruckRates {
  /** What it is sold by, and the price of one. */
  readonly unit: number;
  readonly price: Money;
  /** Billed though less is taken; a load below `short` pays the flat fee, and the other one for each unit missing. */
  readonly least: number;
  readonly short: number;
  readonly flat: Money;
  readonly missing: Money;
  /** Hours on site for a cubic grid unit, and how many of them are free. */
  readonly onSite: number;
  readonly free: number;
  /** Of an hour beyond. */
  readonly waiting: Money;
  /** People who wheel; 0 where the chute reaches. */
  readonly wheelers: number;
  readonly labour: Money;
}

/** Costs in cents as a straight line over volume, from a volume on: `at + slope · (V − from)`. */
interface Stretch {
  readonly from: number;
  readonly at: number;
  readonly slope: number;
}

/** What bags come to for a volume, cents, part bags and all: the line that the whole bags step along. */
export function bagCost(rates: BagRates, volume: number): number {
  return rates.hire + (volume / rates.yield) * (rates.bag + rates.hours * rates.labour);
}

/** What a truck comes to for a volume, cents, any amount of it: the line that whole quarters step along. */
export function truckCost(rates: TruckRates, volume: number): number {
  const { unit, price, least, short, flat, missing, onSite, free, waiting } = rates;
  const hours = volume * onSite;
  return (
    (Math.max(volume, least) / unit) * price +
    (volume < short ? flat + ((short - volume) / unit) * missing : 0) +
    Math.max(0, hours - free) * waiting +
    hours * rates.wheelers * rates.labour
  );
}

/** Where the truck's line bends or jumps. */
function bends({ least, short, onSite, free, waiting }: TruckRates): readonly number[] {
  const waits = waiting > 0 && onSite > 0 ? [free / onSite] : [];
  return [...new Set([0, least, short, ...waits])].sort((a, b) => a - b);
}

/** The truck's cost, stretch by stretch: within each it is a straight line. */
function stretches(rates: TruckRates): readonly Stretch[] {
  const { unit, price, least, short, missing, onSite, free, waiting } = rates;
  return bends(rates).map((from, i, all) => {
    // What holds in the middle holds all over: at the bend itself a hair decides.
    const middle = (from + (all[i + 1] ?? from + 2 * unit)) / 2;
    return {
      from,
      // At its own beginning, so that a fee that ends there has ended.
      at: truckCost(rates, from),
      slope:
        (middle > least ? price / unit : 0) -
        (middle < short ? missing / unit : 0) +
        (middle * onSite > free ? onSite * waiting : 0) +
        onSite * rates.wheelers * rates.labour,
    };
  });
}

/** A volume from which on the other of the two is the cheaper. */
export interface BreakEven {
  readonly volume: number;
  readonly cheaper: 'bags' | 'truck';
}

/**
 * Every volume at which the cheaper of the two changes, in order, in closed form: bags cost a straight line, a truck one
 * of several stretches. Where the truck's fee ends, its cost drops, and the change may fall right there.
 */
export function breakEvens(bags: BagRates, truck: TruckRates): readonly BreakEven[] {
  const slope = (bags.bag + bags.hours * bags.labour) / bags.yield;
  const found: BreakEven[] = [];
  const all = stretches(truck);
  // A truck that costs as little as bags do is the cheaper: nobody lifts a bag then.
  const cheaper = (more: number) => (more >= 0 ? 'truck' : 'bags');
  let now: BreakEven['cheaper'] | undefined;
  all.forEach(({ from, at, slope: truckSlope }, i) => {
    const more = bagCost(bags, from) - at;
    // Bags that cost as much here, and more from here on, are dearer.
    const begins = cheaper(more === 0 ? slope - truckSlope : more);
    if (now !== undefined && begins !== now) found.push({ volume: from, cheaper: begins });
    now = begins;
    const to = all[i + 1]?.from ?? Number.POSITIVE_INFINITY;
    const crossing = more === 0 ? from : from + more / (truckSlope - slope);
    if (crossing > from && crossing < to) {
      now = now === 'bags' ? 'truck' : 'bags';
      found.push({ volume: crossing, cheaper: now });
    }
  });
  return found;
}
