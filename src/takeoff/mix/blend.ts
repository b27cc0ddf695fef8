import { wholeVolume } from './rules.ts';

/** One mix of a blend: how many parts (by bags, whole) it is, and what a bag makes, cubic grid units. */
export interface BlendPart {
  readonly parts: number;
  readonly yield: number;
}

/** One mix alone, or two. */
export type BlendParts = readonly [BlendPart] | readonly [BlendPart, BlendPart];

/** So many bags in all, as near to the parts as whole bags allow; a half goes to the first mix. In the parts' order. */
export function splitBags(bags: number, blend: BlendParts): readonly number[] {
  const [main, other] = blend;
  if (!other) return [bags];
  const all = main.parts + other.parts;
  const first = Math.floor((2 * bags * main.parts + all) / (2 * all));
  return [first, bags - first];
}

/** Concrete that so many bags of each make, whole cubic millimetres, in cubic grid units. */
export function madeBy(bags: readonly number[], blend: readonly BlendPart[]): number {
  return wholeVolume(blend.reduce((sum, part, i) => sum + bags[i]! * part.yield, 0));
}

/** What a bag makes on the average of the blend, cubic grid units. */
export function meanYield(blend: BlendParts): number {
  const all = blend.reduce((sum, { parts }) => sum + parts, 0);
  return blend.reduce((sum, part) => sum + part.parts * part.yield, 0) / all;
}

/**
 * The fewest bags that make at least `needed` (cubic grid units), split as near to the parts as whole bags allow. More
 * bags in all never mean fewer of either mix, so the fewest is found by halving.
 */
export function fewestBags(needed: number, blend: BlendParts): readonly number[] {
  const target = wholeVolume(needed);
  const enough = (bags: number) => madeBy(splitBags(bags, blend), blend) >= target;
  let most = 1;
  while (!enough(most)) most *= 2;
  let least = 0;
  while (least < most) {
    const half = Math.floor((least + most) / 2);
    if (enough(half)) most = half;
    else least = half + 1;
  }
  return splitBags(least, blend);
}
