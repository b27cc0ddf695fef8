import type { Point } from '../../geometry/point.ts';
import { samePoint } from '../../geometry/point.ts';
import type { Command } from '../../job/commands.ts';
import { type FormPlace, pickOf, type SiteStake, steppedPlace } from '../formLine.ts';
import { nextHand, pin } from '../stakeCommands.ts';
import { stepAt } from '../view.ts';
import { type Pointer, type Scene, type Selection, type Step, stay } from './tool.ts';

/** A stake in the hand, slid along the forms. */
export interface Sliding {
  readonly at: 'sliding';
  readonly stake: SiteStake;
  /** The id that it has, or will have, as one set by hand. */
  readonly hand: string;
  /** How far from its place the pointer took hold. */
  readonly grip: Point;
  readonly place: FormPlace;
  readonly command: Command | null;
}

export function holdStake(stake: SiteStake, at: Point, scene: Scene): Sliding {
  return {
    at: 'sliding',
    stake,
    hand: stake.hand ?? nextHand(scene.job),
    grip: { x: at.x - stake.face.x, y: at.y - stake.face.y },
    place: stake,
    command: null,
  };
}

/** The stake goes to the nearest place on a form, by whole steps from the nearer end of the run. */
export function slideStake<S>(state: Sliding & S, pointer: Pointer, scene: Scene): Step<Sliding> {
  const { stake, grip } = state;
  const at = { x: pointer.at.x - grip.x, y: pointer.at.y - grip.y };
  const step = stepAt(scene.view, scene.job.units);
  const place = steppedPlace(scene.formLine?.runs ?? [], at, step);
  if (!place) return stay(state);
  if (samePoint(place.face, stake.face)) {
    return { state: { ...state, place: stake, command: null }, effects: [{ do: 'discard' }] };
  }
  const command = pin(place.face, stake.hand);
  return { state: { ...state, place, command }, effects: [{ do: 'preview', command }] };
}

/** What is selected once the stake is let go. */
export function selectionOf({ stake, hand, command }: Sliding): Selection {
  return { stake: command ? { hand } : pickOf(stake) };
}
