import type { BoardsResult } from '../result.ts';
import type { Splices } from '../stakes/splices.ts';
import { piecesByRun } from './piecesByRun.ts';

/** Where the boards of a plan meet along each run, from the run's own start. */
export function splicesOf({ problem, plan }: Pick<BoardsResult, 'problem' | 'plan'>): Splices {
  const past = new Map(problem.demands.map(({ run, start }) => [run, start.past]));
  return new Map(
    [...piecesByRun(plan)].flatMap(([run, [, ...others]]) => {
      // The first piece starts at the run's end; each of the others, at a splice.
      const splices = others.map(({ from }) => from - past.get(run)!);
      return splices.length > 0 ? [[run, splices] as const] : [];
    }),
  );
}
