import type { Job } from '../../../src/job/job.ts';
import type { PourEntry, PourLog } from '../../../src/job/pourLog.ts';
import { lShapeJob, rectangleJob } from '../../../src/job/start.ts';
import { FOOT, INCH } from '../../../src/units/grid.ts';
import type { Result } from '../../../src/units/result.ts';

function sound(made: Result<Job>): Job {
  if (!made.ok) throw new Error('the pad is a good one');
  return made.value;
}

/** 12 by 10 ft, 3 1/2 in deep: 35 ft³ net, 10 % and whole bags of 0.60 ft³ make 65. */
export function pad(): Job {
  const job = sound(rectangleJob(12 * FOOT, 10 * FOOT));
  const { practices } = job;
  const waste = { ...practices.waste, by: 'share' as const };
  return { ...job, practices: { ...practices, waste, thickness: 3.5 * INCH, gapUnderForm: 0 } };
}

export function ell(): Job {
  return sound(lShapeJob(14 * FOOT, 10 * FOOT, 4 * FOOT, 3 * FOOT));
}

const MINUTE = 60_000;

/** A batch of so many bags of the regular mix, so many minutes in. */
export function batch(minute: number, bags = 2): PourEntry {
  return { is: 'batch', at: minute * MINUTE, bags: [{ mix: 'regular', bags }] };
}

export function front(minute: number, along: number, toward = 0): PourEntry {
  return { is: 'front', at: minute * MINUTE, toward, along };
}

export function log(...entries: readonly PourEntry[]): PourLog {
  return { checked: [], entries };
}
