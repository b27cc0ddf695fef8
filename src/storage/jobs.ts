import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Job } from '../job/job.ts';
import { parseJob } from '../job/parse.ts';
import type { CloseOut } from '../job/pourLog.ts';
import { serializeJob } from '../job/serialize.ts';
import type { Problem } from '../units/result.ts';
import { asTrouble, trouble } from './trouble.ts';

/** A job as it lies in the store: the text of its file, so that nothing is lost when a field can't be read. */
export interface JobRecord {
  readonly id: string;
  /** As it was when saved, for the list; the text rules. */
  readonly name: string;
  readonly text: string;
  /** When the job itself last changed, milliseconds since 1970. */
  readonly changed: number;
  /** What the app keeps beside the job: the view, the place. */
  readonly kept: unknown;
}

export interface JobListing {
  readonly id: string;
  readonly name: string;
  readonly changed: number;
  /** Why it can't be opened, when it can't. It is never dropped: its text can be taken out whole. */
  readonly problems?: readonly Problem[];
  /** What it took, once it is closed. */
  readonly closed?: CloseOut;
}

export type Loaded =
  | { readonly ok: true; readonly job: Job; readonly kept: unknown }
  /** `text` as it was stored; absent when no such job is here. */
  | { readonly ok: false; readonly problems: readonly Problem[]; readonly text?: string };

/** The jobs kept on this device. Everything but `load` throws a StorageTrouble when the browser won't. */
export interface JobStore {
  /** Newest first. */
  readonly list: () => Promise<readonly JobListing[]>;
  readonly load: (id: string) => Promise<Loaded>;
  /**
   * Settles when the job is on the disk. Saves are done in the order in which they were asked for, so the newest stands.
   * `changed` moves on only when the job did.
   */
  readonly save: (id: string, job: Job, kept: unknown) => Promise<void>;
  /** Takes a job out and hands it over whole, so that it can be put back. */
  readonly remove: (id: string) => Promise<JobRecord | null>;
  readonly putBack: (record: JobRecord) => Promise<void>;
  /** Which job to come back to. */
  readonly remember: (id: string) => Promise<void>;
  /** The job remembered, if it is still here; else the one changed last; null when there is none. */
  readonly last: () => Promise<string | null>;
}

interface Schema extends DBSchema {
  jobs: { key: string; value: JobRecord };
  /** Single values by name. */
  desk: { key: string; value: string };
}

const STRICT = { durability: 'strict' } as const;

export interface StoreSetup {
  readonly database?: string;
  readonly now?: () => number;
}

/** Opens the store, making it on the first visit. */
export async function openJobs(setup: StoreSetup = {}): Promise<JobStore> {
  const { database = 'notchpad', now = Date.now } = setup;
  const connect = connection(database);
  await connect();

  /** One transaction; a lost connection (a phone that put the page to sleep) is opened again. */
  async function within<T>(work: (db: IDBPDatabase<Schema>) => Promise<T>): Promise<T> {
    try {
      const db = await connect();
      return await work(db);
    } catch (error) {
      throw asTrouble(error);
    }
  }

  return {
    list: () =>
      within(async (db) => {
        const records = await db.getAll('jobs');
        return records.map(listing).sort((a, b) => b.changed - a.changed);
      }),
    load: async (id) => {
      try {
        const record = await within((db) => db.get('jobs', id));
        if (!record) return { ok: false, problems: [{ code: 'no-such-job', where: id }] };
        const read = parseJob(record.text);
        return read.ok
          ? { ok: true, job: read.value, kept: record.kept }
          : { ok: false, problems: read.problems, text: record.text };
      } catch (error) {
        return { ok: false, problems: [asTrouble(error).problem] };
      }
    },
    save: (id, job, kept) =>
      within(async (db) => {
        const text = serializeJob(job);
        const { store, done } = db.transaction('jobs', 'readwrite', STRICT);
        const before = await store.get(id);
        const changed = before?.text === text ? before.changed : now();
        await Promise.all([store.put({ id, name: job.name, text, changed, kept }), done]);
      }),
    remove: (id) =>
      within(async (db) => {
        const { store, done } = db.transaction('jobs', 'readwrite', STRICT);
        const record = await store.get(id);
        await Promise.all([store.delete(id), done]);
        return record ?? null;
      }),
    putBack: (record) =>
      within(async (db) => {
        const { store, done } = db.transaction('jobs', 'readwrite', STRICT);
        await Promise.all([store.put(record), done]);
      }),
    remember: (id) =>
      within(async (db) => {
        await db.put('desk', id, 'last');
      }),
    last: () =>
      within(async (db) => {
        const remembered = await db.get('desk', 'last');
        const records = await db.getAll('jobs');
        if (records.some(({ id }) => id === remembered)) return remembered ?? null;
        const newest = records.sort((a, b) => b.changed - a.changed)[0];
        return newest?.id ?? null;
      }),
  };
}

function listing({ id, name, changed, text }: JobRecord): JobListing {
  const read = parseJob(text);
  if (!read.ok) return { id, name, changed, problems: read.problems };
  const { closeOut } = read.value;
  return { id, name, changed, ...(closeOut ? { closed: closeOut } : {}) };
}

/** The database, opened when first wanted and again after it was lost. */
function connection(database: string): () => Promise<IDBPDatabase<Schema>> {
  let opening: Promise<IDBPDatabase<Schema>> | null = null;

  function open(): Promise<IDBPDatabase<Schema>> {
    return new Promise((resolve, reject) => {
      openDB<Schema>(database, 1, {
        upgrade(db) {
          db.createObjectStore('jobs', { keyPath: 'id' });
          db.createObjectStore('desk');
        },
        blocked: () => reject(trouble('storage-blocked')),
        // A newer program in another tab wants to change the store: let it.
        blocking(_current, _blocked, event) {
          opening = null;
          (event.target as IDBDatabase).close();
        },
        terminated() {
          opening = null;
        },
      }).then(resolve, (error: unknown) => reject(asTrouble(error)));
    });
  }

  return () => {
    opening ??= open().catch((error: unknown) => {
      opening = null;
      throw error;
    });
    return opening;
  };
}
