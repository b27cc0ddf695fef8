import { nearestOnEdge } from '../../geometry/nearest.ts';
import type { Point } from '../../geometry/point.ts';
import type { FormRun } from '../result.ts';

/** A place on a form run. */
export interface RunPlace {
  readonly run: FormRun;
  /** From the start of the run, grid units (a float: nothing here is stored before it is rounded). */
  readonly along: number;
  /** How far the point is from it. */
  readonly away: number;
}

/** The place on these runs that is nearest to a point; of two as near, the one listed first. Null without runs. */
export function nearestOnRuns(runs: readonly FormRun[], at: Point): RunPlace | null {
  let best: RunPlace | null = null;
  for (const run of runs) {
    let before = 0;
    for (const { from, to, arc, length } of run.edges) {
      const { t, distance } = nearestOnEdge(from, to, arc, at);
      if (!best || distance < best.away) best = { run, along: before + t * length, away: distance };
      before += length;
    }
  }
  return best;
}
