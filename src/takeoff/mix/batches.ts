import { type BlendParts, madeBy, quarters, type Step, splitBags } from './blend.ts';
import { wholeVolume } from './rules.ts';

/** How bags go through a mixer: bags of each mix in a full batch, and in the last. */
export interface Loads {
  readonly batches: number;
  readonly full: readonly number[];
  readonly last: readonly number[];
  /** Of each mix, in all batches: (batches − 1) × full + last. */
  readonly mixed: readonly number[];
}

/**
 * The fewest bags in the blend's parts: 3 and 1 for 6 to 2. For 2 to 1 1/2 that is 4 and 3 in whole bags, 2 and 1 1/2
 * where half bags go in.
 */
export function setOf(blend: BlendParts, step: Step): readonly number[] {
  const parts = quarters(blend);
  const common = parts.reduce(greatestCommon);
  return parts.map((each) => (each / common) * step);
}

/**
 * Batches that each hold the parts in proportion: as many whole sets of parts as the mixer holds, and what is left after
 * them in a last one, itself as near to the parts as the step allows. A last batch that would have none of one mix is made
 * larger until it has some: without it that concrete would be another. Common practice, no source.
 * @param bags Of each mix, split as splitBags does.
 * @param size What the mixer holds as mixed concrete, cubic grid units.
 * @returns nothing when the mixer doesn't hold one set
 */
export function loads(
  bags: readonly number[],
  blend: BlendParts,
  size: number,
  step: Step = 1,
): Loads | undefined {
  const room = wholeVolume(size);
  const set = setOf(blend, step);
  const sets = mostWhole(room, (many) => madeBy(scaled(set, many), blend));
  if (sets === 0) return undefined;
  const full = scaled(set, sets);
  const whole = Math.min(...full.map((each, i) => Math.floor(bags[i]! / each)));
  const left = totalOf(bags) - whole * totalOf(full);
  if (left === 0) return { batches: whole, full, last: full, mixed: scaled(full, whole) };
  const last = withSomeOfEach(left, blend, step);
  return {
    batches: whole + 1,
    full,
    last,
    mixed: full.map((each, i) => whole * each + last[i]!),
  };
}

/** So many bags or a few more, so that each mix has its share. A set has some of each, so there is an end to it. */
function withSomeOfEach(bags: number, blend: BlendParts, step: Step): readonly number[] {
  let many = bags;
  let split = splitBags(many, blend, step);
  while (split.some((each) => each === 0)) {
    many += step;
    split = splitBags(many, blend, step);
  }
  return split;
}

function totalOf(bags: readonly number[]): number {
  return bags.reduce((sum, each) => sum + each, 0);
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
