import { type BlendParts, madeBy } from './blend.ts';
import { wholeVolume } from './rules.ts';

/** How bags go through a mixer: bags of each mix in a full batch, and in the last. */
export interface Loads {
  readonly batches: number;
  readonly full: readonly number[];
  readonly last: readonly number[];
  /** A full batch takes part bags, which have to be weighed out. */
  readonly partBags: boolean;
}

/**
 * Batches that each hold the parts in proportion: as many whole sets of parts as the mixer holds (a set is the fewest
 * whole bags in those parts: 3 and 1 for 6 to 2). A mixer that doesn't hold one set takes three quarters of it, half or a
 * quarter. What is left after the full batches is the last one; if the mixer can't hold that either, it is shared evenly
 * by the last ones. Common practice, no source.
 * @param size What the mixer holds as mixed concrete, cubic grid units.
 * @returns nothing when the mixer doesn't hold a quarter of a set
 */
export function loads(bags: readonly number[], blend: BlendParts, size: number): Loads | undefined {
  const room = wholeVolume(size);
  const common = blend.map(({ parts }) => parts).reduce(greatestCommon);
  const set = blend.map(({ parts }) => parts / common);
  const setsMake = (sets: number) => madeBy(scaled(set, sets), blend);
  const sets =
    mostWhole(room, setsMake) || [0.75, 0.5, 0.25].find((part) => setsMake(part) <= room);
  if (!sets) return undefined;
  const full = scaled(set, sets);
  const whole = Math.min(...full.map((each, i) => Math.floor(bags[i]! / each)));
  const left = bags.map((each, i) => each - whole * full[i]!);
  const partBags = full.some((each) => !Number.isInteger(each));
  if (left.every((each) => each === 0)) return { batches: whole, full, last: full, partBags };
  const rest = Math.ceil(madeBy(left, blend) / room);
  return { batches: whole + rest, full, last: scaled(left, 1 / rest), partBags };
}

function scaled(bags: readonly number[], by: number): readonly number[] {
  return bags.map((each) => each * by);
}

/** The most whole sets that a mixer has room for. */
function mostWhole(room: number, made: (sets: number) => number): number {
  // The quotient is a float: whole volumes decide.
  let sets = Math.floor(room / made(1));
  while (made(sets + 1) <= room) sets++;
  while (sets > 0 && made(sets) > room) sets--;
  return sets;
}

function greatestCommon(a: number, b: number): number {
  return b === 0 ? a : greatestCommon(b, a % b);
}
