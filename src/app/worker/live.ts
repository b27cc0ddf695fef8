import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { createStore, type Store } from '../store.ts';
import { createTakeoffWorker, type Outcome, type StartWorker } from './client.ts';

/**
 * The takeoff on screen. `of` is the job that it was figured from.
 * current: of the job on screen · behind: of an earlier one, the new one is being figured · stuck: figuring took
 * too long and was ended · failed: our own mistake.
 */
export interface LiveTakeoff {
  readonly takeoff: Takeoff;
  readonly of: Job | null;
  readonly standing: 'current' | 'behind' | 'stuck' | 'failed';
  readonly why?: string;
}

export interface LiveTakeoffSetup {
  readonly figure: (job: Job) => Takeoff;
  readonly startWorker: StartWorker;
  /** Milliseconds, only ever subtracted. */
  readonly clock: () => number;
  /** A takeoff that took longer than this (ms) goes to the worker next time: half of one 60 Hz frame. */
  readonly slowAfter: number;
  /** Corners above which a job isn't tried on the page's own thread. */
  readonly manyCorners: number;
  /** How long the worker may take, ms. */
  readonly patience: number;
}

export interface LiveTakeoffs {
  readonly live: Store<LiveTakeoff>;
  /** Figure this job. `untried`: it comes from a file or the store, so the worker goes first. */
  readonly want: (job: Job, untried?: boolean) => void;
  /** Try once more after 'stuck' or 'failed'. */
  readonly again: () => void;
  readonly end: () => void;
}

const NOTHING: Takeoff = { notes: [] };
const KEPT = 12;

export function createLiveTakeoffs(setup: LiveTakeoffSetup): LiveTakeoffs {
  const live = createStore<LiveTakeoff>({ takeoff: NOTHING, of: null, standing: 'behind' });
  let wanted: Job | null = null;
  let slow = false;
  let tried = true;
  // Cancelling a drag and one step of undo come back to a job that was figured moments ago.
  let kept: readonly { readonly job: Job; readonly takeoff: Takeoff }[] = [];

  const worker = createTakeoffWorker(setup.startWorker, setup.patience, (job, outcome) => {
    settle(job, outcome);
  });

  function show(job: Job, takeoff: Takeoff) {
    kept = [{ job, takeoff }, ...kept.filter((one) => one.job !== job)].slice(0, KEPT);
    live.set(() => ({ takeoff, of: job, standing: job === wanted ? 'current' : 'behind' }));
  }

  function settle(job: Job, outcome: Outcome) {
    if (outcome.is === 'done') {
      tried = true;
      slow = outcome.took > setup.slowAfter / 2;
      // Late news of an earlier job: the one on screen was figured here meanwhile.
      if (live.get().of !== wanted || job === wanted) show(job, outcome.takeoff);
    } else if (job === wanted) {
      slow = true;
      const why = outcome.is === 'failed' ? { why: outcome.why } : {};
      live.set(({ takeoff, of }) => ({ takeoff, of, standing: outcome.is, ...why }));
    }
  }

  function here(job: Job) {
    const start = setup.clock();
    try {
      const takeoff = setup.figure(job);
      slow = setup.clock() - start > setup.slowAfter;
      show(job, takeoff);
    } catch (error) {
      settle(job, { is: 'failed', why: error instanceof Error ? error.message : String(error) });
    }
  }

  function toWorker(job: Job) {
    live.set((before) => ({ takeoff: before.takeoff, of: before.of, standing: 'behind' }));
    worker.ask(job);
  }

  return {
    live,
    want: (job, untried = false) => {
      if (job === wanted) return;
      wanted = job;
      if (untried) {
        tried = false;
        // Another job's figures are never shown beside this one's sketch.
        live.set(() => ({ takeoff: NOTHING, of: null, standing: 'behind' }));
      }
      const known = kept.find((one) => one.job === job);
      if (known) show(job, known.takeoff);
      else if (tried && !slow && countCorners(job) <= setup.manyCorners) here(job);
      else toWorker(job);
    },
    again: () => {
      if (wanted) toWorker(wanted);
    },
    end: worker.end,
  };
}

export function countCorners(job: Job): number {
  return job.features.reduce(
    (sum, feature) => sum + (feature.shape.form === 'outline' ? feature.shape.corners.length : 1),
    0,
  );
}
