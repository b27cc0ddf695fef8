import { withOnTruck } from '../../job/boardLists.ts';
import type { Job, Lumber } from '../../job/job.ts';
import { FOOT, type Grid } from '../../units/grid.ts';
import type { BoardPlan, CutBoard } from './plan.ts';

/** Rests of at least this are kept: the shortest piece of the practices, and no less than a list of boards takes. */
export function leastKept({ practices }: Job): Grid {
  return Math.max(practices.boards.shortest, FOOT);
}

/** The boards of a plan of which something is left that is worth keeping. */
export function keptRests(job: Job, { boards }: BoardPlan): readonly CutBoard[] {
  const least = leastKept(job);
  return boards.filter(({ left }) => left >= least);
}

/**
 * What is on the truck after the job: the boards that the plan takes are off it, the rests worth keeping on it, each as
 * straight or twisted as its board. What was bought and used up is in the forms.
 */
export function leftovers(job: Job, plan: BoardPlan): Lumber['truck'] {
  const taken = new Map<string, number>();
  for (const { from, stock } of plan.boards) {
    if (from === 'truck') taken.set(stock, (taken.get(stock) ?? 0) + 1);
  }
  const rows = new Map(job.lumber.truck.map((row) => [row.id, row]));
  const truck = job.lumber.truck
    .map((row) => ({ ...row, count: row.count - (taken.get(row.id) ?? 0) }))
    .filter(({ count }) => count > 0);
  const rests = keptRests(job, plan).map(({ from, stock, left }) => {
    const row = from === 'truck' ? rows.get(stock) : undefined;
    const size = job.practices.formBoard;
    return { size, length: left, count: 1, twisted: row?.twisted ?? false };
  });
  return withOnTruck({ ...job.lumber, truck }, rests).truck;
}
