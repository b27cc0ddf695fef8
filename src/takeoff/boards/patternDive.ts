import type { Solver } from '../solver/mip.ts';
import { allPatterns, distinct, patternModel, weighed } from './patternModel.ts';
import type { Likes, Pattern } from './patterns.ts';
import type { BoardProblem, Stock } from './plan.ts';
import type { Stage } from './searchStage.ts';

/** So few runs are left that all their patterns are written down, and the best of them found. */
const MOST_PATTERNS = 1500;

/**
 * A plan from the model without whole numbers: of the patterns that it cuts more often than not, each is cut; the model
 * is asked again for what is left, until little enough is left to be solved with every pattern that there is. Most often
 * this is the best plan, found sooner than by the whole model. Undefined when it leads nowhere.
 */
export function dive(
  problem: BoardProblem,
  solver: Solver,
  counts: ReadonlyMap<Stock, number>,
  likes: readonly Likes[],
  patterns: readonly Pattern[],
  { of, limits, seconds }: Stage,
): readonly (readonly [Pattern, number])[] | undefined {
  const taken = patterns.map(() => 0);
  const open = likes.map(({ demands }) => demands.length);
  const left = new Map(counts);
  const takes = (nth: number): boolean => {
    const { stock, counts: each } = patterns[nth]!;
    if (left.get(stock) === 0 || each.some((count, at) => count > open[at]!)) return false;
    for (const [at, count] of each.entries()) open[at] = open[at]! - count;
    left.set(stock, left.get(stock)! - 1);
    taken[nth] = taken[nth]! + 1;
    return true;
  };
  while (seconds() > 0) {
    const rest = allPatterns(problem, likes, open, left, MOST_PATTERNS);
    if (rest) {
      const all = distinct([...patterns.filter((_, nth) => taken[nth]! > 0), ...rest]);
      const held = all.map((one) => taken[patterns.indexOf(one)] ?? 0);
      const model = patternModel(problem, counts, likes, all, limits, held);
      const { terms } = weighed(problem, all, of);
      const found = solver.least(model, terms, { seconds: seconds() });
      if (!('values' in found)) return undefined;
      return all.map((one, nth) => [one, Math.round(found.values[nth]!)]);
    }
    const model = patternModel(problem, counts, likes, patterns, limits, taken);
    const priced = solver.relaxed(model, weighed(problem, patterns, of).terms, seconds());
    if (!priced) return undefined;
    const more = priced.values
      .map((value, nth) => ({ nth, value: value - taken[nth]! }))
      .filter(({ value }) => value > 1e-6)
      .sort((a, b) => b.value - a.value);
    let one = false;
    for (const { nth, value } of more) {
      if (one && value < 0.6) break;
      for (let times = Math.max(1, Math.floor(value + 0.4)); times > 0 && takes(nth); times--) {
        one = true;
      }
    }
    if (!one) return undefined;
  }
  return undefined;
}
