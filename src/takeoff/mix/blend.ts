import { wholeVolume } from './rules.ts';

/** One mix of a blend: how many parts (by bags, in quarters) it is, and what a bag makes, cubic grid units. */
export interface BlendPart {
  readonly parts: number;
  readonly yield: number;
}

/** One mix alone, or two. */
export type BlendParts = readonly [BlendPart] | readonly [BlendPart, BlendPart];

/** What bags are counted in: whole ones, or halves. */
export type Step = 1 | 0.5;

/** Parts as whole numbers, in the parts' order: 8 and 6 for 2 to 1 1/2. */
export function quarters(blend: BlendParts): readonly number[] {
  return blend.map(({ parts }) => parts * 4);
}

/** So many bags in all, as near to the parts as the step allows; half a step goes to the first mix. In the parts' order. */
export function splitBags(bags: number, blend: BlendParts, step: Step = 1): readonly number[] {
  const [main, other] = quarters(blend) as [number, number?];
  if (other === undefined) return [bags];
  const all = main + other;
  const steps = bags / step;
  const first = Math.floor((2 * steps * main + all) / (2 * all));
  return [first * step, (steps - first) * step];
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
 * The fewest bags that make at least `needed` (cubic grid units), split as near to the parts as the step allows. More
 * bags in all never mean fewer of either mix, so the fewest is found by halving.
 */
export function fewestBags(needed: number, blend: BlendParts, step: Step = 1): readonly number[] {
  const target = wholeVolume(needed);
  const enough = (steps: number) => madeBy(splitBags(steps * step, blend, step), blend) >= target;
  let most = 1;
  while (!enough(most)) most *= 2;
  let least = 0;
  while (least < most) {
    const half = Math.floor((least + most) / 2);
    if (enough(half)) most = half;
    else least = half + 1;
  }
  return splitBags(least * step, blend, step);
}
