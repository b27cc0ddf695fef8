import { demoJob } from '../job/demo.ts';
import type { Job } from '../job/job.ts';
import { type JobStore, openJobs } from '../storage/jobs.ts';
import { readMark } from '../storage/link/mark.ts';
import { asTrouble } from '../storage/trouble.ts';
import { takeoff } from '../takeoff/takeoff.ts';
import { createDesk, type Desk, type Refused } from './jobs/desk.ts';
import { download } from './jobs/download.ts';
import { newJobId } from './jobs/newId.ts';
import { noStore, withReserve } from './jobs/reserve.ts';
import { readKept } from './kept.ts';
import { keepTheme, keptTheme } from './look/theme.ts';
import { createSaver } from './saving.ts';
import { createSession, type Session } from './session.ts';
import { keptSpeech } from './speech.ts';
import { type Kept, openState } from './state.ts';
import { createTabs } from './tabs.ts';
import { wordsFor } from './words/words.ts';
import {
  MANY_CORNERS,
  SEARCH_GRACE_MS,
  SEARCH_PAUSE_MS,
  SEARCH_SECONDS,
  SLOW_AFTER_MS,
  WORKER_PATIENCE_MS,
} from './worker/limits.ts';
import { createLiveTakeoffs } from './worker/live.ts';
import { createSearch } from './worker/search.ts';
import { startTakeoffWorker } from './worker/start.ts';
import { startBoardSearch, startJointSearch, startMeshSearch } from './worker/startSearch.ts';

interface First {
  readonly id: string;
  readonly job: Job;
  readonly kept: Partial<Kept>;
  readonly stored: boolean;
  /** Nothing was kept here before. */
  readonly welcome: boolean;
  readonly refused: Refused | null;
}

export interface Begun {
  readonly session: Session;
  readonly desk: Desk;
}

const TAB_PATIENCE_MS = 2_000;

/** Puts the app together in this browser, on the job that was open last, or on the sample job. */
export async function boot(): Promise<Begun> {
  const store = withReserve(
    await openJobs().catch((error: unknown) => noStore(asTrouble(error))),
    Date.now,
  );
  const first = await firstJob(store);

  const takeoffs = createLiveTakeoffs({
    figure: takeoff,
    startWorker: startTakeoffWorker,
    clock: () => performance.now(),
    slowAfter: SLOW_AFTER_MS,
    manyCorners: MANY_CORNERS,
    patience: WORKER_PATIENCE_MS,
  });

  const times = { pause: SEARCH_PAUSE_MS, seconds: SEARCH_SECONDS, grace: SEARCH_GRACE_MS };
  const boards = createSearch({ start: startBoardSearch, ...times });
  const bars = createSearch({ start: startBoardSearch, ...times });
  const mesh = createSearch({ start: startMeshSearch, ...times });
  const joints = createSearch({ start: startJointSearch, ...times });

  const saver = createSaver(
    async (id, job, kept) => {
      await store.save(id, job, kept);
      tabs.tellSaved(id);
    },
    (saving) => session.state.set((state) => ({ ...state, saving })),
  );

  const tabs = createTabs({
    locks: navigator.locks,
    channel: 'BroadcastChannel' in window ? new BroadcastChannel('notchpad') : undefined,
    finish: saver.idle,
    onLost: (id) => session.lose(id),
    onSavedElsewhere: async (id) => {
      const { jobId, hold } = session.state.get();
      if (jobId !== id || hold === 'mine') return;
      const loaded = await store.load(id);
      if (loaded.ok) session.follow(id, loaded.job);
    },
    patience: TAB_PATIENCE_MS,
  });

  const hold = await tabs.take(first.id);
  const session = createSession({
    first: {
      ...openState(first.id, first.job, first.kept, keptTheme()),
      speech: keptSpeech(),
      hold,
      welcome: first.welcome,
    },
    untried: first.stored,
    takeoffs,
    searches: { boards, bars, mesh, joints },
    saver,
    keepTheme,
  });
  const save = (name: string, text: string) => download(name, text, 'application/json');
  const desk = createDesk({
    store,
    session,
    saver,
    tabs,
    newId: newJobId,
    download: save,
    readLink: async (fragment) => {
      // What unpacks a job is loaded only with the first link.
      const { jobFromLink } = await import('../storage/link/jobLink.ts');
      return jobFromLink(fragment);
    },
  });
  desk.board.set((board) => ({ ...board, refused: first.refused }));

  if (!first.stored)
    saver.save(first.id, first.job, { view: null, place: 'ground', panel: 'ticket' });
  await store.remember(first.id).catch(() => undefined);
  watchTheDoor(session, desk);
  askToKeepOnceWorked(session, desk);
  await openLinkInAddress(session, desk);
  // A link that is put into the address of an open page loads nothing anew.
  window.addEventListener('hashchange', () => openLinkInAddress(session, desk));
  return { session, desk };
}

/** Opens a copy of the job in the address, and takes it out of there: loading the page again makes no second copy. */
async function openLinkInAddress({ state }: Session, desk: Desk): Promise<void> {
  const { hash, pathname, search } = location;
  const { screen, terms } = state.get().speech;
  const { copyName } = wordsFor(screen, terms).app.jobs;
  if (!readMark(hash) || !(await desk.openLink(hash, copyName))) return;
  history.replaceState(history.state, '', pathname + search);
}

async function firstJob(store: JobStore): Promise<First> {
  const sample = { id: newJobId(), job: demoJob(), kept: {}, stored: false };
  const last = await store.last().catch(() => null);
  if (last === null) return { ...sample, welcome: true, refused: null };
  const loaded = await store.load(last);
  if (!loaded.ok) {
    const name = (await store.list().catch(() => [])).find(({ id }) => id === last)?.name ?? '';
    const { problems, text } = loaded;
    const refused = { name, problems, ...(text === undefined ? {} : { text }) };
    return { ...sample, welcome: false, refused };
  }
  const kept = readKept(loaded.kept);
  return { id: last, job: loaded.job, kept, stored: true, welcome: false, refused: null };
}

/** Writes what waits when the page is put away, and asks before it is closed on work that isn't saved. */
function watchTheDoor(session: Session, desk: Desk): void {
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') void desk.idle();
  });
  window.addEventListener('beforeunload', (event) => {
    if (session.state.get().saving.is !== 'saved') event.preventDefault();
  });
}

/** Asks the browser, after the first change, not to clear what is kept here. It may say no, which is then shown. */
function askToKeepOnceWorked(session: Session, desk: Desk): void {
  const end = session.state.watch(async () => {
    if (session.state.get().history.past.length === 0) return;
    end();
    const kept = (await navigator.storage?.persist?.().catch(() => false)) ?? false;
    desk.board.set((board) => ({ ...board, mayBeCleared: !kept }));
  });
}
