import 'fake-indexeddb/auto';
import { deleteDB, openDB } from 'idb';
import { describe, expect, test, vi } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import type { CloseOut } from '../../src/job/pourLog.ts';
import { VERSION } from '../../src/job/schema.ts';
import { blankJob } from '../../src/job/start.ts';
import { type JobStore, openJobs } from '../../src/storage/jobs.ts';
import { asTrouble, isStorageTrouble } from '../../src/storage/trouble.ts';

let databases = 0;
/** A store of its own, with a clock that ticks once a save. */
async function newStore(): Promise<{ store: JobStore; database: string }> {
  databases += 1;
  const database = `jobs-test-${databases}`;
  let clock = 1000;
  const store = await openJobs({
    database,
    now: () => {
      clock += 1;
      return clock;
    },
  });
  return { store, database };
}

function named(name: string) {
  return { ...blankJob(), name };
}

async function plant(database: string, record: Record<string, unknown>) {
  const db = await openDB(database, 1);
  await db.put('jobs', record);
  db.close();
}

test('a job comes back as it was saved, with its view', async () => {
  const { store } = await newStore();
  const kept = { view: { center: { x: 5, y: 7 }, gridPerPx: 400 }, place: 'forms' };
  await store.save('a', demoJob(), kept);
  expect(await store.load('a')).toEqual({ ok: true, job: demoJob(), kept });
});

test('the next visit finds what the last one saved', async () => {
  const { store, database } = await newStore();
  await store.save('a', named('Walk'), null);
  const again = await openJobs({ database });
  expect(await again.load('a')).toEqual({ ok: true, job: named('Walk'), kept: null });
});

test('listed newest first; a new view alone makes no job newer', async () => {
  const { store } = await newStore();
  await store.save('a', named('First'), null);
  await store.save('b', named('Second'), null);
  await store.save('a', named('First'), { view: 'moved' });
  expect((await store.list()).map(({ name }) => name)).toEqual(['Second', 'First']);
  await store.save('a', named('First again'), null);
  expect((await store.list()).map(({ name }) => name)).toEqual(['First again', 'Second']);
});

test('a closed job is listed with what it took', async () => {
  const { store } = await newStore();
  const closeOut: CloseOut = {
    at: 1_700_000_000_000,
    net: 1e15,
    area: 1e11,
    bags: [],
    hours: [],
    wrong: [],
    says: '',
  };
  await store.save('a', { ...named('Done'), closeOut }, null);
  await store.save('b', named('Open'), null);
  const closed = (await store.list()).map(({ name, closed: took }) => [name, took]);
  expect(new Map(closed as [string, unknown][])).toEqual(
    new Map<string, unknown>([
      ['Done', closeOut],
      ['Open', undefined],
    ]),
  );
});

test('saves asked for at once are done in order: the newest stands, and none that was acknowledged is lost', async () => {
  const { store } = await newStore();
  const acknowledged: number[] = [];
  const saves = Array.from({ length: 60 }, (_, n) =>
    store.save('a', named(`state ${n}`), n).then(async () => {
      acknowledged.push(n);
      const loaded = await store.load('a');
      const stands = loaded.ok ? Number(loaded.job.name.slice(6)) : -1;
      expect(stands).toBeGreaterThanOrEqual(n);
    }),
  );
  await Promise.all(saves);
  expect(acknowledged).toEqual(Array.from({ length: 60 }, (_, n) => n));
  expect(await store.load('a')).toMatchObject({ ok: true, job: { name: 'state 59' }, kept: 59 });
});

describe('a record that can’t be read', () => {
  const broken = {
    id: 'x',
    name: 'Old walk',
    text: '{"format":"notchpad-job"',
    changed: 5,
    kept: 0,
  };

  test('is listed with its problem beside the others, and its text can be had whole', async () => {
    const { store, database } = await newStore();
    await store.save('a', named('Good'), null);
    await plant(database, broken);
    const list = await store.list();
    expect(list.map(({ id, problems }) => [id, problems?.map(({ code }) => code)])).toEqual([
      ['a', undefined],
      ['x', ['file-not-json']],
    ]);
    expect(await store.load('x')).toMatchObject({
      ok: false,
      problems: [{ code: 'file-not-json' }],
      text: broken.text,
    });
  });

  test('a newer program’s job is refused, not half read', async () => {
    const { store, database } = await newStore();
    const text = '{"format":"notchpad-job","version":99,"job":{}}';
    await plant(database, { ...broken, text });
    expect(await store.load('x')).toMatchObject({
      ok: false,
      problems: [{ code: 'file-newer', facts: { version: 99, known: VERSION } }],
      text,
    });
  });
});

test('a job taken out can be put back whole', async () => {
  const { store } = await newStore();
  await store.save('a', named('Walk'), { view: 1 });
  const record = await store.remove('a');
  expect(await store.load('a')).toEqual({
    ok: false,
    problems: [{ code: 'no-such-job', where: 'a' }],
  });
  expect(await store.remove('a')).toBeNull();
  if (!record) return expect.fail('nothing was handed over');
  await store.putBack(record);
  expect(await store.load('a')).toEqual({ ok: true, job: named('Walk'), kept: { view: 1 } });
});

test('comes back to the job that was open, or to the newest', async () => {
  const { store } = await newStore();
  expect(await store.last()).toBeNull();
  await store.save('a', named('First'), null);
  await store.save('b', named('Second'), null);
  expect(await store.last()).toBe('b');
  await store.remember('a');
  expect(await store.last()).toBe('a');
  await store.remove('a');
  expect(await store.last()).toBe('b');
});

describe('when the browser won’t', () => {
  test('no room left', async () => {
    const { store } = await newStore();
    const full = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    try {
      await expect(store.save('a', named('Walk'), null)).rejects.toMatchObject({
        problem: { code: 'storage-full' },
      });
    } finally {
      full.mockRestore();
    }
    // The store works on once there is room.
    await store.save('a', named('Walk'), null);
    expect(await store.load('a')).toMatchObject({ ok: true });
  });

  test('a store that a newer program made', async () => {
    const newer = await openDB('jobs-test-newer', 2);
    newer.close();
    await expect(openJobs({ database: 'jobs-test-newer' })).rejects.toMatchObject({
      problem: { code: 'storage-unavailable' },
    });
  });

  test('a newer program gets the store at once, and this one finds out at its next save', async () => {
    const { store, database } = await newStore();
    await store.save('a', named('Walk'), null);
    const newer = await openDB(database, 2);
    await expect(store.save('a', named('Walk 2'), null)).rejects.toMatchObject({
      problem: { code: 'storage-unavailable' },
    });
    expect(await newer.get('jobs', 'a')).toMatchObject({ name: 'Walk' });
    newer.close();
  });

  test('a store that was cleared under an open page is made anew at the next save', async () => {
    const { store, database } = await newStore();
    await store.save('a', named('Walk'), null);
    await deleteDB(database);
    await store.save('b', named('Patio'), null);
    expect((await store.list()).map(({ name }) => name)).toEqual(['Patio']);
  });

  test('anything else is quoted', () => {
    const error = asTrouble(new Error('The disk is on fire'));
    expect(isStorageTrouble(error)).toBe(true);
    expect(error.problem).toEqual({
      code: 'storage-unavailable',
      facts: { says: 'The disk is on fire' },
    });
  });
});
