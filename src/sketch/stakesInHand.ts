import type { Job } from '../job/job.ts';
import type { Station } from '../takeoff/figure.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { formatLength } from '../units/length.ts';
import { type FormPlace, pickedIn, placeNear, type SiteStake } from './formLine.ts';
import type { Showing } from './tools/machine.ts';
import type { Selection } from './tools/tool.ts';

/** What is shown of single stakes above the drawing. */
export interface StakesInHand {
  /** Places that stakes were taken away from, so that they can be picked and freed. */
  readonly removed: readonly FormPlace[];
  /** The stake that is picked or dragged. */
  readonly picked: SiteStake | null;
  /** How far it is from the start and from the end of its run, written. */
  readonly lengths: readonly [string, string] | null;
}

export const NO_STAKES: StakesInHand = { removed: [], picked: null, lengths: null };

/**
 * Stakes at the station of the forms. A stake that is dragged is where the hand has it, though the plan round it may be a
 * frame behind.
 */
export function stakesInHand(
  job: Job,
  takeoff: Takeoff,
  station: Station,
  selection: Selection | null,
  { sliding }: Showing,
): StakesInHand {
  const runs = takeoff.forms?.runs;
  if (station !== 'forms' || !runs) return NO_STAKES;
  const removed = job.handStakes.flatMap(({ is, at }) => {
    const place = is === 'removed' ? placeNear(runs, at) : null;
    return place ? [place] : [];
  });
  const selected = selection?.stake ? pickedIn(job, takeoff, selection.stake) : null;
  const picked: SiteStake | null = sliding
    ? { ...sliding.place, is: 'pinned', hand: sliding.hand }
    : selected;
  if (!picked) return { removed, picked, lengths: null };
  const written = (length: number) => formatLength(length, job.units);
  const { along, run } = picked;
  return { removed, picked, lengths: [written(along), written(run.length - along)] };
}
