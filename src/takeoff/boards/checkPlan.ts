import type { BoardPlan, BoardProblem, CutBoard } from './plan.ts';
import { boardMark } from './writePlan.ts';

/** What a plan does against its problem, and on which board, piece or run. */
export interface PlanFault {
  readonly is:
    | 'board-unknown'
    | 'too-many-boards'
    | 'board-unused'
    | 'board-too-short'
    | 'cuts-wrong'
    | 'left-wrong'
    | 'mark-wrong'
    | 'run-unknown'
    | 'run-bare'
    | 'run-starts-wrong'
    | 'run-ends-wrong'
    | 'pieces-apart'
    | 'piece-too-short'
    | 'splice-forbidden'
    | 'splice-misplaced'
    | 'length-not-whole'
    | 'cost-wrong';
  readonly where: string;
}

/**
 * Whether a plan answers its problem: every rule gone through afresh from the plan's own pieces. Empty when it does.
 * Nothing is shown that this finds fault with.
 */
export function checkPlan(problem: BoardProblem, plan: BoardPlan): readonly PlanFault[] {
  const faults: PlanFault[] = [];
  const fault = (is: PlanFault['is'], where: string) => faults.push({ is, where });
  checkBoards(problem, plan, fault);
  checkRuns(problem, plan, fault);
  checkCost(problem, plan, fault);
  return faults;
}

type Say = (is: PlanFault['is'], where: string) => void;

function checkBoards(problem: BoardProblem, plan: BoardPlan, fault: Say): void {
  for (const [at, board] of plan.boards.entries()) {
    const stock = stockOf(problem, board);
    if (!stock) fault('board-unknown', board.mark);
    if (board.mark !== boardMark(at)) fault('mark-wrong', board.mark);
    if (board.pieces.length === 0) fault('board-unused', board.mark);
    board.pieces.forEach(({ mark, from, length }, nth) => {
      if (mark !== `${board.mark}${nth + 1}`) fault('mark-wrong', mark);
      if (!(Number.isInteger(from) && Number.isInteger(length))) fault('length-not-whole', mark);
    });
    // The saw: a kerf after every piece, but none after one that ends with the board.
    const lengths = board.pieces.reduce((sum, { length }) => sum + length, 0);
    const betweenThem = problem.kerf * (board.pieces.length - 1);
    const rest = board.length - lengths - betweenThem;
    if (rest < 0) fault('board-too-short', board.mark);
    if (board.cuts !== board.pieces.length - (rest === 0 ? 1 : 0)) fault('cuts-wrong', board.mark);
    if (board.left !== Math.max(0, rest - problem.kerf)) fault('left-wrong', board.mark);
  }
  for (const stock of problem.stock) {
    const used = plan.boards.filter((board) => stockOf(problem, board) === stock).length;
    if (used > (stock.count ?? used)) fault('too-many-boards', stock.id);
  }
}

function stockOf(problem: BoardProblem, { stock, from, length }: CutBoard) {
  return problem.stock.find(
    (one) => one.id === stock && one.from === from && one.length === length,
  );
}

function checkRuns(problem: BoardProblem, plan: BoardPlan, fault: Say): void {
  const pieces = plan.boards.flatMap((board) => board.pieces);
  const known = new Set(problem.demands.map(({ run }) => run));
  for (const { run, mark } of pieces) if (!known.has(run)) fault('run-unknown', mark);
  for (const { run, need, most, start, end, spliceOn } of problem.demands) {
    const laid = pieces.filter((piece) => piece.run === run).sort((a, b) => a.from - b.from);
    const first = laid[0];
    const last = laid.at(-1);
    if (!first || !last) {
      fault('run-bare', run);
      continue;
    }
    const stop = last.from + last.length;
    if (first.from > 0 || first.from < start.past - start.room) fault('run-starts-wrong', run);
    if (stop < need || stop > need + end.room - end.past) fault('run-ends-wrong', run);
    if (stop - first.from > most) fault('run-ends-wrong', run);
    if (laid.length > 1 && !problem.splices) fault('splice-forbidden', run);
    for (const [nth, piece] of laid.entries()) {
      if (piece.length < Math.min(problem.shortest, need) || piece.length <= 0) {
        fault('piece-too-short', piece.mark);
      }
      if (nth === 0) continue;
      const before = laid[nth - 1]!;
      if (before.from + before.length !== piece.from) fault('pieces-apart', piece.mark);
      if (!spliceOn.some(({ from, to }) => from <= piece.from && piece.from <= to)) {
        fault('splice-misplaced', piece.mark);
      }
    }
  }
}

function checkCost(problem: BoardProblem, { boards, cost }: BoardPlan, fault: Say): void {
  const sum = (of: (board: CutBoard) => number) => boards.reduce((all, one) => all + of(one), 0);
  const needs = problem.demands.reduce((all, { need }) => all + need, 0);
  const says = {
    price: sum((board) => stockOf(problem, board)?.price ?? Number.NaN),
    cuts: sum(({ cuts }) => cuts),
    splices: sum(({ pieces }) => pieces.length) - problem.demands.length,
    waste: sum(({ length }) => length) - needs,
  };
  for (const of of ['price', 'cuts', 'splices', 'waste'] as const) {
    if (says[of] !== cost[of]) fault('cost-wrong', of);
  }
}
