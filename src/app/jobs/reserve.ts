import type { Job } from '../../job/job.ts';
import { jobToText } from '../../storage/files.ts';
import type { JobListing, JobRecord, JobStore } from '../../storage/jobs.ts';
import type { StorageTrouble } from '../../storage/trouble.ts';

interface Held {
  readonly job: Job;
  readonly kept: unknown;
  readonly changed: number;
}

/**
 * A store that keeps in the page's memory what the device would not take, so that going to another job loses nothing
 * while the page is open. The failed save is still told: memory is not a saved job.
 */
export function withReserve(store: JobStore, now: () => number): JobStore {
  const held = new Map<string, Held>();

  return {
    ...store,
    list: async () => {
      const kept = held.size === 0 ? await store.list() : await store.list().catch(() => []);
      const inHand = [...held].map(([id, { job, changed }]): JobListing => {
        return { id, name: job.name, changed };
      });
      return [...inHand, ...kept.filter(({ id }) => !held.has(id))];
    },
    load: async (id) => {
      const inHand = held.get(id);
      return inHand ? { ok: true, job: inHand.job, kept: inHand.kept } : store.load(id);
    },
    save: async (id, job, kept) => {
      try {
        await store.save(id, job, kept);
        held.delete(id);
      } catch (error) {
        held.set(id, { job, kept, changed: now() });
        throw error;
      }
    },
    remove: async (id) => {
      const inHand = held.get(id);
      if (!inHand) return store.remove(id);
      await store.remove(id).catch(() => null);
      held.delete(id);
      return recordOf(id, inHand);
    },
  };
}

/** What stands for the store where the browser offers none: everything is refused for the same reason. */
export function noStore(trouble: StorageTrouble): JobStore {
  const refuse = () => Promise.reject(trouble);
  return {
    list: refuse,
    load: () => Promise.resolve({ ok: false, problems: [trouble.problem] }),
    save: refuse,
    remove: refuse,
    putBack: refuse,
    remember: refuse,
    last: refuse,
  };
}

function recordOf(id: string, { job, kept, changed }: Held): JobRecord {
  return { id, name: job.name, text: jobToText(job), changed, kept };
}
