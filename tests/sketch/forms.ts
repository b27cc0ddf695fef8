import type { Feature, HandStake, Job } from '../../src/job/job.ts';
import { type FormLine, formLineOf } from '../../src/sketch/formLine.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT } from '../../src/units/grid.ts';
import { jobOf } from './jobs.ts';

/** A job whose form runs aren't spliced, so that their stakes stand evenly. */
export function formsJob(...features: readonly Feature[]): Job {
  const job = jobOf(...features);
  const { practices } = job;
  return { ...job, practices: { ...practices, boards: { ...practices.boards, splices: false } } };
}

/** A stake set by hand at a place in feet. */
export function handStake(id: string, is: HandStake['is'], x: number, y: number): HandStake {
  return { id, is, at: { x: Math.round(x * FOOT), y: Math.round(y * FOOT) } };
}

export function withHandStakes(job: Job, ...handStakes: readonly HandStake[]): Job {
  return { ...job, handStakes };
}

/** The forms of a job that has some. */
export function formLineFor(job: Job): FormLine {
  const line = formLineOf(job, takeoff(job));
  if (!line) throw new Error('the job has forms');
  return line;
}
