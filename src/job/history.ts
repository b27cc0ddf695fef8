import type { Job } from './job.ts';

/** A job as it stood, and what was done to get there (a command's `do`, or '' for the start). */
export interface Moment {
  readonly job: Job;
  readonly label: string;
}

/** Every state of the job since it was opened, oldest first. Jobs share what they have in common. */
export interface History {
  readonly past: readonly Moment[];
  readonly now: Moment;
  /** What was undone, the next to be redone first. */
  readonly future: readonly Moment[];
}

export function begin(job: Job): History {
  return { past: [], now: { job, label: '' }, future: [] };
}

/** One gesture, one moment. What had been undone is gone. A job that is the same object is no moment. */
export function push(history: History, job: Job, label: string): History {
  if (job === history.now.job) return history;
  return { past: [...history.past, history.now], now: { job, label }, future: [] };
}

export function canUndo(history: History): boolean {
  return history.past.length > 0;
}

export function canRedo(history: History): boolean {
  return history.future.length > 0;
}

/** The same history when there is nothing to undo. */
export function undo(history: History): History {
  const before = history.past.at(-1);
  if (!before) return history;
  return {
    past: history.past.slice(0, -1),
    now: before,
    future: [history.now, ...history.future],
  };
}

/** The same history when there is nothing to redo. */
export function redo(history: History): History {
  const [after, ...future] = history.future;
  if (!after) return history;
  return { past: [...history.past, history.now], now: after, future };
}
