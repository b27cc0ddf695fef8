import type { Job } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import type { Searched } from '../../takeoff/searched.ts';
import { createStore, type Store } from '../store.ts';
import { createTakeoffWorker, type Given, type Outcome, type StartWorker } from './client.ts';

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
  readonly figure: (job: Job, searched: Searched) => Takeoff;
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
  /** Figure the job on screen, and those to come, with what the slow searches have found now. */
  readonly search: (searched: Searched) => void;
  /** Try once more after 'stuck' or 'failed'. */
  readonly again: () => void;
  readonly end: () => void;
}

const NOTHING: Takeoff = { notes: [] };
const KEPT = 12;

export function createLiveTakeoffs(setup: LiveTakeoffSetup): LiveTakeoffs {
  const live = createStore<LiveTakeoff>({ takeoff: NOTHING, of: null, standing: 'behind' });
  let wanted: Job | null = null;
  let searched: Searched = {};
  let shown: Given | null = null;
  let asked: Given | null = null;
  let slow = false;
  let tried = true;
  // Cancelling a drag and one step of undo come back to a job that was figured moments ago. What the searches had found
  // by then is true of it still; if they know better by now, it is figured again.
  let kept: readonly (Given & { readonly takeoff: Takeoff })[] = [];

  const worker = createTakeoffWorker(setup.startWorker, setup.patience, settle);

  function show(given: Given, takeoff: Takeoff) {
    shown = given;
    kept = [{ ...given, takeoff }, ...kept.filter(({ job }) => job !== given.job)].slice(0, KEPT);
    const standing = given.job === wanted ? 'current' : 'behind';
    live.set(() => ({ takeoff, of: given.job, standing }));
  }

  function settle(given: Given, outcome: Outcome) {
    if (outcome.is === 'done') {
      tried = true;
      slow = outcome.took > setup.slowAfter / 2;
      if (!isLate(given)) show(given, outcome.takeoff);
    } else if (given.job === wanted) {
      slow = true;
      const why = outcome.is === 'failed' ? { why: outcome.why } : {};
      live.set(({ takeoff, of }) => ({ takeoff, of, standing: outcome.is, ...why }));
    }
  }

  /** News of an earlier job, or of an earlier find: the one on screen was figured here meanwhile. */
  function isLate(given: Given): boolean {
    if (shown?.job !== wanted) return false;
    return given.job !== wanted || (isWanted(shown) && !isWanted(given));
  }

  function isWanted(given: Given | null): boolean {
    return given?.job === wanted && sameFinds(given.searched, searched);
  }

  function here(given: Given) {
    const start = setup.clock();
    try {
      const takeoff = setup.figure(given.job, given.searched);
      slow = setup.clock() - start > setup.slowAfter;
      show(given, takeoff);
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      settle(given, { is: 'failed', why });
    }
  }

  function toWorker(given: Given) {
    // Figures of this very job stay true while they are figured again with what a search has found.
    const { of, standing } = live.get();
    if (of !== given.job || standing !== 'current') {
      live.set(({ takeoff }) => ({ takeoff, of, standing: 'behind' }));
    }
    worker.ask(given);
  }

  function figure(job: Job) {
    const given = { job, searched };
    asked = given;
    if (tried && !slow && countCorners(job) <= setup.manyCorners) here(given);
    else toWorker(given);
  }

  return {
    live,
    want: (job, untried = false) => {
      if (job === wanted) return;
      wanted = job;
      if (untried) {
        tried = false;
        shown = null;
        // Another job's figures are never shown beside this one's sketch.
        live.set(() => ({ takeoff: NOTHING, of: null, standing: 'behind' }));
      }
      const known = kept.find((one) => one.job === job);
      if (known) show({ job, searched: known.searched }, known.takeoff);
      else figure(job);
    },
    search: (found) => {
      if (!sameFinds(found, searched)) searched = found;
      if (wanted && !isWanted(shown) && !isWanted(asked)) figure(wanted);
    },
    again: () => {
      if (wanted) toWorker({ job: wanted, searched });
    },
    end: worker.end,
  };
}

/** A trade that is missing here would never show what was found. */
const TRADES = Object.keys({
  boards: true,
  bars: true,
  joints: true,
  mesh: true,
} satisfies Record<keyof Searched, true>) as readonly (keyof Searched)[];

/** Whether two hold the very same answers. */
function sameFinds(a: Searched, b: Searched): boolean {
  return TRADES.every(
    (trade) => a[trade]?.plan === b[trade]?.plan && a[trade]?.key === b[trade]?.key,
  );
}

export function countCorners(job: Job): number {
  return job.features.reduce(
    (sum, feature) => sum + (feature.shape.form === 'outline' ? feature.shape.corners.length : 1),
    0,
  );
}
