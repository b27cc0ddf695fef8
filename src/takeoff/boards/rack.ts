import type { Grid } from '../../units/grid.ts';
import type { BoardDemand, BoardProblem, Stock } from './plan.ts';
import { fewestJoints, leastPiece, longBy } from './spliceReach.ts';
import type { LaidPiece, UsedBoard } from './writePlan.ts';

/** A board taken, with what the saw has left of it: less than nothing when it was used up. */
interface OpenBoard {
  stock: Stock;
  readonly pieces: LaidPiece[];
  rest: Grid;
}

/** A piece laid for a splice, until the run is covered. */
interface Taken {
  readonly board: OpenBoard;
  readonly piece: LaidPiece;
  readonly isFresh: boolean;
}

/** A piece that may be spliced on, of a board begun or of one fetched for it. */
interface Offer {
  readonly of: OpenBoard | Stock;
  readonly avail: Grid;
  readonly length: Grid;
}

/** One way of going about it; the best of a few dozen is taken. */
export interface Way {
  /** The demands in the order in which they are served. */
  readonly order: readonly number[];
  /** Which boards of the yard are fetched first. */
  readonly yard: readonly Stock[];
  /** The same with the cheapest by its length first. */
  readonly cheapest: readonly Stock[];
  /** Short boards of the truck are spliced before one is bought. */
  readonly spliceFirst: boolean;
  /** A board that fits whole is taken before one already cut into. */
  readonly wholeFirst: boolean;
}

/** The boards as they are taken and cut, in one way of going about it. */
export class Rack {
  private readonly open: OpenBoard[] = [];
  private readonly left: Map<Stock, number>;
  private readonly truck: readonly Stock[];
  private readonly problem: BoardProblem;
  private readonly way: Way;

  constructor(problem: BoardProblem, stock: readonly Stock[], way: Way) {
    this.problem = problem;
    this.way = way;
    this.left = new Map(stock.map((one) => [one, one.count ?? Number.POSITIVE_INFINITY]));
    this.truck = stock.filter(({ from }) => from === 'truck').sort((a, b) => a.length - b.length);
  }

  serve(at: number): boolean {
    const demand = this.problem.demands[at]!;
    if (this.way.wholeFirst && this.whole(at, demand)) return true;
    if (this.cutFrom(this.bestOpen(demand.need), at, demand)) return true;
    if (this.whole(at, demand)) return true;
    if (this.cutFresh(this.shortestTruck(demand.need), at, demand)) return true;
    if (this.way.spliceFirst && this.splice(at, demand, false)) return true;
    if (this.cutFresh(this.shelf(demand.need), at, demand)) return true;
    return this.problem.splices && (this.splice(at, demand, true) || this.spliceBought(at, demand));
  }

  /** What was taken, each board of the yard changed for the cheapest that holds its pieces, and used up where it can. */
  finished(): readonly UsedBoard[] {
    const pieceCount = new Map<number, number>();
    for (const { pieces } of this.open) {
      for (const { demand } of pieces) pieceCount.set(demand, (pieceCount.get(demand) ?? 0) + 1);
    }
    return this.open
      .filter(({ pieces }) => pieces.length > 0)
      .map((board) => {
        const stock = this.cheapest(board);
        return { stock, pieces: this.stretched(stock, board.pieces, pieceCount) };
      });
  }

  /** A board or a rest that the run takes whole, running long where it must: no cut. */
  private whole(at: number, { need, most }: BoardDemand): boolean {
    const rest = this.bestOpen(need);
    const truck = this.shortestTruck(need);
    if (rest && rest.rest <= most) this.lay(rest, at, rest.rest);
    else if (truck && truck.length <= most) this.lay(this.fresh(truck), at, truck.length);
    else return false;
    return true;
  }

  private cutFrom(board: OpenBoard | undefined, at: number, { need }: BoardDemand): boolean {
    if (!board) return false;
    this.lay(board, at, need);
    return true;
  }

  private cutFresh(stock: Stock | undefined, at: number, demand: BoardDemand): boolean {
    return stock !== undefined && this.cutFrom(this.fresh(stock), at, demand);
  }

  private lay(board: OpenBoard, at: number, length: Grid): void {
    const { need } = this.problem.demands[at]!;
    const from = Math.min(0, need + longBy(this.problem.demands[at]!).end - length);
    this.put(board, { demand: at, from, length });
  }

  private put(board: OpenBoard, piece: LaidPiece): void {
    board.pieces.push(piece);
    board.rest -= piece.length + this.problem.kerf;
  }

  private bestOpen(length: Grid): OpenBoard | undefined {
    let best: OpenBoard | undefined;
    for (const board of this.open) {
      if (board.rest >= length && (!best || board.rest < best.rest)) best = board;
    }
    return best;
  }

  private shortestTruck(length: Grid): Stock | undefined {
    return this.truck.find((one) => one.length >= length && this.left.get(one)! > 0);
  }

  private shelf(length: Grid): Stock | undefined {
    return this.way.yard.find((one) => one.length >= length && this.left.get(one)! > 0);
  }

  private fresh(stock: Stock): OpenBoard {
    this.left.set(stock, this.left.get(stock)! - 1);
    const board: OpenBoard = { stock, pieces: [], rest: stock.length };
    this.open.push(board);
    return board;
  }

  /** A run laid of several pieces from one end on, each as long as it may be; taken back when it comes to nothing. */
  private splice(at: number, demand: BoardDemand, buy: boolean): boolean {
    const least = leastPiece(this.problem, demand);
    const taken: Taken[] = [];
    for (let from = 0; ; ) {
      const rest = demand.need - from;
      const last = rest >= least ? this.closest(rest, buy) : undefined;
      if (last) {
        const all = last.board.rest;
        const length = all <= rest + longBy(demand).end ? all : rest;
        this.put(last.board, { demand: at, from, length });
        return true;
      }
      const next = this.longest(demand, from, least, buy);
      if (!next) break;
      const piece = { demand: at, from, length: next.length };
      this.put(next.board, piece);
      taken.push({ board: next.board, piece, isFresh: next.isFresh });
      from += next.length;
    }
    for (const { board, piece, isFresh } of taken.toReversed()) {
      board.pieces.splice(board.pieces.indexOf(piece), 1);
      board.rest += piece.length + this.problem.kerf;
      if (isFresh) {
        this.open.splice(this.open.indexOf(board), 1);
        this.left.set(board.stock, this.left.get(board.stock)! + 1);
      }
    }
    return false;
  }

  /** For the last piece of a run the board with the least left over; what is there before what must be bought. */
  private closest(length: Grid, buy: boolean): { board: OpenBoard; isFresh: boolean } | undefined {
    const open = this.bestOpen(length);
    const truck = this.shortestTruck(length);
    if (open && !(truck && truck.length < open.rest)) return { board: open, isFresh: false };
    const stock = truck ?? (buy ? this.shelf(length) : undefined);
    return stock && { board: this.fresh(stock), isFresh: true };
  }

  /** The longest piece that may be spliced on, of what is there before what must be bought; of the shortest board. */
  private longest(demand: BoardDemand, from: Grid, least: Grid, buy: boolean) {
    let best: Offer | undefined;
    for (const board of this.open) best = longer(best, demand, from, least, board.rest, board);
    for (const stock of this.truck) {
      if (this.left.get(stock)! > 0) best = longer(best, demand, from, least, stock.length, stock);
    }
    if (!best && buy) {
      for (const stock of this.way.yard) {
        if (this.left.get(stock)! > 0)
          best = longer(best, demand, from, least, stock.length, stock);
      }
    }
    if (!best) return undefined;
    const { of, length } = best;
    const isFresh = !('pieces' in of);
    return { board: isFresh ? this.fresh(of) : of, isFresh, length };
  }

  /** A run spliced of the longest boards that the yard has without end: there is a way whenever there is one. */
  private spliceBought(at: number, demand: BoardDemand): boolean {
    const endless = this.way.yard.filter(({ count }) => count === undefined);
    const longest = endless.toSorted((a, b) => b.length - a.length)[0];
    const joints = longest && fewestJoints(this.problem, demand, longest.length);
    if (!joints) return false;
    for (const [nth, from] of joints.slice(0, -1).entries()) {
      const length = joints[nth + 1]! - from;
      this.put(this.bestOpen(length) ?? this.fresh(longest)!, { demand: at, from, length });
    }
    return true;
  }

  private cheapest({ stock, pieces }: OpenBoard): Stock {
    if (stock.from === 'truck') return stock;
    const { kerf } = this.problem;
    const taken = pieces.reduce((sum, { length }) => sum + length + kerf, 0) - kerf;
    const fits = this.way.yard.filter(
      (one) => one === stock || (one.length >= taken && this.left.get(one)! > 0),
    );
    const best = fits.reduce((a, b) =>
      b.price < a.price || (b.price === a.price && b.length < a.length) ? b : a,
    );
    if (best !== stock) {
      this.left.set(best, this.left.get(best)! - 1);
      this.left.set(stock, this.left.get(stock)! + 1);
    }
    return best;
  }

  /** The pieces run long to take up the rest of their board, where that saves the last cut. */
  private stretched(
    stock: Stock,
    pieces: readonly LaidPiece[],
    pieceCount: ReadonlyMap<number, number>,
  ): readonly LaidPiece[] {
    const { kerf, demands } = this.problem;
    let rest = stock.length + kerf - pieces.reduce((sum, { length }) => sum + length + kerf, 0);
    const longer = pieces.map((piece) => {
      const { need, most } = demands[piece.demand]!;
      if (pieceCount.get(piece.demand) !== 1) return piece;
      const length = Math.min(most, piece.length + rest);
      rest -= length - piece.length;
      const from = Math.min(0, need + longBy(demands[piece.demand]!).end - length);
      return { demand: piece.demand, from, length };
    });
    return rest === 0 ? longer : pieces;
  }
}

/** The longer of two pieces that may be spliced on, of as long ones that of the shorter board. */
function longer(
  best: Offer | undefined,
  demand: BoardDemand,
  from: Grid,
  least: Grid,
  avail: Grid,
  of: OpenBoard | Stock,
): Offer | undefined {
  if (avail < Math.max(least, best?.length ?? 0)) return best;
  const length = farthest(demand, from, avail, least);
  if (length === undefined) return best;
  if (best && (length < best.length || (length === best.length && avail >= best.avail)))
    return best;
  return { of, avail, length };
}

/** The longest piece of at most this length from here on whose end may be spliced, and leaves enough for the next. */
function farthest(
  { need, spliceOn }: BoardDemand,
  from: Grid,
  length: Grid,
  least: Grid,
): Grid | undefined {
  const reach = Math.min(from + length, need - least);
  let end = from;
  for (const on of spliceOn) if (on.from <= reach) end = Math.max(end, Math.min(on.to, reach));
  return end - from >= least ? end - from : undefined;
}
