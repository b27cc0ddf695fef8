import { samePoint } from '../geometry/point.ts';
import type { Result } from '../units/result.ts';
import type { HandStake, Job } from './job.ts';
import { type Outcome, type Refusal, refuse } from './refusal.ts';
import { MOST_HAND_STAKES } from './schema.ts';
import { placeUnsound } from './soundness.ts';

export function findHandStake({ handStakes }: Job, id: string): Result<HandStake, Refusal> {
  const stake = handStakes.find((one) => one.id === id);
  return stake ? { ok: true, value: stake } : refuse('no-such-stake', id);
}

/** Sets one more stake by hand, or one that is set already another way. */
export function setStake(job: Job, { at, is }: Omit<HandStake, 'id'>, id?: string): Outcome {
  const before = id === undefined ? null : findHandStake(job, id);
  if (before && !before.ok) return before;
  const where = id ?? `s${job.nextId}`;
  const unsound = placeUnsound(at);
  if (unsound) return refuse(unsound, where);
  const twin = job.handStakes.find((one) => one.id !== id && samePoint(one.at, at));
  if (twin) return refuse('stake-there-already', twin.id, { at: [twin.at] });
  const place = { x: at.x, y: at.y };
  if (!before) {
    if (job.handStakes.length >= MOST_HAND_STAKES) {
      return refuse('too-many-hand-stakes', where, { facts: { most: MOST_HAND_STAKES } });
    }
    const handStakes = [...job.handStakes, { id: where, at: place, is }];
    return { ok: true, value: { ...job, handStakes, nextId: job.nextId + 1 } };
  }
  const stake = before.value;
  if (samePoint(stake.at, at) && stake.is === is) return { ok: true, value: job };
  const set: HandStake = { ...stake, at: place, is };
  const handStakes = job.handStakes.map((one) => (one === stake ? set : one));
  return { ok: true, value: { ...job, handStakes } };
}
