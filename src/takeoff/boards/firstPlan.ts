import type { Grid } from '../../units/grid.ts';
import type { BoardCost, BoardDemand, BoardPlan, BoardProblem, NoPlan, Stock } from './plan.ts';
import { fewestJoints, leastPiece, longBy } from './spliceReach.ts';
import { compareCosts, costOf, type LaidPiece, type UsedBoard, writePlan } from './writePlan.ts';

/** A board taken, with what the saw has left of it: less than nothing when it was used up. */
interface OpenBoard {
  stock: Stock;
  readonly pieces: LaidPiece[];
  rest: Grid;
}

/** One way of going about it; the best of a few dozen is taken. */
interface Way {
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

/** So many runs are served in all the ways together: the answer must come while somebody drags a corner. */
const SERVED = 3000;
const USUAL_WAYS = 12;
/** Each run of a large job looks through as many boards as there are runs, so it has fewer ways still. */
const LOOKED_AT = 400_000;

function mostWays(runs: number): number {
  const usual = Math.max(USUAL_WAYS, Math.floor(SERVED / runs));
  return Math.max(1, Math.min(usual, Math.floor(LOOKED_AT / runs ** 2)));
}

/**
 * A good plan at once: boards served best fit first, the longest run first, in a few dozen ways of which the best is
 * taken. Every plan is good; that none is found although splices are allowed and the yard sells none doesn't prove that
 * there is none.
 */
export function firstPlan(
  problem: BoardProblem,
): { readonly plan: BoardPlan } | { readonly none: NoPlan } {
  const stock = problem.stock.filter(({ length, count }) => length > 0 && (count ?? 1) > 0);
  if (problem.demands.length === 0) return { plan: writePlan(problem, [], { is: 'first' }) };
  if (stock.length === 0) return { none: { is: 'no-boards' } };
  const longest = Math.max(...stock.map(({ length }) => length));
  const tooLong = problem.demands.find((demand) => !fewestJoints(problem, demand, longest));
  if (tooLong) return { none: { is: 'run-too-long', run: tooLong.run, longest } };
  let best: { used: readonly UsedBoard[]; cost: BoardCost } | undefined;
  let fewestBare: readonly number[] | undefined;
  let ways = mostWays(problem.demands.length);
  for (const way of waysOf(problem, stock)) {
    // Nothing was bought: what the yard has first makes no difference.
    if (best?.cost.price === 0 && way.yard !== way.cheapest) continue;
    if (ways-- === 0) break;
    const { used, bare } = serve(problem, stock, way);
    if (bare.length > 0) {
      if (!fewestBare || bare.length < fewestBare.length) fewestBare = bare;
      continue;
    }
    const cost = costOf(problem, used);
    if (!best || compareCosts(cost, best.cost) < 0) best = { used, cost };
  }
  if (best) return { plan: writePlan(problem, best.used, { is: 'first' }) };
  const runs = (fewestBare ?? []).map((at) => problem.demands[at]!.run);
  return { none: { is: 'not-enough', runs } };
}

function* waysOf({ demands, splices }: BoardProblem, stock: readonly Stock[]): Generator<Way> {
  const yard = stock.filter(({ from }) => from === 'yard');
  const byRate = yard.toSorted((a, b) => a.price * b.length - b.price * a.length);
  const yards = [byRate, ...yard.map((one) => [one, ...byRate.filter((other) => other !== one)])];
  const all = demands.map((_, at) => at);
  const room = ({ need, most }: BoardDemand) => most - need;
  const orders = [
    all.toSorted((a, b) => demands[b]!.need - demands[a]!.need),
    // Those that can run long pick the boards that they use up first.
    all.toSorted(
      (a, b) => room(demands[b]!) - room(demands[a]!) || demands[b]!.need - demands[a]!.need,
    ),
    all.toSorted(
      (a, b) => demands[a]!.most - demands[b]!.most || demands[b]!.need - demands[a]!.need,
    ),
  ];
  for (const order of orders) {
    for (const list of yards) {
      for (const wholeFirst of [true, false]) {
        for (const spliceFirst of splices ? [true, false] : [false]) {
          yield { order, yard: list, cheapest: byRate, spliceFirst, wholeFirst };
        }
      }
    }
  }
}

function serve(problem: BoardProblem, stock: readonly Stock[], way: Way) {
  const rack = new Rack(problem, stock, way);
  const bare = way.order.filter((at) => !rack.serve(at));
  return { used: rack.finished(), bare };
}

/** The boards as they are taken and cut, in one way of going about it. */
class Rack {
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
    const taken: { board: OpenBoard; piece: LaidPiece; isFresh: boolean }[] = [];
    const lay = (board: OpenBoard, isFresh: boolean, from: Grid, length: Grid) => {
      const piece = { demand: at, from, length };
      this.put(board, piece);
      taken.push({ board, piece, isFresh });
    };
    for (let from = 0; ; ) {
      const rest = demand.need - from;
      const last = rest >= least ? this.closest(rest, buy) : undefined;
      if (last) {
        const all = last.board.rest;
        lay(last.board, last.isFresh, from, all <= rest + longBy(demand).end ? all : rest);
        return true;
      }
      const next = this.longest(demand, from, least, buy);
      if (!next) break;
      lay(next.board, next.isFresh, from, next.length);
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
    let best: { board?: OpenBoard; stock?: Stock; avail: Grid; length: Grid } | undefined;
    const weigh = (avail: Grid, offer: { board: OpenBoard } | { stock: Stock }) => {
      if (avail < Math.max(least, best?.length ?? 0)) return;
      const length = farthest(demand, from, avail, least);
      if (length === undefined) return;
      if (best && (length < best.length || (length === best.length && avail >= best.avail))) return;
      best = { ...offer, avail, length };
    };
    for (const board of this.open) weigh(board.rest, { board });
    for (const stock of this.truck) if (this.left.get(stock)! > 0) weigh(stock.length, { stock });
    if (!best && buy) {
      for (const stock of this.way.yard) {
        if (this.left.get(stock)! > 0) weigh(stock.length, { stock });
      }
    }
    if (!best) return undefined;
    const { board, stock, length } = best;
    return { board: board ?? this.fresh(stock!), isFresh: !board, length };
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
