import type { Grid } from '../../units/grid.ts';
import type { BoardsResult } from '../result.ts';

/** Boards of one row of the lists, of those that a plan takes. */
export interface Grouped {
  readonly marks: readonly string[];
  readonly count: number;
  readonly length: Grid;
  /** Of one, in what the problem is priced by; 0 from the truck. */
  readonly price: number;
}

/** The boards that a plan takes from the truck or from the yard, one row a row of the list, in its order. */
export function groupedByStock(
  { problem, plan }: BoardsResult,
  from: 'truck' | 'yard',
): readonly Grouped[] {
  return problem.stock
    .filter((stock) => stock.from === from)
    .flatMap(({ id, length, price }) => {
      const marks = plan.boards
        .filter((board) => board.from === from && board.stock === id)
        .map(({ mark }) => mark);
      return marks.length > 0 ? [{ marks, count: marks.length, length, price }] : [];
    });
}

/** What to buy, shortest boards first. */
export function boughtRows(boards: BoardsResult): readonly Grouped[] {
  return groupedByStock(boards, 'yard').toSorted((a, b) => a.length - b.length);
}
