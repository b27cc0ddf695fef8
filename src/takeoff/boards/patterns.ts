import type { Grid } from '../../units/grid.ts';
import type { BoardProblem, Stock } from './plan.ts';
import { longBy } from './spliceReach.ts';
import type { LaidPiece, UsedBoard } from './writePlan.ts';

/** Runs that need alike and have room alike, by their places among the demands. */
export interface Likes {
  readonly need: Grid;
  readonly most: Grid;
  readonly demands: readonly number[];
}

/** What one board is cut into: so many pieces for each of the likes. */
export interface Pattern {
  readonly stock: Stock;
  readonly counts: readonly number[];
  readonly pieces: number;
  /** The board is used up, its pieces running long where they must: one cut less than pieces. */
  readonly usedUp: boolean;
}

/** The likes, the longest first. */
export function likesOf({ demands }: BoardProblem): readonly Likes[] {
  const likes = new Map<string, { need: Grid; most: Grid; demands: number[] }>();
  for (const [at, { need, most }] of demands.entries()) {
    const key = `${need} ${most}`;
    const known = likes.get(key);
    if (known) known.demands.push(at);
    else likes.set(key, { need, most, demands: [at] });
  }
  return [...likes.values()].sort((a, b) => b.need - a.need || b.most - a.most);
}

export function patternOf(
  { kerf }: BoardProblem,
  likes: readonly Likes[],
  stock: Stock,
  counts: readonly number[],
): Pattern {
  const pieces = counts.reduce((sum, count) => sum + count, 0);
  const of = (each: (one: Likes) => Grid) =>
    counts.reduce((sum, count, nth) => sum + (count === 0 ? 0 : count * each(likes[nth]!)), 0);
  const sawn = kerf * (pieces - 1);
  const usedUp =
    of(({ need }) => need) + sawn <= stock.length && stock.length <= of(({ most }) => most) + sawn;
  return { stock, counts, pieces, usedUp };
}

/** Every pattern of a board that serves no more than so many of each; undefined when there are more than `most`. */
export function everyPattern(
  problem: BoardProblem,
  likes: readonly Likes[],
  open: readonly number[],
  stock: Stock,
  most: number,
): readonly Pattern[] | undefined {
  const all: Pattern[] = [];
  const counts = likes.map(() => 0);
  const go = (nth: number, rest: Grid): boolean => {
    const one = likes[nth];
    if (!one) {
      if (counts.some((count) => count > 0)) {
        all.push(patternOf(problem, likes, stock, [...counts]));
      }
      return all.length <= most;
    }
    const each = one.need + problem.kerf;
    const fit = Math.min(open[nth]!, Math.floor(rest / each));
    for (let count = fit; count >= 0; count--) {
      counts[nth] = count;
      if (!go(nth + 1, rest - count * each)) return false;
    }
    return true;
  };
  return go(0, stock.length + problem.kerf) ? all : undefined;
}

/** Boards cut by patterns, each taken so often: the pieces given to the runs in turn. */
export function cutBy(
  problem: BoardProblem,
  likes: readonly Likes[],
  taken: readonly (readonly [Pattern, times: number])[],
): readonly UsedBoard[] {
  const waiting = likes.map(({ demands }) => [...demands]);
  return taken.flatMap(([pattern, times]) =>
    Array.from({ length: times }, (): UsedBoard => {
      let rest = pattern.stock.length - problem.kerf * (pattern.pieces - 1);
      for (const [nth, count] of pattern.counts.entries()) rest -= count * likes[nth]!.need;
      const pieces = pattern.counts.flatMap((count, nth) =>
        Array.from({ length: count }, (): LaidPiece => {
          const { need, most } = likes[nth]!;
          const demand = waiting[nth]!.shift()!;
          const long = pattern.usedUp ? Math.min(rest, most - need) : 0;
          rest -= long;
          const from = Math.min(0, longBy(problem.demands[demand]!).end - long);
          return { demand, from, length: need + long };
        }),
      );
      return { stock: pattern.stock, pieces };
    }),
  );
}

/** The patterns by which a plan cuts its boards. */
export function patternsOf(
  problem: BoardProblem,
  likes: readonly Likes[],
  used: readonly UsedBoard[],
): readonly Pattern[] {
  return used.map(({ stock, pieces }) =>
    patternOf(
      problem,
      likes,
      stock,
      likes.map(({ demands }) => pieces.filter(({ demand }) => demands.includes(demand)).length),
    ),
  );
}
