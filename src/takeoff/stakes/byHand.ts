import { toGrid } from '../../geometry/round.ts';
import type { HandStake } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import { nearestOnRuns } from '../forms/nearestOnRuns.ts';
import type { FormRun } from '../result.ts';
import { HAND_REACH } from './rules.ts';

/** A stake set by hand, where it falls on its run. */
export interface HandPlace {
  readonly id: string;
  readonly is: HandStake['is'];
  readonly along: Grid;
}

export interface HandPlaces {
  /** By the run's mark. */
  readonly byRun: ReadonlyMap<string, readonly HandPlace[]>;
  /** Those that are on no run any more: the sketch has changed since. */
  readonly off: readonly HandStake[];
}

/** Stakes set by hand, each at the nearest place on a form run. */
export function handPlaces(stakes: readonly HandStake[], runs: readonly FormRun[]): HandPlaces {
  const byRun = new Map<string, HandPlace[]>();
  const off: HandStake[] = [];
  for (const stake of stakes) {
    const { id, is, at } = stake;
    const place = nearestOnRuns(runs, at);
    if (!place || place.away > HAND_REACH) {
      off.push(stake);
      continue;
    }
    const { run, along } = place;
    const places = byRun.get(run.mark) ?? [];
    places.push({ id, is, along: toGrid(along) });
    byRun.set(run.mark, places);
  }
  return { byRun, off };
}
