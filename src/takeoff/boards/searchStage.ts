import type { BoardCost } from './plan.ts';
import type { UsedBoard } from './writePlan.ts';

/** What a plan is weighed by, the first the most. */
export const WEIGHED = ['price', 'cuts', 'splices', 'waste'] as const;

/** One of the four looked into, with those before it held to what they came to. */
export interface Stage {
  readonly of: keyof BoardCost;
  /** What those before it may come to at most. */
  readonly limits: Partial<BoardCost>;
  /** The best plan so far, and what it comes to; offers may better it while the stage runs. */
  readonly best: () =>
    | { readonly used: readonly UsedBoard[]; readonly cost: BoardCost }
    | undefined;
  /** How long is left of this stage. */
  readonly seconds: () => number;
  /** A plan that was found; it is held against the problem, and against the best. */
  readonly offer: (used: readonly UsedBoard[]) => void;
}

/** proved: no plan within the limits is better than the best. open: none is better than `bound`. none: there is no plan. */
export type StageEnd =
  | { readonly is: 'proved' }
  | { readonly is: 'open'; readonly bound: number }
  | { readonly is: 'none' };
