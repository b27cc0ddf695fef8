import { useRef } from 'react';
import type { Job } from '../job/job.ts';
import type { Station } from '../takeoff/figure.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { type FormLine, formLineOf } from './formLine.ts';

interface Known {
  readonly takeoff: Takeoff;
  readonly handStakes: Job['handStakes'];
  readonly line: FormLine | null;
}

/**
 * The forms as a pointer finds them, made when one asks. While something is dragged they stay as they were when it was
 * taken hold of, so that no frame makes them again.
 * @param inHand Whether the takeoff may be that of the preview of a gesture under way.
 */
export function useFormLine(
  job: Job,
  takeoff: Takeoff,
  station: Station,
  inHand: boolean,
): () => FormLine | null {
  const known = useRef<Known | null>(null);
  return () => {
    if (station !== 'forms') return null;
    const before = known.current;
    const { handStakes } = job;
    const isSame = before?.takeoff === takeoff && before.handStakes === handStakes;
    if (before && (inHand || isSame)) return before.line;
    const line = formLineOf(job, takeoff);
    known.current = { takeoff, handStakes, line };
    return line;
  };
}
