import { describe, expect, it } from 'vitest';
import { createTabs, type TabNews } from '../../src/app/tabs.ts';

/** Web locks of one browser, as far as they are used here. */
function browser() {
  const holders = new Map<string, { readonly end: () => void; readonly lose: () => void }>();
  const queues = new Map<string, (() => void)[]>();

  function grant(name: string, work: (lock: Lock | null) => unknown): Promise<unknown> {
    return new Promise((resolve, reject) => {
      holders.set(name, {
        end: () => resolve(undefined),
        lose: () => reject(new DOMException('stolen', 'AbortError')),
      });
      Promise.resolve(work({ name, mode: 'exclusive' })).then(() => {
        holders.delete(name);
        resolve(undefined);
        queues.get(name)?.shift()?.();
      });
    });
  }

  const locks = {
    request: (name: string, options: LockOptions, work: (lock: Lock | null) => unknown) => {
      if (options.steal) holders.get(name)?.lose();
      else if (holders.has(name)) {
        if (options.ifAvailable) return Promise.resolve(work(null));
        return new Promise((resolve, reject) => {
          const waiting = queues.get(name) ?? [];
          queues.set(name, waiting);
          const go = () => resolve(grant(name, work));
          waiting.push(go);
          options.signal?.addEventListener('abort', () => {
            waiting.splice(waiting.indexOf(go), 1);
            reject(options.signal?.reason);
          });
        });
      }
      return grant(name, work);
    },
  } as unknown as LockManager;

  const channels: { onmessage: ((event: MessageEvent<TabNews>) => void) | null }[] = [];
  function tab(answers = true) {
    const lost: string[] = [];
    const heard: string[] = [];
    let finished = 0;
    const channel = {
      onmessage: null as ((event: MessageEvent<TabNews>) => void) | null,
      postMessage: (data: TabNews) => {
        for (const other of channels) if (other !== channel) other.onmessage?.({ data } as never);
      },
    };
    if (answers) channels.push(channel);
    const tabs = createTabs({
      locks,
      channel,
      finish: async () => {
        finished += 1;
      },
      onLost: (id) => lost.push(id),
      onSavedElsewhere: (id) => heard.push(id),
      patience: 30,
    });
    return { tabs, lost, heard, finished: () => finished };
  }
  return { tab };
}

describe('tabs', () => {
  it('lets one tab write a job, and another tab another job', async () => {
    const { tab } = browser();
    const first = tab();
    const second = tab();
    expect(await first.tabs.take('a')).toBe('mine');
    expect(await second.tabs.take('a')).toBe('other-tab');
    expect(await second.tabs.take('b')).toBe('mine');
  });

  it('hands a job over once the tab that had it is done writing', async () => {
    const { tab } = browser();
    const first = tab();
    const second = tab();
    await first.tabs.take('a');
    expect(await second.tabs.takeOver('a')).toBe('mine');
    expect(first.finished()).toBe(1);
    expect(first.lost).toEqual(['a']);
  });

  it('takes a job from a tab that does not answer, which is told', async () => {
    const { tab } = browser();
    const asleep = tab(false);
    const second = tab();
    await asleep.tabs.take('a');
    expect(await second.tabs.takeOver('a')).toBe('mine');
    expect(asleep.lost).toEqual(['a']);
  });

  it('tells the other tabs of a save', () => {
    const { tab } = browser();
    const first = tab();
    const second = tab();
    first.tabs.tellSaved('a');
    expect(second.heard).toEqual(['a']);
    expect(first.heard).toEqual([]);
  });

  it('works alone where the browser has no locks', async () => {
    const tabs = createTabs({
      locks: undefined,
      channel: undefined,
      finish: async () => {},
      onLost: () => {},
      onSavedElsewhere: () => {},
      patience: 10,
    });
    expect(await tabs.take('a')).toBe('mine');
  });
});
