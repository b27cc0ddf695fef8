import type { BarSize, BoardSize } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import type { Stretch } from '../stakes/leastStakes.ts';

/**
 * What becomes of a form board at one end of its run.
 * passes: it runs by the corner, and the next board butts against it. butts: it stops against the other board.
 * flat: two boards meet at so flat a corner that neither passes; both are cut to it. laps: it is lapped onto the side of
 * what stands there already. stops: there is no room past the corner; it is braced there.
 */
export type EndKind = 'passes' | 'butts' | 'flat' | 'laps' | 'stops';

export interface BoardEnd {
  readonly kind: EndKind;
  /** What the board needs past the corner of the inside face; negative where it stops short of it. */
  readonly past: Grid;
  /** How far past that corner it may run at most: `past` when there is no room to run long. */
  readonly room: Grid;
}

/** What one straight form run needs of boards. */
export interface BoardDemand {
  readonly run: string;
  readonly start: BoardEnd;
  readonly end: BoardEnd;
  /** The least that its boards must come to, and the most that there is room for. */
  readonly need: Grid;
  readonly most: Grid;
  /**
   * Where along the run two of its boards may meet: where a stake can be driven on both sides of the splice. From where
   * the boards start when they run just `start.past` past the corner, however far they do run past it. Empty: nowhere.
   */
  readonly spliceOn: readonly Stretch[];
}

/** Boards that can be cut: so many of a length, or as many as one likes of what the yard sells. */
export interface Stock {
  /** Of the truck's or the yard's list. */
  readonly id: string;
  readonly from: 'truck' | 'yard';
  readonly length: Grid;
  /** Absent: as many as one likes. */
  readonly count?: number;
  /** Of one board: 0 from the truck. From the yard, what it costs (see `pricedBy`). */
  readonly price: number;
}

/** The whole question put to the search: plain data, so that it can be its own key. */
export interface BoardProblem {
  /** Of the boards; or of the reinforcing bars, which are cut from stock lengths alike. */
  readonly size: BoardSize | BarSize;
  readonly demands: readonly BoardDemand[];
  readonly stock: readonly Stock[];
  /** What `price` counts: money, or grid units of length where a price isn't known. */
  readonly pricedBy: 'money' | 'length';
  readonly kerf: Grid;
  readonly shortest: Grid;
  readonly splices: boolean;
}

export interface BoardPiece {
  /** 'A1', 'A2'…: the board's letter, and its place on it. */
  readonly mark: string;
  readonly run: string;
  /**
   * From where the run's boards start when they run just `start.past` past its corner, as `spliceOn` is measured: negative
   * by what the first piece runs long there. A run of one piece runs long at its end first.
   */
  readonly from: Grid;
  readonly length: Grid;
}

/** One board, and what is cut from it in order. */
export interface CutBoard {
  /** 'A', 'B'…, then 'AA'. */
  readonly mark: string;
  readonly stock: string;
  readonly from: 'truck' | 'yard';
  readonly length: Grid;
  readonly pieces: readonly BoardPiece[];
  readonly cuts: number;
  /** What is left of it after the last cut; 0 when it is used up. */
  readonly left: Grid;
}

/** What a plan is weighed by, in this order. */
export interface BoardCost {
  /** In what the problem is priced by. */
  readonly price: number;
  readonly cuts: number;
  readonly splices: number;
  /**
   * Length of the boards used over what the runs need: left over, run long or gone to sawdust. To run a piece long only
   * to have less left of its board is no better.
   */
  readonly waste: Grid;
}

/**
 * How sure a plan is. first: a good answer at once, the search is still to come. proved: no plan is better in any of the
 * four, taken in order. gap: the search was ended; `bound` is what no plan can be better than in the first of them that
 * isn't proved.
 */
export type Proof =
  | { readonly is: 'first' }
  | { readonly is: 'proved'; readonly seconds: number }
  | {
      readonly is: 'gap';
      readonly of: keyof BoardCost;
      readonly bound: number;
      readonly seconds: number;
    };

export interface BoardPlan {
  readonly boards: readonly CutBoard[];
  readonly cost: BoardCost;
  readonly proof: Proof;
}

/** Why there is no plan: what is missing, so that a message can say how to mend it. */
export type NoPlan =
  | { readonly is: 'no-boards' }
  /** Splices are forbidden, or nowhere to be made, and no board is long enough. */
  | { readonly is: 'run-too-long'; readonly run: string; readonly longest: Grid }
  | { readonly is: 'not-enough'; readonly runs: readonly string[] };

/** The text by which two problems are the same. */
export function keyOf(problem: BoardProblem): string {
  return JSON.stringify(problem);
}
