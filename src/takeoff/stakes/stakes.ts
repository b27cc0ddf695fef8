import type { Job, Practices } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import type { Note } from '../figure.ts';
import { DRESSED, formDepth } from '../forms/rules.ts';
import { type Figured, tradeNote, withheld } from '../notes.ts';
import { count } from '../quantity.ts';
import type { FormsResult, StakesResult } from '../result.ts';
import { spacingLimits } from './bending.ts';
import { handPlaces } from './byHand.ts';
import { fastening } from './fastening.ts';
import type { FormSite } from './formSite.ts';
import { stakeNotes } from './notes.ts';
import { evenPlaces, placeRun, type RunToStake } from './placeRun.ts';
import { MOST_ON_RUN, MOST_STAKES } from './rules.ts';
import { spacingOf } from './spacing.ts';
import type { Splices } from './splices.ts';

/**
 * Stakes outside the forms, each run with its own at both ends (so a corner is held by one on either side of it), and
 * what fastens them. Places are the middles of the stakes, on the grid.
 *
 * The spacing is the practice's for the board, capped by what the board bears, closer on curves. Evenly spaced where
 * nothing is in the way; otherwise the fewest that can be driven clear of no-stake zones, of what stands there, of buried
 * lines and of the pour, with one either side of every splice, and those set by hand where they are. Where no stake can go
 * the form is held by other means, counted apart. A form along a wall that can't be poured against has no room outside.
 */
export function stakes(
  job: Job,
  forms: FormsResult,
  about: FormSite,
  closeness: Grid,
  splices: Splices = NO_SPLICES,
): Figured<StakesResult> {
  const { practices } = job;
  const { stakeFromEnd, curve, formBoard, gapUnderForm, kickersAbove } = practices;
  const wrong = settingsWrong(practices);
  if (wrong) return withheld(wrong);
  const limits = spacingLimits(practices);
  if (!limits) return withheld(tradeNote('forms', 'stop', 'board-bears-nothing'));
  const hand = handPlaces(job.handStakes, forms.runs);
  const toStake = forms.runs.map((run): RunToStake => {
    const { spacing, governs } = spacingOf(run, limits, curve);
    return {
      run,
      spacing,
      governs,
      even: evenPlaces(run, spacing, stakeFromEnd, closeness),
      hand: hand.byRun.get(run.mark) ?? [],
      splices: splices.get(run.mark) ?? [],
    };
  });
  const all = toStake.reduce((sum, { even }) => sum + even.count, 0);
  if (all > MOST_STAKES || toStake.some(({ even }) => even.count > MOST_ON_RUN)) {
    return withheld(
      tradeNote('forms', 'stop', 'stakes-too-many', { facts: { stakes: count(all, 'stake') } }),
    );
  }
  const site = {
    ...about,
    board: DRESSED[formBoard].thickness,
    fromEnd: stakeFromEnd,
    closeness,
    kickers: formDepth(formBoard, gapUnderForm) > kickersAbove,
  };
  const placed = toStake.map((one) => placeRun(one, site));
  const driven = placed.flatMap((one) => one.stakes);
  const held = placed.flatMap((one) => one.held);
  const cleats = toStake.reduce((sum, one) => sum + one.splices.length, 0);
  const inside = held.filter(({ how }) => how === 'inside-stake').length;
  const kickers =
    held.filter(({ how }) => how === 'kicker').length + (site.kickers ? driven.length : 0);
  const counts = { stakes: driven.length + inside, kickers, corners: forms.corners, cleats };
  const fastened = fastening(practices.fastening, counts);
  if (!fastened) {
    const code =
      practices.fastening.by === 'screws' ? 'screws-per-box-zero' : 'nails-per-pound-zero';
    return withheld(tradeNote('forms', 'stop', code));
  }
  const figured = {
    stakes: driven,
    byRun: placed.map((one) => one.staked),
    held,
    broken: placed.flatMap((one) => one.broken),
    fastening: fastened,
  };
  return { figured, notes: stakeNotes(job, forms, figured, limits, hand.off) };
}

const NO_SPLICES: Splices = new Map();

/** A setting that stakes can't be placed by. */
function settingsWrong({
  stakeSpacings,
  formBoard,
  stakeFromEnd,
  curve,
  utilityTolerance,
}: Practices): Note | undefined {
  if (!(stakeSpacings[formBoard] > 0 && stakeFromEnd >= 0)) {
    return tradeNote('forms', 'stop', 'stake-spacing-zero');
  }
  if (!(curve.spacing > 0 && curve.flat > 0)) {
    return tradeNote('forms', 'stop', 'curve-spacing-zero');
  }
  if (!(utilityTolerance >= 0)) {
    return tradeNote('forms', 'stop', 'utility-tolerance-below-zero');
  }
  return undefined;
}
