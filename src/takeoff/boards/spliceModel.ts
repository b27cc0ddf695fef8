import { MipWriter, type Term } from '../solver/mip.ts';
import type { BoardCost, BoardDemand, BoardProblem, Stock } from './plan.ts';
import { leastPiece, longBy, mostPieces } from './spliceReach.ts';
import { cutting, type UsedBoard } from './writePlan.ts';

/** A piece that may be cut: of which board, for which run, and in which place of the run where it has places. */
interface Choice {
  readonly board: number;
  readonly demand: number;
  readonly slot?: number;
  /** The columns of whether it is cut, and how long. */
  readonly taken: number;
  readonly length: number;
}

/** A piece as the model has it: its length not yet on the grid. */
export interface RoughPiece {
  readonly board: number;
  readonly demand: number;
  readonly length: number;
}

/** How many places a run has whose pieces stand in them, by its place among the demands. */
export type Places = Map<number, number>;

/**
 * Boards cut into pieces of any length for runs of any number of pieces, as a model of whole columns (board used, used
 * up, cut for this run) and real ones (piece lengths).
 */
export interface SpliceModel {
  readonly mip: MipWriter;
  readonly boards: readonly Stock[];
  readonly costs: Readonly<Record<keyof BoardCost, readonly Term[]>>;
  readonly pieces: (values: readonly number[]) => readonly RoughPiece[];
  /** The values of a plan, for the search to start from. */
  readonly start: (used: readonly UsedBoard[]) => readonly Term[];
}

/** The model as it is written. */
interface Writing {
  readonly problem: BoardProblem;
  readonly mip: MipWriter;
  readonly boards: readonly Stock[];
  readonly used: readonly number[];
  readonly usedUp: readonly number[];
  readonly choices: Choice[];
  readonly places: ReadonlyMap<number, number>;
  /** What lengths stand in: the longest board is about a hundred, near enough to the counts beside it. */
  readonly unit: number;
}

/**
 * @param counts How many of each board there can be.
 * @param places Runs whose pieces stand in so many places, each splice where it may be. Where a run could have more
 *   pieces than places, any number of them stand in the last. Of these, and of the pieces of the other runs, only the
 *   lengths count, and no two are of one board, since laid beside each other they would be one: so a plan of the model
 *   may be better than any that can be laid, but the best is never worse.
 * @param only Which runs a board may be cut for.
 */
export function spliceModel(
  problem: BoardProblem,
  counts: ReadonlyMap<Stock, number>,
  places: ReadonlyMap<number, number>,
  only: (board: number, demand: number) => boolean = () => true,
): SpliceModel {
  const mip = new MipWriter();
  const boards = [...counts].flatMap(([stock, count]) =>
    Array.from({ length: count }, () => stock),
  );
  const used = boards.map(() => mip.whole(0, 1));
  const usedUp = boards.map(() => mip.whole(0, 1));
  const choices: Choice[] = [];
  const unit = Math.max(1, ...boards.map(({ length }) => length)) / 128;
  const writing: Writing = { problem, mip, boards, used, usedUp, choices, places, unit };
  for (const at of problem.demands.keys()) writeRun(writing, at, only);
  for (const board of boards.keys()) writeBoard(writing, board);
  const allTaken = choices.map(({ taken }): Term => [taken, 1]);
  return {
    mip,
    boards,
    costs: {
      price: used.map((column, board): Term => [column, boards[board]!.price]),
      cuts: [...allTaken, ...usedUp.map((column): Term => [column, -1])],
      splices: allTaken,
      waste: used.map((column, board): Term => [column, boards[board]!.length]),
    },
    pieces: (values) =>
      choices
        .filter(({ taken }) => values[taken]! > 0.5)
        .toSorted((a, b) => a.demand - b.demand || (a.slot ?? 0) - (b.slot ?? 0))
        .map(({ board, demand, length }) => ({ board, demand, length: values[length]! * unit })),
    start: (plan) => startOf(writing, plan),
  };
}

function writeRun(
  writing: Writing,
  at: number,
  only: (board: number, demand: number) => boolean,
): void {
  const { problem, mip, boards, used, choices, places, unit } = writing;
  const demand = problem.demands[at]!;
  const least = leastPiece(problem, demand);
  const own: Choice[] = [];
  for (const [board, { length }] of boards.entries()) {
    if (length < least || !only(board, at)) continue;
    const cap = Math.min(length, demand.most);
    for (let slot = 0; slot < (places.get(at) ?? 1); slot++) {
      const taken = mip.whole(0, 1);
      const piece = mip.real(0, cap / unit);
      mip.atMost(difference(piece, taken, cap / unit), 0);
      mip.atLeast(difference(piece, taken, least / unit), 0);
      mip.atMost(difference(taken, used[board]!), 0);
      const choice = { board, demand: at, taken, length: piece };
      own.push(places.has(at) ? { ...choice, slot } : choice);
    }
  }
  choices.push(...own);
  mip.row(demand.need / unit, sum(own, 'length'), demand.most / unit);
  const most = mostPieces(problem, demand);
  const longest = Math.max(1, ...own.map(({ board }) => boards[board]!.length));
  mip.row(most === 1 ? 1 : Math.ceil(demand.need / longest), sum(own, 'taken'), most);
  if (places.has(at)) writePlaces(writing, at, own, most);
}

function writeBoard({ problem, mip, boards, used, usedUp, choices, unit }: Writing, board: number) {
  const own = choices.filter((choice) => choice.board === board);
  const kerf = problem.kerf / unit;
  const sawn = [...sum(own, 'length'), ...sum(own, 'taken', kerf)];
  const whole = boards[board]!.length / unit + kerf;
  mip.atMost([...sawn, [used[board]!, -whole]], 0);
  mip.atLeast([...sawn, [usedUp[board]!, -whole]], 0);
  mip.atMost(difference(usedUp[board]!, used[board]!), 0);
  mip.atLeast([...sum(own, 'taken'), [used[board]!, -1]], 0);
  // Of like boards the first are used first.
  if (boards[board + 1] === boards[board]) {
    mip.atLeast(difference(used[board]!, used[board + 1]!), 0);
  }
}

/** The pieces of a run stand in their places, and each splice on a stretch where one may be. */
function writePlaces(writing: Writing, at: number, own: readonly Choice[], most: number): void {
  const { problem, mip, places, unit } = writing;
  const demand = problem.demands[at]!;
  const long = longBy(demand);
  const slots = places.get(at)!;
  const laid: Term[] = [[mip.real(-long.start / unit, 0), 1]];
  for (let slot = 0; slot < slots; slot++) {
    const here = own.filter((choice) => choice.slot === slot);
    const next = own.filter((choice) => choice.slot === slot + 1);
    mip.atMost(sum(here, 'taken'), slot === slots - 1 && most > slots ? most : 1);
    // No place is left out before the last.
    for (const { taken } of next) mip.atMost([[taken, 1], ...sum(here, 'taken', -1)], 0);
    laid.push(...sum(here, 'length'));
    if (next.length > 0) writeSplice(writing, demand, laid, next);
  }
  mip.row(demand.need / unit, laid, (demand.need + long.end) / unit);
}

function writeSplice(
  { mip, unit }: Writing,
  { spliceOn, most }: BoardDemand,
  laid: readonly Term[],
  next: readonly Choice[],
): void {
  const far = most / unit;
  const on = spliceOn.map(({ from, to }) => ({ from, to, chosen: mip.whole(0, 1) }));
  mip.atMost(
    on.map(({ chosen }) => [chosen, 1]),
    1,
  );
  for (const { taken } of next) {
    mip.atMost([[taken, 1], ...on.map(({ chosen }): Term => [chosen, -1])], 0);
  }
  // The splice lies between the ends of its stretch; with no next piece it may lie anywhere.
  mip.atLeast([...laid, ...on.map(({ chosen, from }): Term => [chosen, -from / unit - far])], -far);
  mip.atMost(
    [...laid, ...on.map(({ chosen, to }): Term => [chosen, 2 * far - to / unit])],
    2 * far,
  );
}

function startOf(
  { problem, boards, used, usedUp, choices, places }: Writing,
  plan: readonly UsedBoard[],
): readonly Term[] {
  const free = new Map<Stock, number[]>();
  for (const [board, stock] of boards.entries()) {
    free.set(stock, [...(free.get(stock) ?? []), board]);
  }
  const values = new Map<number, number>(choices.map(({ taken }) => [taken, 0]));
  for (const column of [...used, ...usedUp]) values.set(column, 0);
  for (const { stock, pieces } of plan) {
    const board = free.get(stock)?.shift();
    if (board === undefined) return [];
    values.set(used[board]!, 1);
    const lengths = pieces.map(({ length }) => length);
    const { cuts } = cutting(stock.length, lengths, problem.kerf);
    values.set(usedUp[board]!, cuts < pieces.length ? 1 : 0);
    for (const { demand, from } of pieces) {
      const before = plan
        .flatMap((one) => one.pieces)
        .filter((piece) => piece.demand === demand && piece.from < from).length;
      const slot = Math.min(before, (places.get(demand) ?? 1) - 1);
      const choice = choices.find(
        (one) => one.board === board && one.demand === demand && (one.slot ?? slot) === slot,
      );
      if (!choice) return [];
      values.set(choice.taken, 1);
    }
  }
  return [...values];
}

function sum(choices: readonly Choice[], of: 'taken' | 'length', times = 1): readonly Term[] {
  return choices.map((choice): Term => [choice[of], times]);
}

/** One column, less so many times another. */
function difference(one: number, other: number, times = 1): readonly Term[] {
  return [
    [one, 1],
    [other, -times],
  ];
}
