import type { Grid } from '../../units/grid.ts';
import type {
  BoardCost,
  BoardPiece,
  BoardPlan,
  BoardProblem,
  CutBoard,
  Proof,
  Stock,
} from './plan.ts';

/** A piece before it has its mark: of the demand at this place in the problem. */
export interface LaidPiece {
  readonly demand: number;
  readonly from: Grid;
  readonly length: Grid;
}

/** One board and what is cut from it, before it has its mark. */
export interface UsedBoard {
  readonly stock: Stock;
  readonly pieces: readonly LaidPiece[];
}

/**
 * The plan of boards in the order of their marks: truck before yard, then as the stock is listed, then the longest piece
 * first. Pieces of a board are cut longest first.
 */
export function writePlan(
  problem: BoardProblem,
  used: readonly UsedBoard[],
  proof: Proof,
): BoardPlan {
  const place = new Map(problem.stock.map((stock, at) => [stock, at]));
  const sorted = used
    .map(({ stock, pieces }) => ({
      stock,
      pieces: pieces.toSorted(
        (a, b) => b.length - a.length || a.demand - b.demand || a.from - b.from,
      ),
    }))
    .toSorted(
      (a, b) =>
        Number(a.stock.from === 'yard') - Number(b.stock.from === 'yard') ||
        place.get(a.stock)! - place.get(b.stock)! ||
        comparePieces(a.pieces, b.pieces),
    );
  const boards = sorted.map(({ stock, pieces }, at): CutBoard => {
    const mark = boardMark(at);
    return {
      mark,
      stock: stock.id,
      from: stock.from,
      length: stock.length,
      pieces: pieces.map(
        ({ demand, from, length }, nth): BoardPiece => ({
          mark: `${mark}${nth + 1}`,
          run: problem.demands[demand]!.run,
          from,
          length,
        }),
      ),
      ...cutting(
        stock.length,
        pieces.map(({ length }) => length),
        problem.kerf,
      ),
    };
  });
  return { boards, cost: costOf(problem, used), proof };
}

/** The boards of a plan as they were before they had their marks. */
export function boardsOf(problem: BoardProblem, plan: BoardPlan): readonly UsedBoard[] {
  const demandOf = new Map(problem.demands.map(({ run }, at) => [run, at]));
  return plan.boards.map(({ stock, from: source, pieces }) => ({
    stock: problem.stock.find((one) => one.id === stock && one.from === source)!,
    pieces: pieces.map(({ run, from, length }) => ({ demand: demandOf.get(run)!, from, length })),
  }));
}

/** 'A' to 'Z', then 'AA', 'AB'… as columns are lettered. */
export function boardMark(at: number): string {
  const last = String.fromCharCode(65 + (at % 26));
  return at < 26 ? last : boardMark(Math.floor(at / 26) - 1) + last;
}

/**
 * The cuts that free these pieces of a board, and what is left after the last of them. The last piece needs no cut when
 * it ends where the board does; a rest thinner than the kerf goes with it.
 */
export function cutting(
  board: Grid,
  pieces: readonly Grid[],
  kerf: Grid,
): { readonly cuts: number; readonly left: Grid } {
  const taken = pieces.reduce((sum, length) => sum + length + kerf, 0) - kerf;
  return taken === board
    ? { cuts: pieces.length - 1, left: 0 }
    : { cuts: pieces.length, left: Math.max(0, board - taken - kerf) };
}

export function costOf(problem: BoardProblem, used: readonly UsedBoard[]): BoardCost {
  const sum = (of: (board: UsedBoard) => number) => used.reduce((all, one) => all + of(one), 0);
  const { demands, kerf } = problem;
  return {
    price: sum(({ stock }) => stock.price),
    cuts: sum(({ stock, pieces }) => {
      const lengths = pieces.map(({ length }) => length);
      return cutting(stock.length, lengths, kerf).cuts;
    }),
    splices: sum(({ pieces }) => pieces.length) - demands.length,
    waste: sum(({ stock }) => stock.length) - demands.reduce((all, { need }) => all + need, 0),
  };
}

/** Negative when the first is the better: price, then cuts, then splices, then waste. */
export function compareCosts(a: BoardCost, b: BoardCost): number {
  return a.price - b.price || a.cuts - b.cuts || a.splices - b.splices || a.waste - b.waste;
}

function comparePieces(a: readonly LaidPiece[], b: readonly LaidPiece[]): number {
  for (const [nth, piece] of a.entries()) {
    const other = b[nth];
    if (!other) return -1;
    const order =
      other.length - piece.length || piece.demand - other.demand || piece.from - other.from;
    if (order !== 0) return order;
  }
  return a.length - b.length;
}
