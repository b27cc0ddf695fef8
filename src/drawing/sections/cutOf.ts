import type { Job } from '../../job/job.ts';
import { DRESSED } from '../../takeoff/forms/rules.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { HALF_STAKE } from '../../takeoff/stakes/rules.ts';
import { INCH } from '../../units/grid.ts';
import type { DrawingWords } from '../words/en.ts';
import { againstOld } from './againstOld.ts';
import { controlJoint } from './controlJoint.ts';
import type { Cut, CutFrom, SectionKind } from './cut.ts';
import { freeEdge } from './freeEdge.ts';

/** How far a section shows to either side of the edge, grid units. */
export interface Shown {
  readonly left: number;
  readonly right: number;
}

/** The least that a section has to show for all that is in it to be seen. */
export function leastShown(kind: SectionKind, job: Job, { volume }: Takeoff): Shown {
  const { formBoard } = job.practices;
  switch (kind) {
    case 'free':
    case 'thickened': {
      const { width = 0, taper = 0 } = volume?.thickened ?? {};
      const left = DRESSED[formBoard].thickness + 2 * HALF_STAKE + 2.5 * INCH;
      return { left, right: Math.max(9 * INCH, width + taper + 4 * INCH) };
    }
    case 'control-joint':
      return { left: 6 * INCH, right: 8 * INCH };
    case 'existing-slab':
    case 'wall':
    case 'wall-formed':
    case 'steps':
    case 'block-out':
      return { left: 6 * INCH, right: 9 * INCH };
    default:
      return kind satisfies never;
  }
}

/** A section by what is in it. */
export function cutOf(
  kind: SectionKind,
  job: Job,
  takeoff: Takeoff,
  words: DrawingWords,
  shown: Shown,
): Cut {
  const from: CutFrom = { job, takeoff, words, ...shown };
  switch (kind) {
    case 'free':
    case 'thickened':
      return freeEdge(from);
    case 'control-joint':
      return controlJoint(from);
    case 'existing-slab':
    case 'wall':
    case 'wall-formed':
    case 'steps':
    case 'block-out':
      return againstOld(from, kind);
    default:
      return kind satisfies never;
  }
}
