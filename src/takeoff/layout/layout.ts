import type { Job } from '../../job/job.ts';
import type { Note } from '../figure.ts';
import { LEAST_TOLERANCE } from '../outline/layout.ts';
import type { NetPour } from '../outline/pour.ts';
import {
  type Baseline,
  baselinesOf,
  type EdgeRef,
  firstBaseline,
  type Offsets,
  offsets,
} from './baseline.ts';
import { blocksOf } from './blocked.ts';
import { between, cornerAfter, type LaidPad, laidPad } from './corners.ts';
import { type Across, formTies, type Tie } from './diagonals.ts';
import { layoutNote } from './layoutNote.ts';
import { axesAlong, axesBetween, printedAcross } from './printedAcross.ts';
import { type FitReadings, NO_FIT, type TapeFit, tapeFit } from './tapeFit.ts';
import { fourOf, NO_READINGS, type TapeReadings, type TapeSaid, tapeSaid } from './tapeSaid.ts';
import {
  firstMarks,
  type MarkRef,
  marksOf,
  type TapeMark,
  type TapeTies,
  tapeTies,
} from './tapeTies.ts';
import { type Square, squares } from './threeFourFive.ts';

/** What somebody chose to set out by; what is left out is chosen by rule. */
export interface LayoutChoice {
  /** Id of a pad. */
  readonly pad?: string;
  readonly baseline?: EdgeRef;
  readonly marks?: readonly [MarkRef, MarkRef];
  /** What the tape said of a form with four straight sides; of any other. */
  readonly tape?: TapeReadings;
  readonly fit?: FitReadings;
}

/** Squaring and setting out of one pad's form. A part is absent when it can't be figured; the notes say why. */
export interface Layout {
  readonly laid?: LaidPad;
  readonly ties: readonly Tie[];
  readonly squares: readonly Square[];
  readonly baselines: readonly Baseline[];
  /** The line that is measured from when none is chosen. */
  readonly first?: Baseline;
  readonly offsets?: Offsets;
  readonly marks: readonly TapeMark[];
  readonly tapeTies?: TapeTies;
  readonly tapeSaid?: TapeSaid;
  readonly tapeFit?: TapeFit;
  readonly notes: {
    readonly form: readonly Note[];
    readonly baseline: readonly Note[];
    readonly ties: readonly Note[];
    readonly tape: readonly Note[];
  };
}

/**
 * All that is taped to set a form out and to square it.
 * @param pour The net pour of the same job: it says which corners have a form.
 */
export function layoutOf(job: Job, pour: NetPour | undefined, choice: LayoutChoice): Layout {
  const closeness = Math.max(job.practices.closeEnough, LEAST_TOLERANCE);
  const found = laidPad(job, pour, choice.pad, closeness);
  const laid = found.figured;
  if (!laid) return { ...NOTHING, notes: { ...NOTHING.notes, form: found.notes } };
  const blocks = blocksOf(job);
  const ties = formTies(laid, blocks, acrossOf(job, pour, laid));
  const baselines = baselinesOf(job, laid);
  const first = firstBaseline(baselines, laid, closeness);
  const off = offsets(laid, baselines, choice.baseline, first);
  const marks = marksOf(job, laid);
  const pair = choice.marks ? undefined : firstMarks(marks, laid, blocks);
  const tied = tapeTies(laid, marks, choice.marks, pair, blocks);
  const said = tapeSaid(laid, choice.tape ?? NO_READINGS);
  const fit = fourOf(laid) ? undefined : tapeFit(laid, ties, choice.fit ?? NO_FIT);
  return {
    laid,
    ties,
    squares: squares(laid, job.units),
    baselines,
    ...(first ? { first } : {}),
    ...(off.figured ? { offsets: off.figured } : {}),
    marks,
    ...(tied.figured ? { tapeTies: tied.figured } : {}),
    ...(said?.figured ? { tapeSaid: said.figured } : {}),
    ...(fit?.figured ? { tapeFit: fit.figured } : {}),
    notes: {
      form: formNotes(laid, ties),
      baseline: off.notes,
      ties: tied.notes,
      tape: said?.notes ?? fit?.notes ?? [],
    },
  };
}

/** Along the axes that the pour is measured by; those of the pad where a corner isn't one of the pour. */
function acrossOf({ units }: Job, pour: NetPour | undefined, { pad }: LaidPad): Across {
  const { corners } = pad.shape;
  const own = axesAlong(
    corners.map((from, i) => {
      const to = cornerAfter(pad.shape, i);
      return { from, to, length: between(from, to), ...(from.rise === 0 ? {} : { arc: true }) };
    }),
  );
  const axes = axesBetween(pour);
  return (from, to) => printedAcross(from, to, axes(from, to) ?? own, units);
}

const NOTHING: Layout = {
  ties: [],
  squares: [],
  baselines: [],
  marks: [],
  notes: { form: [], baseline: [], ties: [], tape: [] },
};

function formNotes({ pad, corners }: LaidPad, ties: readonly Tie[]): readonly Note[] {
  return [
    ...(ties.length >= 5 ? [layoutNote('assumption', 'layout-not-proof')] : []),
    ...(corners.length < pad.shape.corners.length
      ? [layoutNote('assumption', 'layout-sides-left')]
      : []),
  ];
}
