import type { Point } from '../../geometry/point.ts';
import type { Job } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import { DRESSED } from '../forms/rules.ts';
import type { NetPour } from '../outline/pour.ts';
import type { FormRun, FormsResult } from '../result.ts';
import type { FormSite } from '../stakes/formSite.ts';
import type { Stretch } from '../stakes/leastStakes.ts';
import { HALF_STAKE } from '../stakes/rules.ts';
import { layBoards } from './layBoards.ts';
import type { BoardDemand } from './plan.ts';
import { LEAST_BOARD } from './rules.ts';

/** What the runs need of boards, and what must be said of the places where they end. */
export interface Demands {
  readonly demands: readonly BoardDemand[];
  /** Bent from something thinner. */
  readonly curved: readonly FormRun[];
  /** Too short for a board of their own: shorter than it is thick, or taken up by those at their corners. */
  readonly tooShort: readonly FormRun[];
  /** Corners where neither board can pass. */
  readonly tight: readonly Point[];
  /** Ends where a board stops against what stands there, and where it is lapped onto it. */
  readonly stops: readonly Point[];
  readonly laps: readonly Point[];
}

/**
 * What every straight form run needs of boards. Lengths of runs are of the inside face; the boards stand outside it.
 */
export function boardDemands(job: Job, pour: NetPour, forms: FormsResult, site: FormSite): Demands {
  const { formBoard, boards } = job.practices;
  const { ends, ...places } = layBoards(job, pour, forms, site);
  const { thickness } = DRESSED[formBoard];
  // Room for the whole cleat, and for a stake past either end of it.
  const around = Math.ceil(boards.cleatLength / 2) + 2 * HALF_STAKE;
  const all = [...ends].map(([run, { start, end }]) => {
    // A wall at its back holds a splice as well as stakes do.
    const clear = site.clear.get(run) ?? [{ from: 0, to: run.length }];
    const demand: BoardDemand = {
      run: run.mark,
      start,
      end,
      need: run.length + start.past + end.past,
      most: run.length + start.room + end.room,
      spliceOn: spliceStretches(clear, around, start.past),
    };
    return { run, demand };
  });
  const isShort = ({ run, demand }: (typeof all)[number]) =>
    run.length < thickness || demand.need < LEAST_BOARD;
  return {
    demands: all.flatMap((one) => (isShort(one) ? [] : [one.demand])),
    curved: forms.runs.filter(({ curved }) => curved),
    tooShort: all.flatMap((one) => (isShort(one) ? [one.run] : [])),
    ...places,
  };
}

/** Where two boards may meet, from the start of the boards: as far as `around` within ground clear for stakes. */
function spliceStretches(clear: readonly Stretch[], around: Grid, past: Grid): readonly Stretch[] {
  return clear
    .map(({ from, to }) => ({ from: from + around + past, to: to - around + past }))
    .filter(({ from, to }) => from <= to);
}
