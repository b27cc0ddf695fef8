import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import { createDesk } from '../../../src/app/jobs/desk.ts';
import { noStore, withReserve } from '../../../src/app/jobs/reserve.ts';
import { createSaver } from '../../../src/app/saving.ts';
import { createSession } from '../../../src/app/session.ts';
import { openState } from '../../../src/app/state.ts';
import { createTabs } from '../../../src/app/tabs.ts';
import { createLiveTakeoffs } from '../../../src/app/worker/live.ts';
import type { Job } from '../../../src/job/job.ts';
import { rectangleJob } from '../../../src/job/start.ts';
import { jobToText } from '../../../src/storage/files.ts';
import { type JobStore, openJobs } from '../../../src/storage/jobs.ts';
import { jobFromLink, linkOf } from '../../../src/storage/link/jobLink.ts';
import { trouble } from '../../../src/storage/trouble.ts';
import { FOOT } from '../../../src/units/grid.ts';
import { idleSearches } from '../idleSearches.ts';

function named(name: string): Job {
  const job = rectangleJob(12 * FOOT, 10 * FOOT);
  if (!job.ok) throw new Error('A plain rectangle was refused.');
  return { ...job.value, name };
}

let databases = 0;
let store: JobStore;
beforeEach(async () => {
  databases += 1;
  store = await openJobs({ database: `desk-test-${databases}` });
});

/** A desk with the job 'first' on it. */
async function deskOn(jobs: JobStore) {
  const takeoffs = createLiveTakeoffs({
    figure: () => ({ notes: [] }),
    startWorker: () => ({ ask: () => {}, terminate: () => {} }),
    clock: () => 0,
    slowAfter: 8,
    manyCorners: 100,
    patience: 1000,
  });
  const tabs = createTabs({
    locks: undefined,
    channel: undefined,
    finish: async () => {},
    onLost: () => {},
    onSavedElsewhere: () => {},
    patience: 10,
  });
  const saver = createSaver(
    (id, job, kept) => jobs.save(id, job, kept),
    (saving) => session.state.set((state) => ({ ...state, saving })),
  );
  const first = openState('first', named('First'), {}, 'system');
  const session = createSession({
    first,
    untried: false,
    takeoffs,
    searches: idleSearches(),
    saver,
    keepTheme: () => {},
  });
  const files: { readonly name: string; readonly text: string }[] = [];
  let ids = 0;
  const desk = createDesk({
    store: jobs,
    session,
    saver,
    tabs,
    newId: () => `new${++ids}`,
    download: (name, text) => files.push({ name, text }),
    readLink: async (fragment) => jobFromLink(fragment),
  });
  saver.save('first', named('First'), { view: null, place: 'ground', panel: 'ticket' });
  await desk.refresh();
  const names = () => desk.board.get().jobs.map(({ name }) => name);
  const openName = () => session.state.get().history.now.job.name;
  return { desk, session, files, names, openName };
}

function fileOf(text: string, name = 'job.json') {
  return { name, size: text.length, text: async () => text };
}

function linkTo(job: Job): string {
  const link = linkOf(job, 'https://pads.example/');
  if (link.is !== 'link') throw new Error('A rectangle fits in a link.');
  return link.url.slice(link.url.indexOf('#'));
}

const again = (name: string) => `${name}, again`;

describe('a link', () => {
  it('opens a copy, and leaves the open job and those kept as they were', async () => {
    const { desk, session, names, openName } = await deskOn(store);
    session.commit({ do: 'set-text', name: 'Mine' });
    const sent = { ...named('From the boss'), notes: 'Start at the gate.' };
    expect(await desk.openLink(linkTo(sent), again)).toBe(true);
    expect(session.state.get().history.now.job).toEqual(sent);
    expect(session.state.get().jobId).toBe('new1');
    expect(desk.board.get().fromLink).toEqual({ is: 'opened', name: 'From the boss' });
    expect([...names()].sort()).toEqual(['From the boss', 'Mine']);
    desk.linkSeen();
    expect(desk.board.get().fromLink).toBeNull();
    await desk.open('first');
    expect(openName()).toBe('Mine');
  });

  it('is told from the job of that name that is here already', async () => {
    const { desk, names } = await deskOn(store);
    await desk.openLink(linkTo(named('First')), again);
    expect([...names()].sort()).toEqual(['First', 'First, again']);
  });

  it('that is cut short changes nothing and says so', async () => {
    const { desk, session, names } = await deskOn(store);
    const before = session.state.get();
    expect(await desk.openLink(linkTo(named('Second')).slice(0, -9), again)).toBe(true);
    expect(desk.board.get().fromLink).toEqual({
      is: 'refused',
      problems: [{ code: 'link-cut-short' }],
    });
    expect(session.state.get().history).toBe(before.history);
    expect(names()).toEqual(['First']);
  });

  it('that is none is left alone', async () => {
    const { desk, names } = await deskOn(store);
    expect(await desk.openLink('#top', again)).toBe(false);
    expect(desk.board.get().fromLink).toBeNull();
    expect(names()).toEqual(['First']);
  });
});

describe('desk', () => {
  it('starts a job, keeps the one before, and remembers where one was', async () => {
    const { desk, names, openName } = await deskOn(store);
    await desk.start(named('Second'));
    expect(openName()).toBe('Second');
    expect([...names()].sort()).toEqual(['First', 'Second']);
    expect(await store.last()).toBe('new1');
  });

  it('comes back to a job with its view and place', async () => {
    const { desk, session } = await deskOn(store);
    const view = { center: { x: 5, y: 7 }, gridPerPx: 900 };
    session.go('steel');
    session.look(view);
    await desk.start(named('Second'));
    expect(session.state.get().place).toBe('ground');
    expect(await desk.open('first')).toBe(true);
    expect(session.state.get()).toMatchObject({ place: 'steel', view });
  });

  it('keeps every commit in order', async () => {
    const { desk, session } = await deskOn(store);
    for (const name of ['one', 'two', 'three']) session.commit({ do: 'set-text', name });
    await desk.idle();
    const loaded = await store.load('first');
    expect(loaded.ok && loaded.job.name).toBe('three');
    session.undo();
    await desk.idle();
    const again = await store.load('first');
    expect(again.ok && again.job.name).toBe('two');
  });

  it('renames the open job and any other', async () => {
    const { desk, names, openName } = await deskOn(store);
    await desk.start(named('Second'));
    await desk.rename('first', 'Side yard');
    await desk.rename('new1', 'Back yard');
    expect([...names()].sort()).toEqual(['Back yard', 'Side yard']);
    expect(openName()).toBe('Back yard');
  });

  it('copies a job', async () => {
    const { desk, names } = await deskOn(store);
    await desk.copy('first', (name) => `${name}, again`);
    expect([...names()].sort()).toEqual(['First', 'First, again']);
  });

  it('copies a job without its pour, so that no pour counts twice', async () => {
    const { desk, session } = await deskOn(store);
    const pourLog = { checked: ['water'], entries: [] };
    session.commit({ do: 'set-pour-log', pourLog });
    await desk.copy('first', (name) => `${name}, again`);
    const kept = await Promise.all((await store.list()).map(({ id }) => store.load(id)));
    expect(kept.map((one) => one.ok && one.job.pourLog).sort()).toEqual([pourLog, undefined]);
  });

  it('copies a job whose name is as long as one may be, so that the copy can be opened', async () => {
    const { desk, names } = await deskOn(store);
    await desk.start(named(`${'n'.repeat(197)}🧱x`));
    await desk.copy('new1', (name) => `${name} (copy)`);
    const copy = [...names()].find((name) => name.endsWith(' (copy)'));
    expect(copy).toBe(`${'n'.repeat(193)} (copy)`);
    expect(await desk.open('new2')).toBe(true);
  });

  it('deletes a job and brings it back whole', async () => {
    const { desk, names, openName } = await deskOn(store);
    await desk.start(named('Second'));
    await desk.remove('new1');
    expect(names()).toEqual(['First']);
    expect(openName()).toBe('First');
    await desk.bringBack();
    expect([...names()].sort()).toEqual(['First', 'Second']);
  });

  it('leaves a blank site when the last job is deleted', async () => {
    const { desk, session } = await deskOn(store);
    await desk.remove('first');
    expect(session.state.get().history.now.job.features).toEqual([]);
  });

  it('keeps the boards on hand when the last job is deleted', async () => {
    const { desk, session } = await deskOn(store);
    const lumber = { truck: [], yard: [] };
    session.commit({ do: 'set-lumber', lumber });
    await desk.remove('first');
    expect(session.state.get().history.now.job).toMatchObject({ features: [], lumber });
  });

  it('opens a job file, and refuses a broken one without touching anything', async () => {
    const { desk, openName, session } = await deskOn(store);
    expect(await desk.bringIn(fileOf(jobToText(named('From a file'))))).toBe(true);
    expect(openName()).toBe('From a file');
    const before = session.state.get();
    expect(await desk.bringIn(fileOf('{"format": "something"}', 'other.json'))).toBe(false);
    expect(session.state.get()).toBe(before);
    const { refused } = desk.board.get();
    expect(refused?.name).toBe('other.json');
    expect(refused?.problems.length).toBeGreaterThan(0);
  });

  it('hands over the text of a stored job that can’t be read', async () => {
    await store.putBack({ id: 'bad', name: 'Bad', text: '{"half', changed: 1, kept: null });
    const { desk, files, openName } = await deskOn(store);
    expect(await desk.open('bad')).toBe(false);
    expect(openName()).toBe('First');
    desk.exportRefused();
    expect(files).toEqual([{ name: 'Bad.json', text: '{"half' }]);
  });

  it('exports the open job as the same text that opens it again', async () => {
    const { desk, files } = await deskOn(store);
    desk.exportOpen();
    expect(files).toEqual([{ name: 'First.json', text: jobToText(named('First')) }]);
  });

  it('loses nothing where the browser keeps nothing, and says that it isn’t saved', async () => {
    const none = noStore(trouble('storage-unavailable', { facts: { says: 'private' } }));
    const { desk, session, openName, names } = await deskOn(withReserve(none, () => 1));
    expect(session.state.get().saving).toMatchObject({ is: 'not-saved' });
    session.commit({ do: 'set-text', name: 'Work of an hour' });
    await desk.start(named('Second'));
    expect(await desk.open('first')).toBe(true);
    expect(openName()).toBe('Work of an hour');
    await desk.refresh();
    expect([...names()].sort()).toEqual(['Second', 'Work of an hour']);
  });
});
