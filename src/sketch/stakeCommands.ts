import type { Point } from '../geometry/point.ts';
import type { Command } from '../job/commands.ts';
import type { Job } from '../job/job.ts';
import type { FormRun } from '../takeoff/result.ts';
import { placeOn, type SiteStake, stretchFor } from './formLine.ts';

/** The id of the stake that the next command sets by hand. */
export function nextHand({ nextId }: Pick<Job, 'nextId'>): string {
  return `s${nextId}`;
}

/** A stake is to stand here: one set by hand before, or one more. */
export function pin(at: Point, hand: string | null): Command {
  return { do: 'pin-stake', at, ...(hand === null ? {} : { id: hand }) };
}

/** A stake is to stand so far from the start of a run; null where it has no room on the board. */
export function pinAt(run: FormRun, along: number, hand: string | null): Command | null {
  const { least, most } = stretchFor(run);
  return along < least || along > most ? null : pin(placeOn(run, along).face, hand);
}

/** A stake of the plan, or one set by hand, is to be left out. */
export function takeAway({ face, hand }: SiteStake): Command {
  return { do: 'remove-stake', at: face, ...(hand === null ? {} : { id: hand }) };
}
