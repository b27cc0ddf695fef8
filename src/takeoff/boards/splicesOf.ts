import type { Grid } from '../../units/grid.ts';
import type { BoardsResult } from '../result.ts';
import type { Splices } from '../stakes/splices.ts';

/** Where the boards of a plan meet along each run, from the run's own start. */
export function splicesOf({ problem, plan }: Pick<BoardsResult, 'problem' | 'plan'>): Splices {
  const past = new Map(problem.demands.map(({ run, start }) => [run, start.past]));
  const starts = new Map<string, Grid[]>();
  for (const { run, from } of plan.boards.flatMap(({ pieces }) => pieces)) {
    const all = starts.get(run);
    if (all) all.push(from);
    else starts.set(run, [from]);
  }
  return new Map(
    [...starts].flatMap(([run, from]) => {
      // The first piece starts at the run's end; each of the others, at a splice.
      const splices = from.toSorted((a, b) => a - b).slice(1);
      return splices.length > 0 ? [[run, splices.map((at) => at - past.get(run)!)] as const] : [];
    }),
  );
}
