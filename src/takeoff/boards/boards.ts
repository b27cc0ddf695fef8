import type { Job, TruckBoards, YardBoard } from '../../job/job.ts';
import { lumberProblems } from '../../job/lumberProblems.ts';
import type { Note } from '../figure.ts';
import { type Figured, tradeNote, withheld } from '../notes.ts';
import type { NetPour } from '../outline/pour.ts';
import { length, text } from '../quantity.ts';
import type { BoardsResult, FormsResult } from '../result.ts';
import type { Searched } from '../searched.ts';
import type { FormSite } from '../stakes/formSite.ts';
import { boardNotes } from './boardNotes.ts';
import { boardDemands, type Demands } from './demands.ts';
import { firstPlan } from './firstPlan.ts';
import { type BoardDemand, type BoardProblem, keyOf, type NoPlan, type Stock } from './plan.ts';
import { CURVE_END } from './rules.ts';

/**
 * Boards for every straight form run, cut from what is on the truck and what the yard sells. The plan is the one that the
 * search found for this very problem, or a good one made at once.
 */
export function boards(
  job: Job,
  pour: NetPour,
  forms: FormsResult,
  site: FormSite,
  searched: Searched,
): Figured<BoardsResult> {
  if (forms.runs.length === 0) return { notes: [] };
  const size = job.practices.formBoard;
  const truck = job.lumber.truck.filter((row) => row.size === size);
  const yard = job.lumber.yard.filter((row) => row.size === size);
  const board = text(size);
  if (lumberProblems({ truck, yard }).length > 0) {
    return withheld(tradeNote('forms', 'stop', 'boards-row-wrong', { facts: { board } }));
  }
  const demands = boardDemands(job, pour, forms, site);
  const problem = problemOf(job, demands, truck, yard);
  const key = keyOf(problem);
  const found = searched.boards?.key === key ? searched.boards : firstPlan(problem);
  if ('none' in found) return withheld(whyNone(problem, found.none, forms));
  const curved = demands.curved.map((run) => ({
    run: run.mark,
    length: run.length + 2 * CURVE_END,
  }));
  const figured = { problem, key, plan: found.plan, curved };
  return { figured, notes: boardNotes(job, figured, demands) };
}

function problemOf(
  { practices }: Job,
  { demands }: Demands,
  truck: readonly TruckBoards[],
  yard: readonly YardBoard[],
): BoardProblem {
  const { kerf, shortest, splices, useTwisted } = practices.boards;
  // A sum of money only where every price is known; else the less board bought the better.
  const priced = yard.every(({ price }) => price !== undefined);
  const stock: Stock[] = [
    ...truck
      .filter(({ twisted }) => useTwisted || !twisted)
      .map(({ id, length: long, count }) => {
        return { id, from: 'truck' as const, length: long, count, price: 0 };
      }),
    ...yard.map(({ id, length: long, price }) => {
      return { id, from: 'yard' as const, length: long, price: priced ? (price ?? 0) : long };
    }),
  ];
  const pricedBy = priced ? 'money' : 'length';
  return { size: practices.formBoard, demands, stock, pricedBy, kerf, shortest, splices };
}

/** What stands in the way of a plan, and what to change. */
function whyNone(problem: BoardProblem, none: NoPlan, { runs }: FormsResult): Note {
  const board = text(problem.size);
  switch (none.is) {
    case 'no-boards':
      return tradeNote('forms', 'stop', 'boards-none', { facts: { board } });
    case 'not-enough':
      return tradeNote('forms', 'stop', 'boards-not-enough', {
        facts: { board, runs: text(none.runs.join(', ')) },
      });
    case 'run-too-long': {
      const { need }: BoardDemand = problem.demands.find(({ run }) => run === none.run)!;
      const facts = {
        board,
        run: text(none.run),
        need: length(need),
        longest: length(none.longest),
      };
      const run = runs.find(({ mark }) => mark === none.run)!;
      const at = [run.edges[0]!.from, run.edges.at(-1)!.to];
      return problem.splices
        ? tradeNote('forms', 'stop', 'boards-run-no-splice', { facts, at })
        : tradeNote('forms', 'stop', 'boards-run-too-long', { facts, at });
    }
  }
}
