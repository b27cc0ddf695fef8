import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createLiveTakeoffs } from '../../../src/app/worker/live.ts';
import type { Answer, Ask } from '../../../src/app/worker/messages.ts';
import type { Job } from '../../../src/job/job.ts';
import type { BoardPlan } from '../../../src/takeoff/boards/plan.ts';
import type { Takeoff } from '../../../src/takeoff/result.ts';
import type { Searched } from '../../../src/takeoff/searched.ts';

/** Stands for a takeoff: its one note tells which job it is of, and with what find of the searches. */
function takeoffOf(job: Job, { boards }: Searched = {}): Takeoff {
  const code = boards ? `${job.name}+${boards.key}` : job.name;
  return { notes: [{ code, weight: 'assumption', station: 'ground' }] };
}

/** A find of the searches, told apart by its key. */
function found(key: string): Searched {
  return { boards: { key, plan: {} as BoardPlan } };
}

function jobOf(name: string, corners = 4): Job {
  const shape = { form: 'outline', closed: true, corners: Array.from({ length: corners }) };
  return { name, features: [{ shape }] } as unknown as Job;
}

function setUp() {
  let time = 0;
  let cost = 1;
  const here: string[] = [];
  const asks: Ask[] = [];
  const sent: Ask[] = [];
  const workers: { readonly ended: boolean; readonly onAnswer: (answer: Answer) => void }[] = [];
  const takeoffs = createLiveTakeoffs({
    figure: (job, searched) => {
      here.push(job.name);
      time += cost;
      if (job.name === 'breaks') throw new Error('impossible');
      return takeoffOf(job, searched);
    },
    startWorker: (onAnswer) => {
      let known: Searched = {};
      const worker = {
        ended: false,
        // As the worker does: what isn't sent again is as it was.
        ask: (ask: Ask) => {
          known = ask.searched ?? known;
          sent.push(ask);
          asks.push({ ...ask, searched: known });
        },
        terminate: () => {
          worker.ended = true;
        },
        onAnswer,
      };
      workers.push(worker);
      return worker;
    },
    clock: () => time,
    slowAfter: 8,
    manyCorners: 100,
    patience: 5000,
  });
  const shown = () => {
    const { takeoff, standing } = takeoffs.live.get();
    return `${takeoff.notes[0]?.code ?? 'nothing'} ${standing}`;
  };
  return {
    takeoffs,
    here,
    asks,
    sent,
    workers,
    shown,
    costs: (ms: number) => {
      cost = ms;
    },
    answer: (took = 1) => {
      const ask = asks.at(-1);
      if (!ask) throw new Error('Nothing was asked.');
      const takeoff = takeoffOf(ask.job, ask.searched);
      workers.at(-1)?.onAnswer({ id: ask.id, took, takeoff });
    },
  };
}

describe('live takeoff', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('figures a small job at once, and once only', () => {
    const { takeoffs, here, shown, workers } = setUp();
    const job = jobOf('small');
    takeoffs.want(job);
    takeoffs.want(job);
    expect(shown()).toBe('small current');
    expect(here).toEqual(['small']);
    expect(workers).toHaveLength(0);
  });

  it('comes back to a job figured moments ago without figuring it again', () => {
    const { takeoffs, here, shown } = setUp();
    const job = jobOf('kept');
    takeoffs.want(job);
    takeoffs.want(jobOf('draft'));
    takeoffs.want(job);
    expect(shown()).toBe('kept current');
    expect(here).toEqual(['kept', 'draft']);
  });

  it('sends the next one to the worker after a slow one, and comes back when it is quick', () => {
    const { takeoffs, here, shown, costs, answer } = setUp();
    costs(20);
    takeoffs.want(jobOf('slow'));
    takeoffs.want(jobOf('next'));
    expect(shown()).toBe('slow behind');
    answer(2);
    expect(shown()).toBe('next current');
    takeoffs.want(jobOf('quick'));
    expect(here).toEqual(['slow', 'quick']);
  });

  it('never tries a job with many corners on the page', () => {
    const { takeoffs, here, asks } = setUp();
    takeoffs.want(jobOf('huge', 101));
    expect(here).toEqual([]);
    expect(asks.map((ask) => ask.job.name)).toEqual(['huge']);
  });

  it('lets the newest win', () => {
    const { takeoffs, asks, shown, answer } = setUp();
    takeoffs.want(jobOf('first', 101));
    takeoffs.want(jobOf('second', 101));
    takeoffs.want(jobOf('third', 101));
    answer(20);
    expect(shown()).toBe('first behind');
    answer(20);
    expect(shown()).toBe('third current');
    expect(asks.map((ask) => ask.job.name)).toEqual(['first', 'third']);
  });

  it('shows nothing of the job before while an untried one is figured', () => {
    const { takeoffs, here, shown, answer } = setUp();
    takeoffs.want(jobOf('mine'));
    takeoffs.want(jobOf('from a file'), true);
    expect(shown()).toBe('nothing behind');
    expect(here).toEqual(['mine']);
    answer();
    expect(shown()).toBe('from a file current');
  });

  it('ends a worker that does not answer, says so, and goes on with the next job', () => {
    const { takeoffs, workers, asks, here, shown, answer } = setUp();
    takeoffs.want(jobOf('trap'), true);
    vi.advanceTimersByTime(5000);
    expect(workers[0]?.ended).toBe(true);
    expect(shown()).toBe('nothing stuck');
    takeoffs.want(jobOf('mended'));
    expect(here).toEqual([]);
    expect(asks.at(-1)?.job.name).toBe('mended');
    answer();
    expect(shown()).toBe('mended current');
  });

  it('keeps the last good takeoff, marked, when one fails', () => {
    const { takeoffs, shown } = setUp();
    takeoffs.want(jobOf('good'));
    takeoffs.want(jobOf('breaks'));
    expect(shown()).toBe('good failed');
    expect(takeoffs.live.get().why).toBe('impossible');
  });

  it('drops late news of an earlier job', () => {
    const { takeoffs, shown, answer } = setUp();
    takeoffs.want(jobOf('big', 101));
    takeoffs.want(jobOf('small'));
    expect(shown()).toBe('small current');
    answer();
    expect(shown()).toBe('small current');
  });

  it('figures the job again with what a search found, once', () => {
    const { takeoffs, here, shown } = setUp();
    takeoffs.want(jobOf('job'));
    const better = found('better');
    takeoffs.search(better);
    takeoffs.search({ ...better });
    expect(shown()).toBe('job+better current');
    expect(here).toEqual(['job', 'job']);
    takeoffs.want(jobOf('next'));
    expect(shown()).toBe('next+better current');
  });

  it('has the worker figure a slow job with what a search found, and calls its figures true meanwhile', () => {
    const { takeoffs, here, asks, shown, answer } = setUp();
    takeoffs.want(jobOf('huge', 101));
    answer(20);
    const better = found('better');
    takeoffs.search(better);
    takeoffs.search(better);
    expect(shown()).toBe('huge current');
    expect(asks).toHaveLength(2);
    answer(20);
    expect(shown()).toBe('huge+better current');
    expect(here).toEqual([]);
  });

  it('tells a worker only once what was found, and a new one again', () => {
    const { takeoffs, sent, answer, shown } = setUp();
    const better = found('better');
    takeoffs.search(better);
    for (const name of ['a', 'b']) {
      takeoffs.want(jobOf(name, 101));
      answer(20);
      expect(shown()).toBe(`${name}+better current`);
    }
    expect(sent.map(({ searched }) => searched)).toEqual([better, undefined]);
    takeoffs.want(jobOf('trap', 101));
    vi.advanceTimersByTime(5000);
    takeoffs.want(jobOf('after', 101));
    expect(sent.at(-1)?.searched).toBe(better);
  });

  it('drops late news with an earlier find, and of an earlier job once this one is figured', () => {
    const { takeoffs, asks, workers, shown, answer } = setUp();
    takeoffs.want(jobOf('other', 101));
    takeoffs.want(jobOf('small'));
    takeoffs.search(found('better'));
    expect(shown()).toBe('small+better current');
    answer(20);
    expect(shown()).toBe('small+better current');

    takeoffs.want(jobOf('huge', 101));
    answer(20);
    takeoffs.search(found('first'));
    takeoffs.search(found('second'));
    workers[0]?.onAnswer({ id: asks.at(-1)!.id, took: 20, takeoff: takeoffOf(jobOf('huge'), {}) });
    expect(shown()).toBe('huge current');
    answer(20);
    expect(shown()).toBe('huge+second current');
  });

  it('comes back by undo to what was known of the job, and figures it again if more is known by now', () => {
    const { takeoffs, here, shown } = setUp();
    const job = jobOf('job');
    takeoffs.want(job);
    takeoffs.search(found('first'));
    takeoffs.want(jobOf('edited'));
    takeoffs.search(found('of the edited'));
    takeoffs.want(job);
    expect(shown()).toBe('job+first current');
    expect(here).toEqual(['job', 'job', 'edited', 'edited']);
    takeoffs.search(found('later'));
    expect(shown()).toBe('job+later current');
  });
});
