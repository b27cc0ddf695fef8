import type { BoardCost, BoardDemand, BoardProblem } from '../../../src/takeoff/boards/plan.ts';

/**
 * The best cost of any plan by going through every plan: every way to divide every run, every way to take the pieces off
 * boards. For lengths of a few units only. Written apart from the search, from the rules alone.
 */
export function bestOfEveryPlan(problem: BoardProblem): BoardCost | undefined {
  const trucks = problem.stock.filter(({ count }) => count !== undefined);
  const cheapest = packer(problem);
  let best: BoardCost | undefined;
  const needs = problem.demands.reduce((sum, { need }) => sum + need, 0);
  const divide = (at: number, pieces: readonly number[]) => {
    const demand = problem.demands[at];
    if (demand) {
      for (const lengths of waysToDivide(problem, demand)) divide(at + 1, [...pieces, ...lengths]);
      return;
    }
    const sorted = pieces.toSorted((a, b) => b - a);
    const packed = cheapest(
      sorted,
      trucks.map(({ count }) => count!),
    );
    if (!packed) return;
    const [price, cuts, taken] = packed;
    const splices = pieces.length - problem.demands.length;
    const cost = { price, cuts, splices, waste: taken - needs };
    if (!best || before([price, cuts, splices, cost.waste], Object.values(best))) best = cost;
  };
  divide(0, []);
  return best;
}

type Packed = readonly [price: number, cuts: number, taken: number];

function before(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, nth) => value !== b[nth]);
  return at >= 0 && a[at]! < b[at]!;
}

/** The sets of piece lengths, each once, that a run can be divided into, as sorted lists. */
function waysToDivide(problem: BoardProblem, demand: BoardDemand): readonly (readonly number[])[] {
  const ways = new Map<string, readonly number[]>();
  const least = Math.max(1, Math.min(problem.shortest, demand.need));
  const last = demand.need + demand.end.room - demand.end.past;
  const longest = Math.max(0, ...problem.stock.map(({ length }) => length));
  const go = (from: number, pieces: readonly number[]) => {
    for (let length = least; length <= longest; length++) {
      const to = from + length;
      const all = [...pieces, length].sort((a, b) => b - a);
      if (to >= demand.need && to <= last) ways.set(all.join(), all);
      const splice = demand.spliceOn.some((on) => on.from <= to && to <= on.to);
      if (problem.splices && splice) go(to, all);
    }
  };
  for (let past = demand.start.room - demand.start.past; past >= 0; past--) go(-past, []);
  return [...ways.values()];
}

function packer(problem: BoardProblem) {
  const known = new Map<string, Packed | undefined>();
  const limited = problem.stock.filter(({ count }) => count !== undefined);
  const pack = (pieces: readonly number[], left: readonly number[]): Packed | undefined => {
    if (pieces.length === 0) return [0, 0, 0];
    const key = `${pieces.join()}|${left.join()}`;
    if (known.has(key)) return known.get(key);
    let best: Packed | undefined;
    const [first, ...others] = pieces;
    for (const stock of problem.stock) {
      const nth = limited.indexOf(stock);
      if (nth >= 0 && left[nth] === 0) continue;
      const after = nth < 0 ? left : left.with(nth, left[nth]! - 1);
      for (const [taken, rest] of subsets(others)) {
        const on = [first!, ...taken];
        const sawn = on.reduce((sum, one) => sum + one, 0) + problem.kerf * (on.length - 1);
        if (sawn > stock.length) continue;
        const more = pack(rest, after);
        if (!more) continue;
        const cuts = on.length - (sawn === stock.length ? 1 : 0);
        const all: Packed = [more[0] + stock.price, more[1] + cuts, more[2] + stock.length];
        // The number of pieces is given: price, cuts and what is taken decide.
        if (!best || before(all, best)) best = all;
      }
    }
    known.set(key, best);
    return best;
  };
  return pack;
}

function* subsets(
  of: readonly number[],
): Generator<readonly [taken: readonly number[], rest: readonly number[]]> {
  const [first, ...others] = of;
  if (first === undefined) {
    yield [[], []];
    return;
  }
  for (const [taken, rest] of subsets(others)) {
    yield [taken, [first, ...rest]];
    yield [[first, ...taken], rest];
  }
}
