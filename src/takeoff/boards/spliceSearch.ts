import type { Solver, Term } from '../solver/mip.ts';
import { groupBound } from './groupBound.ts';
import { layPieces } from './layPieces.ts';
import type { BoardCost, BoardProblem, Stock } from './plan.ts';
import { type Stage, type StageEnd, WEIGHED } from './searchStage.ts';
import { type Places, type RoughPiece, type SpliceModel, spliceModel } from './spliceModel.ts';
import { mostPieces } from './spliceReach.ts';
import type { UsedBoard } from './writePlan.ts';
import { reachOf } from './yardCounts.ts';

/**
 * The search where runs may be spliced. It starts with a model that leaves out where the splices fall; when what it finds
 * can't be laid, the runs that are to blame are placed piece by piece, and it looks again. What it says no plan can do
 * better than is so either way.
 */
export function spliceSearch(problem: BoardProblem, solver: Solver): (stage: Stage) => StageEnd {
  const places: Places = new Map();
  return (stage) => {
    const { of, limits } = stage;
    let bound = 0;
    for (;;) {
      const best = stage.best();
      // As long as it is the price that is looked into, only what is cheaper is of use.
      const cheaper = of === 'price' && best ? best.cost.price - 1 : undefined;
      const { counts, leastPrice } = reachOf(problem, limits.price ?? cheaper);
      if (of === 'price') bound = Math.max(bound, Math.min(leastPrice, best?.cost.price ?? 0));
      if (of !== 'price') {
        const held = { problem, counts, solver, of, limits, seconds: stage.seconds() / 4 };
        bound = Math.max(bound, groupBound(held));
      }
      if (best && best.cost[of] <= bound) return { is: 'proved' };
      const model = spliceModel(problem, counts, places);
      const { terms, unit, offset } = limit(problem, model, limits, of);
      model.mip.atLeast(terms, (bound - offset) / unit);
      if (cheaper !== undefined) model.mip.atMost(terms, cheaper / unit);
      const offer = (values: readonly number[]) => {
        const used = layPieces(problem, model.boards, model.pieces(values));
        if (used) stage.offer(used);
      };
      const found = solver.least(model.mip, terms, {
        seconds: stage.seconds(),
        onBetter: offer,
        ...(best && cheaper === undefined ? { start: model.start(best.used) } : {}),
      });
      if (found.is === 'none') return { is: best ? 'proved' : 'none' };
      if ('values' in found) offer(found.values);
      const known = found.is === 'least' ? found.cost : found.bound;
      if (Number.isFinite(known)) bound = Math.max(bound, Math.ceil(known - 1e-6) * unit + offset);
      const reached = () => (stage.best()?.cost[of] ?? Number.POSITIVE_INFINITY) <= bound;
      if (found.is === 'least' && !reached()) {
        const held = { ...limits, [of]: bound };
        const used = layExactly(problem, solver, model, found.values, held, stage.seconds());
        if (used) stage.offer(used);
      }
      if (reached()) return { is: 'proved' };
      if (found.is !== 'least' || stage.seconds() <= 0) return { is: 'open', bound };
      if (!morePlaces(problem, places, model.pieces(found.values))) return { is: 'open', bound };
    }
  };
}

/** More of the pieces stand in their places; false when all did. */
function morePlaces(problem: BoardProblem, places: Places, rough: readonly RoughPiece[]): boolean {
  let more = false;
  for (const [at, count] of spliced(rough)) {
    const before = places.get(at) ?? 0;
    const after = Math.min(Math.max(before + 1, count), mostPieces(problem, problem.demands[at]!));
    if (after > before) more = true;
    places.set(at, after);
  }
  return more;
}

/** The runs of more than one piece, and of how many. */
function spliced(pieces: readonly RoughPiece[]): ReadonlyMap<number, number> {
  const counts = new Map<number, number>();
  for (const { demand } of pieces) counts.set(demand, (counts.get(demand) ?? 0) + 1);
  return new Map([...counts].filter(([, count]) => count > 1));
}

/** One of the four in the largest unit in which it is whole, and what a plan comes to besides. */
interface Scaled {
  readonly terms: readonly Term[];
  readonly unit: number;
  readonly offset: number;
}

function scaled(problem: BoardProblem, { costs }: SpliceModel, of: keyof BoardCost): Scaled {
  const needs = problem.demands.reduce((sum, { need }) => sum + need, 0);
  const offsets: BoardCost = { price: 0, cuts: 0, splices: -problem.demands.length, waste: -needs };
  const unit = costs[of].reduce((all, [, factor]) => common(all, Math.abs(factor)), 0) || 1;
  const terms = costs[of].map(([column, factor]): Term => [column, factor / unit]);
  return { terms, unit, offset: offsets[of] };
}

/** Holds the model to the limits, and gives what it is to be looked into for. */
function limit(
  problem: BoardProblem,
  model: SpliceModel,
  limits: Partial<BoardCost>,
  of: keyof BoardCost,
): Scaled {
  for (const held of WEIGHED) {
    const most = limits[held];
    if (most === undefined) continue;
    const { terms, unit, offset } = scaled(problem, model, held);
    model.mip.atMost(terms, Math.round((most - offset) / unit));
  }
  return scaled(problem, model, of);
}

/** The same boards for the same runs with all their places, looked for by the solver: laid exactly, when there is a way. */
function layExactly(
  problem: BoardProblem,
  solver: Solver,
  { boards, pieces }: SpliceModel,
  values: readonly number[],
  limits: Partial<BoardCost>,
  seconds: number,
): readonly UsedBoard[] | undefined {
  const rough = pieces(values);
  const used = [...new Set(rough.map(({ board }) => board))].sort((a, b) => a - b);
  const counts = new Map<Stock, number>();
  for (const board of used) counts.set(boards[board]!, (counts.get(boards[board]!) ?? 0) + 1);
  const model = spliceModel(problem, counts, spliced(rough), (board, demand) =>
    rough.some((one) => one.board === used[board] && one.demand === demand),
  );
  const { terms } = limit(problem, model, limits, 'splices');
  const found = solver.least(model.mip, terms, { seconds });
  if (!('values' in found)) return undefined;
  return layPieces(problem, model.boards, model.pieces(found.values));
}

function common(a: number, b: number): number {
  return b === 0 ? a : common(b, a % b);
}
