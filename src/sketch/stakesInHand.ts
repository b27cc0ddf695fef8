import type { Job, UnitStyle } from '../job/job.ts';
import type { FormsResult, Takeoff } from '../takeoff/result.ts';
import { formatLength } from '../units/length.ts';
import { type FormPlace, pickedIn, type SiteStake, setByHand } from './formLine.ts';
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

/** Places on the forms that stakes were taken away from. */
export function removedPlaces(
  handStakes: Job['handStakes'],
  forms: FormsResult,
): readonly FormPlace[] {
  const removed = handStakes.filter(({ is }) => is === 'removed');
  return setByHand(removed, forms).places;
}

/**
 * The stake that is picked or dragged. A dragged one is where the hand has it, though the plan round it may be a frame
 * behind.
 */
export function stakeInHand(
  job: Job,
  takeoff: Takeoff,
  selection: Selection | null,
  { sliding }: Showing,
): SiteStake | null {
  if (sliding) return { ...sliding.place, is: 'pinned', hand: sliding.hand };
  return selection?.stake ? pickedIn(job, takeoff, selection.stake) : null;
}

/** How far a stake is from the start and from the end of its run, written. */
export function lengthsAbout(
  { along, run }: FormPlace,
  units: UnitStyle,
): readonly [string, string] {
  return [formatLength(along, units), formatLength(run.length - along, units)];
}
