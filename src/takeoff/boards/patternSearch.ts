import type { Solver, Term } from '../solver/mip.ts';
import { bestPatterns } from './bestPattern.ts';
import { dive } from './patternDive.ts';
import { allPatterns, distinct, patternModel, weighed } from './patternModel.ts';
import { cutBy, type Likes, likesOf, type Pattern, patternOf, patternsOf } from './patterns.ts';
import type { BoardCost, BoardProblem, Stock } from './plan.ts';
import { type Stage, type StageEnd, WEIGHED } from './searchStage.ts';
import type { UsedBoard } from './writePlan.ts';
import { reachOf } from './yardCounts.ts';

/** Patterns are all written down up to so many; past that those of use are looked for one after the other. */
const MOST_PATTERNS = 6_000;

interface Choice {
  readonly likes: readonly Likes[];
  readonly patterns: readonly Pattern[];
  /** These are all that there are. */
  readonly whole: boolean;
}

/**
 * The search where no run is spliced: every run is one piece, so a plan is how often each pattern is cut (the cutting
 * stock problem). With few patterns all of them are in the model. With many it grows by those that could better it, until
 * none could: then no plan is better than the model without whole numbers, and most often the patterns at hand reach that.
 */
export function patternSearch(problem: BoardProblem, solver: Solver): (stage: Stage) => StageEnd {
  const likes = likesOf(problem);
  let kept: readonly Pattern[] = [];
  return (stage) => {
    const { of, limits } = stage;
    const best = stage.best();
    const { counts, leastPrice } = reachOf(problem, limits.price ?? best?.cost.price);
    let bound = of === 'price' && Number.isFinite(leastPrice) ? leastPrice : 0;
    if (best && best.cost[of] <= bound) return { is: 'proved' };
    const all = allPatterns(
      problem,
      likes,
      likes.map(({ demands }) => demands.length),
      counts,
      MOST_PATTERNS,
    );
    const patterns = all ?? withBest(problem, likes, kept, best?.used ?? []);
    let choice: Choice = { likes, patterns, whole: all !== undefined };
    const reached = () => (stage.best()?.cost[of] ?? Number.POSITIVE_INFINITY) <= bound;
    const offerTaken = (from: readonly Pattern[]) => (values: readonly number[]) => {
      const taken = from.map((one, nth) => [one, Math.round(values[nth]!)] as const);
      stage.offer(cutBy(problem, likes, taken));
    };
    if (!choice.whole) {
      const grown = grow(problem, solver, counts, choice, stage);
      choice = grown.choice;
      kept = choice.patterns;
      bound = Math.max(bound, grown.bound);
      const dived = dive(problem, solver, counts, likes, choice.patterns, stage);
      if (dived) stage.offer(cutBy(problem, likes, dived));
    }
    const model = patternModel(problem, counts, choice.likes, choice.patterns, limits);
    const { terms, unit, offset } = weighed(problem, choice.patterns, of);
    const offer = offerTaken(choice.patterns);
    if (reached()) return { is: 'proved' };
    model.atLeast(terms, (bound - offset) / unit);
    const found = solver.least(model, terms, {
      seconds: stage.seconds(),
      onBetter: offer,
      ...(best ? { start: startOf(problem, likes, choice.patterns, best.used) } : {}),
    });
    if ('values' in found) offer(found.values);
    if (choice.whole) {
      if (found.is === 'none') return { is: best ? 'proved' : 'none' };
      const known = found.is === 'least' ? found.cost : found.bound;
      if (Number.isFinite(known)) bound = Math.max(bound, Math.ceil(known - 1e-6) * unit + offset);
    }
    return reached() ? { is: 'proved' } : { is: 'open', bound };
  };
}

function withBest(
  problem: BoardProblem,
  likes: readonly Likes[],
  kept: readonly Pattern[],
  best: readonly UsedBoard[],
): readonly Pattern[] {
  return distinct([...kept, ...patternsOf(problem, likes, best)]);
}

function startOf(
  problem: BoardProblem,
  likes: readonly Likes[],
  patterns: readonly Pattern[],
  used: readonly UsedBoard[],
): readonly Term[] {
  const times = new Map<number, number>(patterns.map((_, nth) => [nth, 0]));
  const keys = new Map(
    patterns.map(({ stock, counts }, nth) => [`${stock.from} ${stock.id} ${counts}`, nth]),
  );
  for (const { stock, counts } of patternsOf(problem, likes, used)) {
    const nth = keys.get(`${stock.from} ${stock.id} ${counts}`);
    if (nth === undefined) return [];
    times.set(nth, times.get(nth)! + 1);
  }
  return [...times];
}

/** Patterns added until none betters the model without whole numbers: what that comes to is what no plan goes below. */
function grow(
  problem: BoardProblem,
  solver: Solver,
  counts: ReadonlyMap<Stock, number>,
  from: Choice,
  { of, limits, seconds }: Stage,
): { readonly choice: Choice; readonly bound: number } {
  const { likes } = from;
  const stocks = [...counts].filter(([, count]) => count > 0).map(([stock]) => stock);
  const keys = [...counts.keys()];
  // One piece of each alone, so that there is something to start from whatever the limits.
  const alone = stocks.flatMap((stock) =>
    likes
      .filter(({ need }) => need <= stock.length)
      .map((one) =>
        patternOf(
          problem,
          likes,
          stock,
          likes.map((other) => (other === one ? 1 : 0)),
        ),
      ),
  );
  let patterns = distinct([...from.patterns, ...alone]);
  const choice = () => ({ likes, patterns, whole: false });
  for (;;) {
    const model = patternModel(problem, counts, likes, patterns, limits);
    const { terms, unit, offset } = weighed(problem, patterns, of);
    const priced = seconds() > 0 ? solver.relaxed(model, terms, seconds()) : undefined;
    if (!priced) return { choice: choice(), bound: 0 };
    const { worth } = priced;
    const held = WEIGHED.filter((one) => limits[one] !== undefined).map((one, nth) => ({
      of: one,
      worth: worth[likes.length + keys.length + nth]!,
      unit: weighed(problem, [], one).unit,
    }));
    // What a pattern costs in the model as it stands, in what it counts: a board, a cut.
    const costs = [{ of, worth: -1, unit }, ...held];
    const rate = (what: keyof BoardCost) =>
      costs.filter((one) => one.of === what).reduce((sum, one) => sum - one.worth / one.unit, 0);
    const cut = rate('cuts');
    const more: Pattern[] = [];
    for (const stock of stocks) {
      const board =
        rate('price') * stock.price +
        rate('waste') * stock.length -
        worth[likes.length + keys.indexOf(stock)]!;
      const pieces = likes.map((_, nth) => worth[nth]! - cut);
      const found = bestPatterns(problem, likes, stock, pieces, Math.max(0, cut), board + 1e-7);
      if (!found) return { choice: choice(), bound: 0 };
      more.push(...found);
    }
    if (more.length === 0) {
      return { choice: choice(), bound: Math.ceil(priced.cost - 1e-6) * unit + offset };
    }
    const wider = distinct([...patterns, ...more]);
    if (wider.length === patterns.length) return { choice: choice(), bound: 0 };
    patterns = wider;
  }
}
