import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import type { Answer, Ask } from './messages.ts';

/** The part of a Worker that is used, so that tests can stand in for it. */
export interface WorkerLike {
  postMessage(ask: Ask): void;
  terminate(): void;
  onmessage: ((event: { readonly data: Answer }) => void) | null;
  onerror: ((event: { readonly message?: string }) => void) | null;
}

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
  start: () => WorkerLike,
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
      worker.postMessage({ id: lastId, job });
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
    const begun = start();
    begun.onmessage = ({ data }) => {
      if (data.id !== busy?.id) return;
      settle(
        'failed' in data
          ? { is: 'failed', why: data.failed }
          : { is: 'done', takeoff: data.takeoff, took: data.took },
      );
    };
    begun.onerror = (event) => {
      const why = event.message ?? '';
      const lost = busy;
      end();
      if (lost) onOutcome(lost.job, { is: 'failed', why });
      next();
    };
    return begun;
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
