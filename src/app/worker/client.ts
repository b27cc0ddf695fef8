import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import type { Answer, Ask } from './messages.ts';

/** A worker at the other end of a wire, so that tests can stand in for it. */
export interface WorkerLike {
  readonly ask: (ask: Ask) => void;
  readonly terminate: () => void;
}

export type StartWorker = (
  onAnswer: (answer: Answer) => void,
  onBroken: (why: string) => void,
) => WorkerLike;

export type Outcome =
  | { readonly is: 'done'; readonly takeoff: Takeoff; readonly took: number }
  | { readonly is: 'failed'; readonly why: string }
  /** It didn't answer in time and was ended. */
  | { readonly is: 'stuck' };

export interface TakeoffWorker {
  /** Newest wins: a job that is still waiting when another is asked for is never figured. */
  readonly ask: (job: Job) => void;
  readonly end: () => void;
}

/** One job at a time in one worker, which is ended when it takes longer than `patience` (milliseconds). */
export function createTakeoffWorker(
  start: StartWorker,
  patience: number,
  onOutcome: (job: Job, outcome: Outcome) => void,
): TakeoffWorker {
  let worker: WorkerLike | null = null;
  let busy: { readonly id: number; readonly job: Job } | null = null;
  let waiting: Job | null = null;
  let watchdog: ReturnType<typeof setTimeout> | undefined;
  let lastId = 0;

  function end() {
    clearTimeout(watchdog);
    worker?.terminate();
    worker = null;
    busy = null;
  }

  function settle(outcome: Outcome) {
    clearTimeout(watchdog);
    const done = busy;
    busy = null;
    if (done) onOutcome(done.job, outcome);
    next();
  }

  function next() {
    if (busy || !waiting) return;
    const job = waiting;
    waiting = null;
    lastId += 1;
    busy = { id: lastId, job };
    try {
      worker ??= begin();
      worker.ask({ id: lastId, job });
    } catch (error) {
      end();
      onOutcome(job, { is: 'failed', why: error instanceof Error ? error.message : String(error) });
      return;
    }
    watchdog = setTimeout(() => {
      const late = busy;
      end();
      if (late) onOutcome(late.job, { is: 'stuck' });
      next();
    }, patience);
  }

  function begin(): WorkerLike {
    return start(
      (answer) => {
        if (answer.id !== busy?.id) return;
        settle(
          'failed' in answer
            ? { is: 'failed', why: answer.failed }
            : { is: 'done', takeoff: answer.takeoff, took: answer.took },
        );
      },
      (why) => {
        const lost = busy;
        end();
        if (lost) onOutcome(lost.job, { is: 'failed', why });
        next();
      },
    );
  }

  return {
    ask: (job) => {
      waiting = job;
      next();
    },
    end: () => {
      waiting = null;
      end();
    },
  };
}
