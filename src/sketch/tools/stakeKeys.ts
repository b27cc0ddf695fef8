import { placeOn, type SiteStake, steppedAlong } from '../formLine.ts';
import { nextHand, pin, takeAway } from '../stakeCommands.ts';
import { stepAt } from '../view.ts';
import { type Effect, FAR, type Key, type Scene } from './tool.ts';

/** Which way an arrow key points: across and up. */
const ARROWS: Readonly<Partial<Record<Key, readonly [number, number]>>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** An arrow that points away from a run by more than this (its cosine) moves no stake on it. */
const ACROSS = 0.02;

/**
 * What a key does to the picked stake: Delete takes it away, or frees the place that it was taken from; an arrow moves it
 * along its run, the way that it points; Enter opens its place to be typed.
 */
export function stakeByKey(
  { key, far }: { readonly key: Key; readonly far: boolean },
  stake: SiteStake,
  scene: Scene,
): readonly Effect[] {
  if (key === 'Enter') return [{ do: 'ask-length' }];
  if (key === 'Delete' || key === 'Backspace') return deleted(stake, scene);
  const [across, up] = ARROWS[key] ?? [0, 0];
  return nudged(stake, across, up, far, scene);
}

function deleted(stake: SiteStake, { job }: Scene): readonly Effect[] {
  const { is, hand } = stake;
  if (is === 'removed' && hand !== null) {
    return [{ do: 'commit', command: { do: 'free-stake', id: hand } }];
  }
  return [
    { do: 'commit', command: takeAway(stake) },
    { do: 'select', selection: { stake: { hand: hand ?? nextHand(job) } } },
  ];
}

function nudged(
  stake: SiteStake,
  across: number,
  up: number,
  far: boolean,
  scene: Scene,
): readonly Effect[] {
  const { run, along, outward, hand, is } = stake;
  // Outward is to the right of the way along the run.
  const way = -across * Math.sin(outward) + up * Math.cos(outward);
  if (is === 'removed' || Math.abs(way) < ACROSS) return [];
  const step = stepAt(scene.view, scene.job.units);
  const to = steppedAlong(run, along + Math.sign(way) * step * (far ? FAR : 1), step);
  if (to === along) return [];
  return [
    { do: 'commit', command: pin(placeOn(run, to).face, hand) },
    { do: 'select', selection: { stake: { hand: hand ?? nextHand(scene.job) } } },
  ];
}
