import type { Job } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import { DRESSED } from '../forms/rules.ts';
import type { BoardPlan } from './plan.ts';

/**
 * How many of the boards that a plan buys could be ripped from deeper ones on the truck instead, each from one at least
 * as long as what is cut from it: the longest first, from the shortest that will do. Twisted ones are left out.
 */
export function ripped(job: Job, plan: BoardPlan): number {
  const { thickness, depth } = DRESSED[job.practices.formBoard];
  const deeper = job.lumber.truck
    .filter((row) => DRESSED[row.size].thickness === thickness && DRESSED[row.size].depth > depth)
    .filter(({ twisted }) => !twisted)
    .toSorted((a, b) => a.length - b.length)
    .map(({ length, count }) => ({ length, count }));
  const needs: Grid[] = plan.boards
    .filter(({ from }) => from === 'yard')
    .map(({ length, left }) => length - left)
    .sort((a, b) => b - a);
  let can = 0;
  for (const need of needs) {
    const row = deeper.find(({ length, count }) => length >= need && count > 0);
    if (!row) continue;
    row.count--;
    can++;
  }
  return can;
}
