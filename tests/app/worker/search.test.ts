import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createSearch } from '../../../src/app/worker/search.ts';
import type { SearchAsk, SearchSent } from '../../../src/app/worker/searchMessages.ts';

const PAUSE = 400;
const SECONDS = 20;
const GRACE = 5000;

interface FakeWorker {
  ended: boolean;
  readonly asks: SearchAsk<string>[];
  readonly onSent: (sent: SearchSent<string>) => void;
  readonly onBroken: (why: string) => void;
}

/** A search of texts, answered by hand; a question is its own key. */
function setUp() {
  const workers: FakeWorker[] = [];
  let starts = true;
  const search = createSearch<string, string>({
    start: (onSent, onBroken) => {
      if (!starts) throw new Error('no workers here');
      const worker: FakeWorker = { ended: false, asks: [], onSent, onBroken };
      workers.push(worker);
      return {
        ask: (ask) => void worker.asks.push(ask),
        terminate: () => {
          worker.ended = true;
        },
      };
    },
    pause: PAUSE,
    seconds: SECONDS,
    grace: GRACE,
  });
  const last = () => {
    const worker = workers.at(-1);
    const ask = worker?.asks.at(-1);
    if (!worker || !ask) throw new Error('Nothing was asked.');
    return { worker, id: ask.id };
  };
  return {
    search,
    workers,
    want: (question: string | null) =>
      search.want(question === null ? null : { key: question, question }),
    asked: () => workers.flatMap(({ asks }) => asks.map(({ question }) => question)),
    better: (better: string) => last().worker.onSent({ id: last().id, better }),
    done: (done: string) => last().worker.onSent({ id: last().id, done }),
    failed: (failed: string) => last().worker.onSent({ id: last().id, failed }),
    breaks: (why: string) => last().worker.onBroken(why),
    cantStart: () => {
      starts = false;
    },
    shown: () => {
      const now = search.standing.get();
      if (now.is === 'nothing') return 'nothing';
      return [now.key, now.is, now.best, now.is === 'failed' ? now.why : undefined]
        .filter((part) => part !== undefined)
        .join(' ');
    },
  };
}

describe('a slow search', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('starts no worker before a question has stood for the pause', () => {
    const { want, workers, shown, asked } = setUp();
    want('a');
    vi.advanceTimersByTime(PAUSE - 1);
    want('b');
    vi.advanceTimersByTime(PAUSE - 1);
    expect(shown()).toBe('b waiting');
    expect(workers).toHaveLength(0);
    vi.advanceTimersByTime(1);
    expect(shown()).toBe('b searching');
    expect(asked()).toEqual(['b']);
  });

  it('does not begin the pause again for the same question', () => {
    const { want, asked } = setUp();
    want('a');
    vi.advanceTimersByTime(PAUSE - 1);
    want('a');
    vi.advanceTimersByTime(1);
    expect(asked()).toEqual(['a']);
  });

  it('shows better answers as they come, then the last one', () => {
    const { search, want, better, done, shown } = setUp();
    want('a');
    vi.advanceTimersByTime(PAUSE);
    better('good');
    expect(shown()).toBe('a searching good');
    better('better');
    expect(shown()).toBe('a searching better');
    done('best');
    expect(shown()).toBe('a done best');
    search.stop();
    expect(shown()).toBe('a done best');
    vi.advanceTimersByTime(SECONDS * 1000 + GRACE);
    expect(shown()).toBe('a done best');
  });

  it('uses one worker for one question after the other', () => {
    const { want, done, workers } = setUp();
    want('a');
    vi.advanceTimersByTime(PAUSE);
    done('best');
    want('b');
    vi.advanceTimersByTime(PAUSE);
    expect(workers).toHaveLength(1);
    expect(workers[0]?.ended).toBe(false);
  });

  it('ends the search that runs once a newer question has stood, and takes up what it had found later', () => {
    const { want, better, workers, shown, asked } = setUp();
    want('a');
    vi.advanceTimersByTime(PAUSE);
    better('good');
    want('b');
    expect(workers[0]?.ended).toBe(false);
    vi.advanceTimersByTime(PAUSE);
    expect(workers[0]?.ended).toBe(true);
    expect(shown()).toBe('b searching');
    want('a');
    expect(shown()).toBe('a waiting good');
    vi.advanceTimersByTime(PAUSE);
    expect(asked()).toEqual(['a', 'b', 'a']);
    expect(shown()).toBe('a searching good');
  });

  it('never shows an answer to another question', () => {
    const { want, better, done, shown } = setUp();
    want('a');
    vi.advanceTimersByTime(PAUSE);
    want('b');
    better('good');
    expect(shown()).toBe('b waiting');
    done('best');
    expect(shown()).toBe('b waiting');
  });

  it('drops late news of a worker that was ended', () => {
    const { want, workers, shown } = setUp();
    want('a');
    vi.advanceTimersByTime(PAUSE);
    want('b');
    vi.advanceTimersByTime(PAUSE);
    const [old] = workers;
    old?.onSent({ id: old.asks[0]!.id, done: 'late' });
    expect(shown()).toBe('b searching');
    want('a');
    expect(shown()).toBe('a waiting');
  });

  it('finds the search still running when a gesture is broken off', () => {
    const { want, done, shown, asked, workers } = setUp();
    want('a');
    vi.advanceTimersByTime(PAUSE);
    want('drag');
    want('a');
    expect(shown()).toBe('a searching');
    vi.advanceTimersByTime(PAUSE * 2);
    expect(asked()).toEqual(['a']);
    expect(workers[0]?.ended).toBe(false);
    done('best');
    expect(shown()).toBe('a done best');
  });

  it('comes back at once to a question that was answered, and forgets the oldest of many', () => {
    const { want, done, shown, asked } = setUp();
    for (let question = 0; question <= 20; question += 1) {
      want(`q${question}`);
      vi.advanceTimersByTime(PAUSE);
      done(`best of ${question}`);
    }
    want('q1');
    expect(shown()).toBe('q1 done best of 1');
    vi.advanceTimersByTime(PAUSE);
    expect(asked()).toHaveLength(21);
    want('q0');
    expect(shown()).toBe('q0 waiting');
  });

  it('starts nothing while held, and waits the whole pause afterwards', () => {
    const { search, want, asked } = setUp();
    search.hold(true);
    want('a');
    vi.advanceTimersByTime(PAUSE * 5);
    expect(asked()).toEqual([]);
    search.hold(false);
    vi.advanceTimersByTime(PAUSE - 1);
    expect(asked()).toEqual([]);
    vi.advanceTimersByTime(1);
    expect(asked()).toEqual(['a']);
  });

  it('ends a search that nothing asks for any more', () => {
    const { want, workers, shown } = setUp();
    want('a');
    vi.advanceTimersByTime(PAUSE);
    want(null);
    expect(shown()).toBe('nothing');
    vi.advanceTimersByTime(PAUSE);
    expect(workers[0]?.ended).toBe(true);
  });

  it('is stopped by hand and stays so, also after a step of undo, until it is asked again', () => {
    const { search, want, better, workers, shown, asked } = setUp();
    want('a');
    vi.advanceTimersByTime(PAUSE);
    better('good');
    search.stop();
    expect(workers[0]?.ended).toBe(true);
    expect(shown()).toBe('a stopped good');
    want('b');
    want('a');
    vi.advanceTimersByTime(PAUSE);
    expect(shown()).toBe('a stopped good');
    search.again();
    expect(shown()).toBe('a searching good');
    expect(asked()).toEqual(['a', 'a']);
  });

  it('says why it failed, keeps what it found, and tries again with a fresh worker', () => {
    const { search, want, better, failed, workers, shown } = setUp();
    want('a');
    vi.advanceTimersByTime(PAUSE);
    better('good');
    failed('out of memory');
    expect(shown()).toBe('a failed good out of memory');
    expect(workers[0]?.ended).toBe(true);
    search.again();
    expect(workers).toHaveLength(2);
    expect(shown()).toBe('a searching good');
  });

  it('says so when the worker breaks or cannot be started', () => {
    const { search, want, breaks, cantStart, shown } = setUp();
    want('a');
    vi.advanceTimersByTime(PAUSE);
    breaks('script error');
    expect(shown()).toBe('a failed script error');
    cantStart();
    search.again();
    expect(shown()).toBe('a failed no workers here');
  });

  it('ends a search that does not keep to its time', () => {
    const { want, better, workers, shown } = setUp();
    want('a');
    vi.advanceTimersByTime(PAUSE);
    better('good');
    vi.advanceTimersByTime(SECONDS * 1000 + GRACE);
    expect(shown()).toBe('a stuck good');
    expect(workers[0]?.ended).toBe(true);
  });
});
