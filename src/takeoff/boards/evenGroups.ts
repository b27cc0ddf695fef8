import type { Grid } from '../../units/grid.ts';
import type { BoardProblem, Stock } from './plan.ts';

/** Runs that whole boards come out even with: every board used up, one cut less than runs, one splice less than boards. */
export interface EvenGroup {
  readonly demands: readonly number[];
  /** How many of each board; absent where it wasn't gone into, only that there are such boards. */
  readonly boards?: readonly number[];
}

export interface EvenGroups {
  readonly groups: readonly EvenGroup[];
  /** What a run that is in none of these costs of a cut at least: 1 when these are all that there are. */
  readonly share: number;
}

const MOST_GROUPS = 2_500;
const MOST_SUMS = 100_000;
/** With so few runs every set of them is looked at. */
const FEW_RUNS = 10;
/** Sets of so many runs at most are listed with their boards. */
const MOST_WITH_BOARDS = 3;

/**
 * The sets of runs that come out even: of up to three runs with every choice of boards; with few runs, those of more too.
 * Sets of a size of which there are too many are left out, and all of more runs.
 */
export function evenGroups(
  problem: BoardProblem,
  stocks: readonly (readonly [Stock, count: number])[],
): EvenGroups {
  const { demands, kerf } = problem;
  const groups: EvenGroup[] = [];
  const span = (set: readonly number[]) => {
    const sawn = kerf * (set.length - 1);
    return {
      least: set.reduce((sum, at) => sum + demands[at]!.need, sawn),
      most: set.reduce((sum, at) => sum + demands[at]!.most, sawn),
    };
  };
  for (let size = 1; size <= Math.min(MOST_WITH_BOARDS, demands.length); size++) {
    const before = groups.length;
    for (const set of setsOf(demands.length, size)) {
      const { least, most } = span(set);
      for (const boards of boardsOf(stocks, least, most)) {
        groups.push({ demands: set, boards });
        if (groups.length > MOST_GROUPS) {
          return { groups: groups.slice(0, before), share: (size - 1) / size };
        }
      }
    }
  }
  if (demands.length <= MOST_WITH_BOARDS) return { groups, share: 1 };
  const left = { groups, share: MOST_WITH_BOARDS / (MOST_WITH_BOARDS + 1) };
  if (demands.length > FEW_RUNS) return left;
  const sums = sumsOf(stocks, span([...demands.keys()]).most);
  if (!sums) return left;
  for (let size = MOST_WITH_BOARDS + 1; size <= demands.length; size++) {
    for (const set of setsOf(demands.length, size)) {
      const { least, most } = span(set);
      const at = firstFrom(sums, least);
      if (at < sums.length && sums[at]! <= most) groups.push({ demands: set });
    }
  }
  return { groups, share: 1 };
}

function* setsOf(count: number, size: number, from = 0): Generator<readonly number[]> {
  if (size === 0) {
    yield [];
    return;
  }
  for (let at = from; at <= count - size; at++) {
    for (const rest of setsOf(count, size - 1, at + 1)) yield [at, ...rest];
  }
}

/** Every choice of whole boards that comes to between these: how many of each. */
function* boardsOf(
  stocks: readonly (readonly [Stock, count: number])[],
  least: Grid,
  most: Grid,
  at = 0,
): Generator<readonly number[]> {
  const one = stocks[at];
  if (!one) {
    if (least <= 0 && most >= 0) yield [];
    return;
  }
  const [{ length }, count] = one;
  for (let taken = 0; taken <= count && taken * length <= most; taken++) {
    for (const rest of boardsOf(stocks, least - taken * length, most - taken * length, at + 1)) {
      yield [taken, ...rest];
    }
  }
}

/** Every length up to a limit that whole boards come to, in order; undefined when there are too many. */
function sumsOf(
  stocks: readonly (readonly [Stock, count: number])[],
  limit: Grid,
): Float64Array | undefined {
  let sums = new Set([0]);
  for (const [{ length }, count] of stocks) {
    const wider = new Set(sums);
    for (const sum of sums) {
      for (let taken = 1; taken <= count && sum + taken * length <= limit; taken++) {
        wider.add(sum + taken * length);
      }
    }
    sums = wider;
    if (sums.size > MOST_SUMS) return undefined;
  }
  return Float64Array.from(sums).sort();
}

function firstFrom(sorted: Float64Array, least: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < least) low = middle + 1;
    else high = middle;
  }
  return low;
}
