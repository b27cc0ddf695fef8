import type { Point } from '../geometry/point.ts';
import type { HandStake, Job } from '../job/job.ts';
import { placeAlong } from '../takeoff/forms/along.ts';
import { nearestOnRuns } from '../takeoff/forms/nearestOnRuns.ts';
import type { FormRun, FormsResult, Stake, Takeoff } from '../takeoff/result.ts';
import { handPlaces } from '../takeoff/stakes/byHand.ts';
import { HALF_STAKE } from '../takeoff/stakes/rules.ts';
import type { Grid } from '../units/grid.ts';

/** Which stake is picked: one set by hand by its id, one of the plan by where it stands. */
export type PickedStake =
  | { readonly hand: string }
  | { readonly run: string; readonly along: Grid };

/** A place on the inside face of a form. */
export interface FormPlace {
  readonly run: FormRun;
  /** From the start of the run. */
  readonly along: Grid;
  /** On the grid. */
  readonly face: Point;
  /** Direction from the face outward, radians. */
  readonly outward: number;
}

/** A stake as a pointer finds it, and a place that one was taken away from. */
export interface SiteStake extends FormPlace {
  readonly is: 'planned' | 'pinned' | 'removed';
  /** The id of one set by hand. */
  readonly hand: string | null;
}

/** The forms as a pointer finds them. */
export interface FormLine {
  readonly runs: readonly FormRun[];
  /** Along each run in turn. */
  readonly stakes: readonly SiteStake[];
  /** Set by hand, but on no form any more: the sketch has changed since. */
  readonly off: readonly HandStake[];
}

/** Everything on the forms that can be picked. Null where no forms could be figured. */
export function formLineOf(job: Job, takeoff: Takeoff): FormLine | null {
  const { forms, stakes } = takeoff;
  if (!forms || !stakes) return null;
  const runs = new Map(forms.runs.map((run, index) => [run.mark, { run, index }]));
  const driven = stakes.stakes.flatMap((stake): readonly SiteStake[] => {
    const found = runs.get(stake.run);
    return found ? [drivenStake(found.run, stake)] : [];
  });
  const standing = new Set(driven.map(({ hand }) => hand));
  const { places, off } = setByHand(job.handStakes, forms);
  const others = places.filter(({ hand }) => !standing.has(hand));
  const order = (stake: SiteStake) => runs.get(stake.run.mark)?.index ?? 0;
  const all = [...driven, ...others].sort((a, b) => order(a) - order(b) || a.along - b.along);
  return { runs: forms.runs, stakes: all, off };
}

/** Stakes set by hand where they fall on the forms, pinned or taken away. */
export function setByHand(
  stakes: readonly HandStake[],
  { runs }: FormsResult,
): { readonly places: readonly SiteStake[]; readonly off: readonly HandStake[] } {
  const { byRun, off } = handPlaces(stakes, runs);
  const places = runs.flatMap((run) =>
    (byRun.get(run.mark) ?? []).map(
      ({ id, is, along }): SiteStake => ({ ...placeOn(run, along), is, hand: id }),
    ),
  );
  return { places, off };
}

function drivenStake(run: FormRun, { along, hand }: Stake): SiteStake {
  const place = placeOn(run, along);
  return hand === undefined
    ? { ...place, is: 'planned', hand: null }
    : { ...place, is: 'pinned', hand };
}

/** The stake that was picked, in a takeoff that may be of a later frame; null when it is no longer there. */
export function pickedIn(job: Job, takeoff: Takeoff, picked: PickedStake): SiteStake | null {
  const { forms } = takeoff;
  if (!forms) return null;
  const driven = takeoff.stakes?.stakes.find((stake) =>
    'hand' in picked
      ? stake.hand === picked.hand
      : stake.hand === undefined && stake.run === picked.run && stake.along === picked.along,
  );
  const run = driven && forms.runs.find(({ mark }) => mark === driven.run);
  if (driven && run) return drivenStake(run, driven);
  const set = 'hand' in picked ? job.handStakes.find(({ id }) => id === picked.hand) : undefined;
  return (set && setByHand([set], forms).places[0]) ?? null;
}

export function isPicked(stake: SiteStake, picked: PickedStake | null | undefined): boolean {
  if (!picked) return false;
  if ('hand' in picked) return stake.hand === picked.hand;
  return stake.hand === null && stake.run.mark === picked.run && stake.along === picked.along;
}

export function pickOf({ hand, run, along }: SiteStake): PickedStake {
  return hand === null ? { run: run.mark, along } : { hand };
}

export function placeOn(run: FormRun, along: Grid): FormPlace {
  const { x, y, outward } = placeAlong(run.edges, along);
  return { run, along, face: { x: Math.round(x), y: Math.round(y) }, outward };
}

/** From where to where along a run the middle of a stake can be: no stake stands past the end of its board. */
export function stretchFor({ length }: FormRun): { readonly least: Grid; readonly most: Grid } {
  const least = Math.min(HALF_STAKE, Math.floor(length / 2));
  return { least, most: length - least };
}

/** The place on a form nearest to a point, a whole step from the nearer end of its run. */
export function steppedPlace(runs: readonly FormRun[], at: Point, step: number): FormPlace | null {
  const near = nearestOnRuns(runs, at);
  return near && placeOn(near.run, steppedAlong(near.run, near.along, step));
}

/** A whole step from the nearer end of a run. */
export function steppedAlong(run: FormRun, along: number, step: number): Grid {
  const { least, most } = stretchFor(run);
  const whole = (distance: number) => Math.round(Math.round(distance / step) * step);
  const stepped = along <= run.length / 2 ? whole(along) : run.length - whole(run.length - along);
  return Math.min(most, Math.max(least, stepped));
}
