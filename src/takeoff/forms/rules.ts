import type { BoardSize } from '../../job/job.ts';
import { type Grid, INCH } from '../../units/grid.ts';

export interface Dressed {
  readonly thickness: Grid;
  /** The board's depth when it stands on edge as a form. */
  readonly depth: Grid;
}

function dressed(thickness: number, depth: number): Dressed {
  return { thickness: thickness * INCH, depth: depth * INCH };
}

/**
 * What a board measures once it is dry and dressed, by the size that it is sold under: a 2x4 is 1 1/2 × 3 1/2 in.
 * Green lumber is up to 1/4 in deeper; the sizes from before 1970 (1 5/8 × 3 5/8) are long out of use.
 * @source ps-20-lumber-sizes
 */
export const DRESSED: Readonly<Record<BoardSize, Dressed>> = {
  '1x4': dressed(0.75, 3.5),
  '1x6': dressed(0.75, 5.5),
  '2x4': dressed(1.5, 3.5),
  '2x6': dressed(1.5, 5.5),
  '2x8': dressed(1.5, 7.25),
  '2x10': dressed(1.5, 9.25),
  '2x12': dressed(1.5, 11.25),
};

/** The depth that a board is called by: 4 in for a 2x4. */
export function nominalDepth(board: BoardSize): Grid {
  return Number(board.slice(board.indexOf('x') + 1)) * INCH;
}

/** Depth of concrete that a board gives when it stands `gap` off the ground. */
export function formDepth(board: BoardSize, gap: Grid): Grid {
  return DRESSED[board].depth + gap;
}
