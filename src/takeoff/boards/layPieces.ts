import type { Grid } from '../../units/grid.ts';
import type { Stretch } from '../stakes/leastStakes.ts';
import type { BoardDemand, BoardProblem, Stock } from './plan.ts';
import type { RoughPiece } from './spliceModel.ts';
import { leastPiece, longBy } from './spliceReach.ts';
import { cutting, type LaidPiece, type UsedBoard } from './writePlan.ts';

interface Piece {
  readonly board: number;
  readonly demand: number;
  readonly from: Grid;
  readonly length: Grid;
}

/** Runs of more pieces than this are laid in the order given alone: the orders are gone through one by one. */
const MOST_ORDERED = 5;

/**
 * Pieces rounded onto the grid and laid along their runs, in an order in which every splice falls where one may be;
 * undefined when there is none. What runs long without saving a cut is taken back.
 */
export function layPieces(
  problem: BoardProblem,
  boards: readonly Stock[],
  rough: readonly RoughPiece[],
): readonly UsedBoard[] | undefined {
  const laid: Piece[] = [];
  for (const [demand, one] of problem.demands.entries()) {
    const own = rough
      .filter((piece) => piece.demand === demand)
      .map((piece) => ({ ...piece, length: Math.round(piece.length) }));
    const along = layRun(one, own, problem.splices);
    if (!along) return undefined;
    laid.push(...along);
  }
  const left = (board: number, pieces: readonly Piece[]) =>
    cutting(
      boards[board]!.length,
      pieces.filter((piece) => piece.board === board).map(({ length }) => length),
      problem.kerf,
    );
  const count = (board: number) => laid.filter((piece) => piece.board === board).length;
  const shorter = laid.map((piece): Piece => {
    if (left(piece.board, laid).cuts < count(piece.board)) return piece;
    return takenBack(problem, piece, laid);
  });
  return boards
    .map((stock, board) => ({
      stock,
      pieces: shorter
        .filter((piece) => piece.board === board)
        .map(({ demand, from, length }): LaidPiece => ({ demand, from, length })),
    }))
    .filter(({ pieces }) => pieces.length > 0);
}

/** The last piece of a run cut off where the run needs no more; the only one laid afresh. */
function takenBack(problem: BoardProblem, piece: Piece, laid: readonly Piece[]): Piece {
  const demand = problem.demands[piece.demand]!;
  const own = laid.filter((one) => one.demand === piece.demand);
  if (own.length === 1) return { ...piece, from: 0, length: demand.need };
  const end = piece.from + piece.length;
  if (own.some(({ from }) => from > piece.from)) return piece;
  const least = leastPiece(problem, demand);
  return { ...piece, length: Math.max(least, piece.length - (end - demand.need)) };
}

function layRun(
  demand: BoardDemand,
  pieces: readonly { readonly board: number; readonly demand: number; readonly length: Grid }[],
  splices: boolean,
): readonly Piece[] | undefined {
  const long = longBy(demand);
  const total = pieces.reduce((sum, { length }) => sum + length, 0);
  // How far it runs long at the start, as little as there is room at the end for the rest.
  const starts: Stretch = {
    from: Math.max(0, total - demand.need - long.end),
    to: Math.min(long.start, total - demand.need),
  };
  if (starts.from > starts.to || (pieces.length > 1 && !splices)) return undefined;
  for (const order of ordersOf(pieces)) {
    const meets: Grid[] = [];
    let along = 0;
    for (const { length } of order.slice(0, -1)) {
      along += length;
      meets.push(along);
    }
    const start = firstStart(starts, meets, demand.spliceOn);
    if (start === undefined) continue;
    let from = 0 - start;
    return order.map(({ board, demand: at, length }) => {
      const piece = { board, demand: at, from, length };
      from += length;
      return piece;
    });
  }
  return undefined;
}

/** How little a run may run long at its start so that all its boards meet where they may. */
function firstStart(
  starts: Stretch,
  meets: readonly Grid[],
  on: readonly Stretch[],
): Grid | undefined {
  let open: readonly Stretch[] = [starts];
  for (const meet of meets) {
    open = open.flatMap((one) =>
      on
        .map(({ from, to }) => ({
          from: Math.max(one.from, meet - to),
          to: Math.min(one.to, meet - from),
        }))
        .filter(({ from, to }) => from <= to),
    );
  }
  return open.length > 0 ? Math.min(...open.map(({ from }) => from)) : undefined;
}

function* ordersOf<T>(pieces: readonly T[]): Generator<readonly T[]> {
  if (pieces.length < 2 || pieces.length > MOST_ORDERED) {
    yield pieces;
    return;
  }
  for (const [nth, first] of pieces.entries()) {
    for (const rest of ordersOf(pieces.toSpliced(nth, 1))) yield [first, ...rest];
  }
}
