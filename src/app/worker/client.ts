import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import type { Searched } from '../../takeoff/searched.ts';
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

/** What a takeoff is figured from. */
export interface Given {
  readonly job: Job;
  readonly searched: Searched;
}

export interface TakeoffWorker {
  /** Newest wins: a job that is still waiting when another is asked for is never figured. */
  readonly ask: (given: Given) => void;
  readonly end: () => void;
}

/** One job at a time in one worker, which is ended when it takes longer than `patience` (milliseconds). */
export function createTakeoffWorker(
  start: StartWorker,
  patience: number,
  onOutcome: (given: Given, outcome: Outcome) => void,
): TakeoffWorker {
  let worker: WorkerLike | null = null;
  /** What the worker knows of the searches. */
  let told: Searched | null = null;
  let busy: { readonly id: number; readonly given: Given } | null = null;
  let waiting: Given | null = null;
  let watchdog: ReturnType<typeof setTimeout> | undefined;
  let lastId = 0;

  function end() {
    clearTimeout(watchdog);
    worker?.terminate();
    worker = null;
    told = null;
    busy = null;
  }

  function settle(outcome: Outcome) {
    clearTimeout(watchdog);
    const done = busy;
    busy = null;
    if (done) onOutcome(done.given, outcome);
    next();
  }

  function next() {
    if (busy || !waiting) return;
    const given = waiting;
    waiting = null;
    lastId += 1;
    busy = { id: lastId, given };
    try {
      worker ??= begin();
      const { job, searched } = given;
      worker.ask({ id: lastId, job, ...(searched === told ? {} : { searched }) });
      told = searched;
    } catch (error) {
      end();
      onOutcome(given, {
        is: 'failed',
        why: error instanceof Error ? error.message : String(error),
      });
      return;
    }
    watchdog = setTimeout(() => {
      const late = busy;
      end();
      if (late) onOutcome(late.given, { is: 'stuck' });
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
        if (lost) onOutcome(lost.given, { is: 'failed', why });
        next();
      },
    );
  }

  return {
    ask: (given) => {
      waiting = given;
      next();
    },
    end: () => {
      waiting = null;
      end();
    },
  };
}
