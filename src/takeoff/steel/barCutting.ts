import type { BarSize } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import type { Money } from '../../units/money.ts';
import { firstPlan } from '../boards/firstPlan.ts';
import {
  type BoardDemand,
  type BoardEnd,
  type BoardPlan,
  type BoardProblem,
  keyOf,
} from '../boards/plan.ts';
import type { Searched } from '../searched.ts';

/** What bars are bought as, and how they are joined. */
export interface BarStock {
  readonly size: BarSize;
  /** Longer than `lap`. */
  readonly length: Grid;
  readonly lap: Grid;
  /** Of one, when it is known. */
  readonly price?: Money;
}

export interface BarCuts {
  /** The pieces as runs that must be cut in one, so that the search of the boards answers it. */
  readonly problem: BoardProblem;
  /** The key that a search is asked and answered by. */
  readonly key: string;
  readonly plan: BoardPlan;
  /** Bars that the lengths alone would need: no cutting does with fewer of them. */
  readonly least: number;
  /** Laps within lines longer than a bar. */
  readonly laps: number;
}

/**
 * Lengths that a line takes: whole bars lapped as far as they go, and one cut to what is left. A line no longer than a bar
 * takes one.
 * @param stock Longer than the lap.
 */
export function lappedLengths(line: Grid, stock: Grid, lap: Grid): readonly Grid[] {
  if (line <= stock) return [line];
  const whole = Math.ceil((line - stock) / (stock - lap));
  const last = line - whole * (stock - lap);
  return [...Array.from({ length: whole }, () => stock), last];
}

/**
 * Bars to cut lines from: the plan that the search found for these very lengths, or a good one made at once. Nothing when
 * there is none, which no line of a whole number of pieces can bring about.
 * @param lines Lengths of the lines, more than nothing each.
 */
export function cutBars(
  lines: readonly Grid[],
  stock: BarStock,
  searched: Searched['bars'],
): BarCuts | undefined {
  const pieces = lines.flatMap((line) => lappedLengths(line, stock.length, stock.lap));
  const problem = problemOf(pieces, stock);
  const key = keyOf(problem);
  const found = searched?.key === key ? searched : firstPlan(problem);
  if ('none' in found) return undefined;
  const sum = pieces.reduce((total, piece) => total + piece, 0);
  return {
    problem,
    key,
    plan: found.plan,
    least: Math.ceil(sum / stock.length),
    laps: pieces.length - lines.length,
  };
}

/** Cut to length, neither longer nor shorter. */
const CUT: BoardEnd = { kind: 'stops', past: 0, room: 0 };

/** The longest first: lines in another order are the same question. */
function problemOf(pieces: readonly Grid[], { size, length, price }: BarStock): BoardProblem {
  const demands = pieces
    .toSorted((a, b) => b - a)
    .map((need, at): BoardDemand => {
      return { run: `${at + 1}`, start: CUT, end: CUT, need, most: need, spliceOn: [] };
    });
  return {
    size,
    demands,
    stock: [{ id: size, from: 'yard', length, price: price ?? length }],
    pricedBy: price === undefined ? 'length' : 'money',
    // Bars are sheared or cut by a thin disc.
    kerf: 0,
    shortest: 0,
    splices: false,
  };
}
