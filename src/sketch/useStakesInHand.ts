import { useMemo } from 'react';
import type { Job } from '../job/job.ts';
import type { Station } from '../takeoff/figure.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { lengthsAbout, removedPlaces, type StakesInHand, stakeInHand } from './stakesInHand.ts';
import type { Showing } from './tools/machine.ts';
import type { Selection } from './tools/tool.ts';

/** Single stakes above the drawing, at the station of the forms. */
export function useStakesInHand(
  job: Job,
  takeoff: Takeoff,
  station: Station,
  selection: Selection | null,
  showing: Showing,
): StakesInHand {
  const { handStakes } = job;
  const forms = station === 'forms' ? takeoff.forms : undefined;
  const removed = useMemo(
    () => (forms ? removedPlaces(handStakes, forms) : []),
    [handStakes, forms],
  );
  const picked = useMemo(
    () => (forms ? stakeInHand(job, takeoff, selection, showing) : null),
    [forms, job, takeoff, selection, showing],
  );
  return useMemo(
    () => ({ removed, picked, lengths: picked && lengthsAbout(picked, job.units) }),
    [removed, picked, job.units],
  );
}
