import { type Likes, type Pattern, patternOf } from './patterns.ts';
import type { BoardProblem, Stock } from './plan.ts';

/** Patterns are gone through up to so many steps; past that the best isn't known. */
const MOST_STEPS = 2_000_000;

/**
 * Patterns of a board that are worth more than `least`, each worth more than the one before, the last the most of all;
 * undefined when there were too many to go through.
 * @param worth What a piece for each of the likes is worth.
 * @param usedUp What it is worth that the board is used up.
 */
export function bestPatterns(
  problem: BoardProblem,
  likes: readonly Likes[],
  stock: Stock,
  worth: readonly number[],
  usedUp: number,
  least: number,
): readonly Pattern[] | undefined {
  const sizes = likes.map(({ need }) => need + problem.kerf);
  const rates = likes.map((_, nth) => worth[nth]! / sizes[nth]!);
  // Where using a board up is worth something, pieces that are worth nothing may still serve.
  const order = [...likes.keys()]
    .filter((nth) => worth[nth]! > 0 || usedUp > 0)
    .sort((a, b) => rates[b]! - rates[a]!);
  const counts = likes.map(() => 0);
  const found: Pattern[] = [];
  let most = least;
  let steps = 0;
  const go = (at: number, rest: number, sum: number): void => {
    if (++steps > MOST_STEPS) return;
    const nth = order[at];
    if (nth === undefined) {
      const pattern = patternOf(problem, likes, stock, [...counts]);
      const all = sum + (pattern.usedUp && pattern.pieces > 0 ? usedUp : 0);
      if (pattern.pieces === 0 || all <= most) return;
      most = all;
      found.push(pattern);
      return;
    }
    if (sum + Math.max(0, rates[nth]!) * rest + usedUp <= most) return;
    const fit = Math.min(likes[nth]!.demands.length, Math.floor(rest / sizes[nth]!));
    for (let count = fit; count >= 0; count--) {
      counts[nth] = count;
      go(at + 1, rest - count * sizes[nth]!, sum + count * worth[nth]!);
    }
    counts[nth] = 0;
  };
  go(0, stock.length + problem.kerf, 0);
  return steps > MOST_STEPS ? undefined : found;
}
