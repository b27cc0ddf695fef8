import type { Feature, Job } from '../../../src/job/job.ts';
import { type Layout, type LayoutChoice, layoutOf } from '../../../src/takeoff/layout/layout.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { jobOf, type Places, shape } from '../outline/site.ts';

/** A pad through places in feet, with what stands round it. */
export function padJob(places: Places, ...others: readonly Feature[]): Job {
  return jobOf([...others, shape('pad', 'pad', places)]);
}

export function layout(job: Job, choice: LayoutChoice = {}): Layout {
  return layoutOf(job, takeoff(job).pour, choice);
}

export const TEN_BY_TWELVE: Places = [
  [0, 0],
  [10, 0],
  [10, 12],
  [0, 12],
];

/** Equal diagonals, and no rectangle: far side 8 ft, legs 12'-0 1/2". */
export const LEANING_IN: Places = [
  [0, 0],
  [10, 0],
  [9, 12],
  [1, 12],
];

/** A notch of 5 by 5 ft out of 14 by 11. */
export const ELL: Places = [
  [0, 0],
  [14, 0],
  [14, 6],
  [9, 6],
  [9, 11],
  [0, 11],
];

export function codes(notes: readonly { readonly code: string }[]): readonly string[] {
  return notes.map(({ code }) => code);
}
