import { describe, expect, it } from 'vitest';
import { createSaver } from '../../src/app/saving.ts';
import type { Saving } from '../../src/app/state.ts';
import type { Job } from '../../src/job/job.ts';

const KEPT = { view: null, place: 'ground', panel: 'ticket' } as const;

function named(name: string): Job {
  return { name } as unknown as Job;
}

/** A store whose writes are let through one at a time by the test. */
function slowStore() {
  const written: string[] = [];
  const gates: { readonly pass: () => void; readonly refuse: (why: string) => void }[] = [];
  const write = (id: string, job: Job) =>
    new Promise<void>((resolve, reject) => {
      gates.push({
        pass: () => {
          written.push(`${id}:${job.name}`);
          resolve();
        },
        refuse: (why) => reject(new Error(why)),
      });
    });
  return { written, gates, write };
}

const turn = () => new Promise((resolve) => setTimeout(resolve, 0));

describe('saving', () => {
  it('writes in order, and of those that wait only the newest', async () => {
    const store = slowStore();
    const said: Saving[] = [];
    const saver = createSaver(store.write, (saving) => said.push(saving));
    saver.save('a', named('one'), KEPT);
    saver.save('a', named('two'), KEPT);
    saver.save('a', named('three'), KEPT);
    expect(store.gates).toHaveLength(1);
    store.gates[0]?.pass();
    await turn();
    store.gates[1]?.pass();
    await saver.idle();
    expect(store.written).toEqual(['a:one', 'a:three']);
    expect(said).toEqual([{ is: 'saving' }, { is: 'saved' }]);
  });

  it('says so when a job could not be written, even if another one was', async () => {
    const store = slowStore();
    const said: Saving[] = [];
    const saver = createSaver(store.write, (saving) => said.push(saving));
    saver.save('a', named('one'), KEPT);
    saver.save('b', named('two'), KEPT);
    store.gates[0]?.refuse('no room');
    await turn();
    store.gates[1]?.pass();
    await saver.idle();
    expect(said.at(-1)).toEqual({
      is: 'not-saved',
      problem: { code: 'storage-unavailable', facts: { says: 'no room' } },
    });
    saver.save('a', named('again'), KEPT);
    store.gates[2]?.pass();
    await saver.idle();
    expect(said.at(-1)).toEqual({ is: 'saved' });
  });

  it('waits with what changes at every frame, but not past the end', async () => {
    const store = slowStore();
    const saver = createSaver(store.write, () => {}, 10_000);
    saver.soon('a', named('one'), KEPT);
    saver.soon('a', named('two'), KEPT);
    expect(store.gates).toHaveLength(0);
    const idle = saver.idle();
    store.gates[0]?.pass();
    await idle;
    expect(store.written).toEqual(['a:two']);
  });
});
