import { INCH } from '../units/grid.ts';
import type { Job, Practices } from './job.ts';
import type { PourDayPractices } from './pourLog.ts';

/** What counts on the day of the pour where nobody has set anything. */
export const USUAL_POUR_DAY: PourDayPractices = {
  // A yard half an hour off, both ways, and somebody at the counter: common practice, no source.
  tripMinutes: 60,
  marginMinutes: 15,
  // Ground as it was dug, neither raked nor tamped: common practice, no source.
  patchDepth: INCH / 2,
  // Where wet concrete ends is told to half a foot: common practice, no source.
  frontError: 6 * INCH,
  checks: [],
};

export function pourDayOf({ pourDay }: Practices): PourDayPractices {
  return pourDay ?? USUAL_POUR_DAY;
}

/** The job for another pour: neither what was tapped at this one nor its close-out goes along. */
export function withoutPour({ pourLog: _, closeOut: __, ...job }: Job): Job {
  return job;
}
