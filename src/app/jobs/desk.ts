import { apply } from '../../job/commands.ts';
import type { Job } from '../../job/job.ts';
import { withoutPour } from '../../job/pourDay.ts';
import { blankJob } from '../../job/start.ts';
import { cutText, TEXT_MOST } from '../../job/textLimits.ts';
import { fileNameOf, jobFromText, jobToText } from '../../storage/files.ts';
import type { JobListing, JobRecord, JobStore } from '../../storage/jobs.ts';
import { asTrouble } from '../../storage/trouble.ts';
import type { Problem, Result } from '../../units/result.ts';
import { readKept } from '../kept.ts';
import type { Saver } from '../saving.ts';
import type { Session } from '../session.ts';
import { createStore, type Store } from '../store.ts';
import type { Tabs } from '../tabs.ts';
import { startedFrom, startsFrom } from './startsFrom.ts';

/** A job that couldn't be read: whose it is, why, and its text when it lies in the store. */
export interface Refused {
  readonly name: string;
  readonly problems: readonly Problem[];
  readonly text?: string;
}

/** What became of a link that was opened, until somebody has read it. */
export type FromLink =
  | { readonly is: 'opened'; readonly name: string }
  | { readonly is: 'refused'; readonly problems: readonly Problem[] };

/** The jobs on this device, as the list shows them. */
export interface Board {
  readonly jobs: readonly JobListing[];
  /** The job deleted last, which can still be brought back. */
  readonly removed: JobRecord | null;
  readonly refused: Refused | null;
  readonly fromLink: FromLink | null;
  /** What the store would not do. */
  readonly trouble: Problem | null;
  /** The browser said that it may clear what is kept when room is short. */
  readonly mayBeCleared: boolean;
}

/** Where jobs are taken from and laid down. */
export interface Desk {
  readonly board: Store<Board>;
  readonly refresh: () => Promise<void>;
  readonly start: (job: Job, untried?: boolean) => Promise<void>;
  /** Answers whether it is open now; when not, the board says why. */
  readonly open: (id: string) => Promise<boolean>;
  readonly rename: (id: string, name: string) => Promise<void>;
  readonly copy: (id: string, name: (of: string) => string) => Promise<void>;
  readonly remove: (id: string) => Promise<void>;
  readonly bringBack: () => Promise<void>;
  readonly bringIn: (file: Pick<File, 'name' | 'size' | 'text'>) => Promise<boolean>;
  /**
   * Opens a copy of the job that a link carries, named as a copy where one of its name is kept here. Answers whether the
   * link could be read at all.
   */
  readonly openLink: (fragment: string, name: (of: string) => string) => Promise<boolean>;
  readonly linkSeen: () => void;
  readonly exportOpen: () => void;
  readonly exportRefused: () => void;
  readonly takeOver: () => Promise<void>;
  /** Settles when nothing is left to write. */
  readonly idle: () => Promise<void>;
}

export interface DeskSetup {
  readonly store: JobStore;
  readonly session: Session;
  readonly saver: Saver;
  readonly tabs: Tabs;
  readonly newId: () => string;
  readonly download: (name: string, text: string) => void;
  /** The job of a link's fragment, null when there is none in it. */
  readonly readLink: (fragment: string) => Promise<Result<Job> | null>;
}

/** Nobody's job file is this long; reading it would only freeze the page. */
const LARGEST_FILE = 20_000_000;

const EMPTY: Board = {
  jobs: [],
  removed: null,
  refused: null,
  fromLink: null,
  trouble: null,
  mayBeCleared: false,
};

export function createDesk(setup: DeskSetup): Desk {
  const { store, session, saver, tabs, newId, download, readLink } = setup;
  const board = createStore(EMPTY);
  const put = (part: Partial<Board>) => board.set((before) => ({ ...before, ...part }));

  /** What the store can't do is said on the board; nothing is thrown at the page. */
  async function withStore(work: () => Promise<void>): Promise<void> {
    try {
      await work();
      put({ trouble: null, jobs: await store.list() });
    } catch (error) {
      put({ trouble: asTrouble(error).problem });
    }
  }

  async function load(id: string): Promise<{ job: Job; kept: unknown } | null> {
    const loaded = await store.load(id);
    if (loaded.ok) return loaded;
    const name = board.get().jobs.find((one) => one.id === id)?.name ?? '';
    const { problems, text } = loaded;
    put({ refused: { name, problems, ...(text === undefined ? {} : { text }) } });
    return null;
  }

  async function start(job: Job, untried = false) {
    await saver.idle();
    const id = newId();
    session.open(id, job, {}, { untried, hold: await tabs.take(id) });
    saver.save(id, job, { view: null, place: 'ground', panel: 'ticket' });
    put({ refused: null });
    await withStore(async () => {
      await saver.idle();
      await store.remember(id);
    });
  }

  async function open(id: string) {
    await saver.idle();
    const loaded = await load(id);
    if (!loaded) return false;
    const hold = await tabs.take(id);
    session.open(id, loaded.job, readKept(loaded.kept), { untried: true, hold });
    put({ refused: null });
    await withStore(() => store.remember(id));
    return true;
  }

  const isOpen = (id: string) => session.state.get().jobId === id;

  return {
    board,
    refresh: () => withStore(async () => saver.idle()),
    start,
    open,
    rename: (id, name) =>
      withStore(async () => {
        const command = { do: 'set-text', name } as const;
        if (isOpen(id)) {
          session.commit(command);
          return saver.idle();
        }
        const loaded = await load(id);
        const renamed = loaded && apply(loaded.job, command);
        if (renamed?.ok) await store.save(id, renamed.value, loaded?.kept);
      }),
    copy: (id, name) =>
      withStore(async () => {
        await saver.idle();
        const loaded = await load(id);
        if (!loaded) return;
        const { job, kept } = loaded;
        // A copy is for another pour: what was poured once isn't counted twice.
        await store.save(newId(), { ...withoutPour(job), name: nameOfCopy(job.name, name) }, kept);
      }),
    remove: (id) =>
      withStore(async () => {
        await saver.idle();
        saver.drop(id);
        put({ removed: await store.remove(id) });
        if (!isOpen(id)) return;
        const next = await store.last();
        if (next === null || !(await open(next))) {
          const { job } = session.state.get().history.now;
          await start(startedFrom(blankJob(), job, startsFrom(job)));
        }
      }),
    bringBack: () =>
      withStore(async () => {
        const { removed } = board.get();
        if (removed) await store.putBack(removed);
        put({ removed: null });
      }),
    bringIn: async (file) => {
      if (file.size > LARGEST_FILE) {
        put({ refused: { name: file.name, problems: [{ code: 'file-too-big' }] } });
        return false;
      }
      const read = jobFromText(await file.text());
      if (read.ok) await start(read.value, true);
      else put({ refused: { name: file.name, problems: read.problems } });
      return read.ok;
    },
    openLink: async (fragment, name) => {
      const refuse = (...problems: readonly Problem[]) =>
        put({ fromLink: { is: 'refused', problems } });
      try {
        const read = await readLink(fragment);
        if (!read) return false;
        if (!read.ok) refuse(...read.problems);
        else {
          const job = read.value;
          const kept = await store.list().catch(() => []);
          const isKept = kept.some((one) => one.name === job.name);
          const copy = isKept ? { ...job, name: nameOfCopy(job.name, name) } : job;
          await start(copy, true);
          put({ fromLink: { is: 'opened', name: copy.name } });
        }
        return true;
      } catch (error) {
        const says = error instanceof Error ? error.message : String(error);
        refuse({ code: 'link-not-read', facts: { says } });
        return false;
      }
    },
    linkSeen: () => put({ fromLink: null }),
    exportOpen: () => {
      const { job } = session.state.get().history.now;
      download(fileNameOf(job, 'json'), jobToText(job));
    },
    exportRefused: () => {
      const refused = board.get().refused;
      if (refused?.text !== undefined) download(fileNameOf(refused, 'json'), refused.text);
    },
    takeOver: async () => {
      const id = session.state.get().jobId;
      const hold = await tabs.takeOver(id);
      // The other tab has written its last: take up from there.
      const loaded = await load(id);
      if (loaded) session.open(id, loaded.job, readKept(loaded.kept), { untried: true, hold });
    },
    idle: saver.idle,
  };
}

/** The copy's name; of a name as long as one may be, so much is left out that the rest finds room. */
function nameOfCopy(original: string, name: (original: string) => string): string {
  const over = name(original).length - TEXT_MOST.name;
  return over > 0 ? name(cutText(original, original.length - over)) : name(original);
}
