import { MipWriter, type Term } from '../solver/mip.ts';
import { everyPattern, type Likes, type Pattern } from './patterns.ts';
import type { BoardCost, BoardProblem, Stock } from './plan.ts';
import { WEIGHED } from './searchStage.ts';

/**
 * How often each pattern is cut: rows for the likes, then for the boards, then for what is held.
 * @param taken How often each is cut at least.
 */
export function patternModel(
  problem: BoardProblem,
  counts: ReadonlyMap<Stock, number>,
  likes: readonly Likes[],
  patterns: readonly Pattern[],
  limits: Partial<BoardCost>,
  taken: readonly number[] = [],
): MipWriter {
  const mip = new MipWriter();
  for (const [nth, { stock }] of patterns.entries()) {
    mip.whole(taken[nth] ?? 0, counts.get(stock) ?? 0);
  }
  const likeRows = likes.map((): Term[] => []);
  const stockRows = new Map<Stock, Term[]>([...counts.keys()].map((stock) => [stock, []]));
  for (const [column, pattern] of patterns.entries()) {
    for (const [nth, count] of pattern.counts.entries()) {
      if (count > 0) likeRows[nth]!.push([column, count]);
    }
    stockRows.get(pattern.stock)?.push([column, 1]);
  }
  for (const [nth, { demands }] of likes.entries()) {
    mip.row(demands.length, likeRows[nth]!, demands.length);
  }
  for (const [stock, terms] of stockRows) mip.atMost(terms, counts.get(stock)!);
  for (const held of WEIGHED) {
    const most = limits[held];
    if (most === undefined) continue;
    const { terms, unit, offset } = weighed(problem, patterns, held);
    mip.atMost(terms, Math.round((most - offset) / unit));
  }
  return mip;
}

/** What one board cut by a pattern comes to. */
function costOf({ stock, pieces, usedUp }: Pattern, of: keyof BoardCost): number {
  if (of === 'price') return stock.price;
  if (of === 'waste') return stock.length;
  return of === 'cuts' ? pieces - (usedUp ? 1 : 0) : 0;
}

/** One of the four in the largest unit in which it is whole, and what a plan comes to besides. */
export function weighed(
  { demands, stock }: BoardProblem,
  patterns: readonly Pattern[],
  of: keyof BoardCost,
) {
  const whole = {
    price: stock.map(({ price }) => price),
    waste: stock.map(({ length }) => length),
  };
  const unit = of in whole ? whole[of as 'price' | 'waste'].reduce(common, 0) || 1 : 1;
  const terms = patterns.map((pattern, nth): Term => [nth, costOf(pattern, of) / unit]);
  const offset = of === 'waste' ? -demands.reduce((sum, { need }) => sum + need, 0) : 0;
  return { terms, unit, offset };
}

/** Every pattern of every board, for no more than so many of each; undefined when there are more than `most`. */
export function allPatterns(
  problem: BoardProblem,
  likes: readonly Likes[],
  open: readonly number[],
  counts: ReadonlyMap<Stock, number>,
  most: number,
): readonly Pattern[] | undefined {
  const all: Pattern[] = [];
  for (const [stock, count] of counts) {
    if (count === 0) continue;
    const patterns = everyPattern(problem, likes, open, stock, most - all.length);
    if (!patterns) return undefined;
    all.push(...patterns);
  }
  return all;
}

/** Each pattern once, the first of them. */
export function distinct(patterns: readonly Pattern[]): readonly Pattern[] {
  const known = new Map<Stock, Set<string>>();
  return patterns.filter(({ stock, counts }) => {
    const of = known.get(stock) ?? new Set();
    known.set(stock, of);
    const key = counts.join();
    if (of.has(key)) return false;
    of.add(key);
    return true;
  });
}

function common(a: number, b: number): number {
  return b === 0 ? a : common(b, a % b);
}
