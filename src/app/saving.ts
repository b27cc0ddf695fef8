import type { Job } from '../job/job.ts';
import { asTrouble } from '../storage/trouble.ts';
import type { Problem } from '../units/result.ts';
import type { Kept, Saving } from './state.ts';

export interface Saver {
  /** Saves are written one after another; of those that wait, only the newest of each job. */
  readonly save: (id: string, job: Job, kept: Kept) => void;
  /** The same, once nothing has changed for a moment: for what changes at every frame, like the view. */
  readonly soon: (id: string, job: Job, kept: Kept) => void;
  /** Settles when nothing is left to write. */
  readonly idle: () => Promise<void>;
  /** Forget what is waiting for a job that is being deleted, and its troubles. */
  readonly drop: (id: string) => void;
}

interface Waiting {
  readonly job: Job;
  readonly kept: Kept;
}

export function createSaver(
  write: (id: string, job: Job, kept: Kept) => Promise<void>,
  report: (saving: Saving) => void,
  moment = 400,
): Saver {
  let later: { readonly timer: ReturnType<typeof setTimeout>; readonly go: () => void } | null =
    null;
  const waiting = new Map<string, Waiting>();
  const troubles = new Map<string, Problem>();
  let running: Promise<void> | null = null;

  async function run() {
    report({ is: 'saving' });
    for (let first = take(); first; first = take()) {
      const [id, { job, kept }] = first;
      try {
        await write(id, job, kept);
        troubles.delete(id);
      } catch (error) {
        troubles.set(id, asTrouble(error).problem);
      }
    }
    running = null;
    const trouble = [...troubles.values()].at(-1);
    report(trouble === undefined ? { is: 'saved' } : { is: 'not-saved', problem: trouble });
  }

  function take(): [string, Waiting] | undefined {
    const first = waiting.entries().next().value;
    if (first) waiting.delete(first[0]);
    return first;
  }

  function save(id: string, job: Job, kept: Kept) {
    if (later) clearTimeout(later.timer);
    later = null;
    waiting.set(id, { job, kept });
    running ??= run();
  }

  return {
    save,
    soon: (id, job, kept) => {
      if (later) clearTimeout(later.timer);
      const go = () => save(id, job, kept);
      later = { go, timer: setTimeout(go, moment) };
    },
    idle: async () => {
      later?.go();
      while (running) await running;
    },
    drop: (id) => {
      if (later) clearTimeout(later.timer);
      later = null;
      waiting.delete(id);
      troubles.delete(id);
    },
  };
}
