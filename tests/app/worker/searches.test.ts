import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createSession } from '../../../src/app/session.ts';
import { openState } from '../../../src/app/state.ts';
import { createLiveTakeoffs } from '../../../src/app/worker/live.ts';
import { createSearch } from '../../../src/app/worker/search.ts';
import type { SearchAsk, SearchSent } from '../../../src/app/worker/searchMessages.ts';
import type { Command } from '../../../src/job/commands.ts';
import { demoJob } from '../../../src/job/demo.ts';
import type { BoardPlan, BoardProblem } from '../../../src/takeoff/boards/plan.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FOOT, SIXTEENTH } from '../../../src/units/grid.ts';
import { idleSearches } from '../idleSearches.ts';

const PAUSE = 400;

/** The sample job at the forms, with a search that is answered by hand. */
function setUp() {
  const asks: SearchAsk<BoardProblem>[] = [];
  let figured = 0;
  let send: (sent: SearchSent<BoardPlan>) => void = () => {};
  const session = createSession({
    first: { ...openState('one', demoJob(), {}, 'light'), place: 'forms' },
    untried: false,
    takeoffs: createLiveTakeoffs({
      figure: (job, searched) => {
        figured += 1;
        return takeoff(job, searched);
      },
      startWorker: () => ({ ask: () => {}, terminate: () => {} }),
      clock: () => 0,
      slowAfter: 8,
      manyCorners: 1000,
      patience: 1000,
    }),
    searches: {
      ...idleSearches(),
      boards: createSearch({
        start: (onSent) => {
          send = onSent;
          return { ask: (ask) => void asks.push(ask), terminate: () => {} };
        },
        pause: PAUSE,
        seconds: 20,
        grace: 5000,
      }),
    },
    saver: { save: () => {}, soon: () => {} },
    keepTheme: () => {},
  });
  const boards = () => {
    const { takeoff: shown } = session.live.get();
    if (!shown.boards) throw new Error('The sample job has boards.');
    return shown.boards;
  };
  return {
    session,
    asks,
    boards,
    proof: () => boards().plan.proof.is,
    figured: () => figured,
    /** The plan on screen, proved: as good as any other for a test of who gets it. */
    prove: () => {
      const proved: BoardPlan = { ...boards().plan, proof: { is: 'proved', seconds: 1 } };
      send({ id: asks.at(-1)!.id, done: proved });
    },
  };
}

/** Moves a corner of the sample pad's free edges, so that its form runs change. */
function moved(by: number): Command {
  const pad = demoJob().features.find(
    ({ shape }) => shape.form === 'outline' && shape.corners.some(({ id }) => id === 'c24'),
  )!;
  if (pad.shape.form !== 'outline') throw new Error('The pad has corners.');
  const { x, y } = pad.shape.corners.find(({ id }) => id === 'c24')!;
  return { do: 'move-corner', feature: pad.id, corner: 'c24', to: { x: x + by, y: y + by } };
}

describe('searches tied to the figures on screen', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('looks for a better board plan once the sketch rests, and shows it', () => {
    const { asks, boards, proof, prove } = setUp();
    expect(proof()).toBe('first');
    expect(asks).toHaveLength(0);
    vi.advanceTimersByTime(PAUSE);
    expect(asks[0]?.question).toEqual(boards().problem);
    prove();
    expect(proof()).toBe('proved');
    vi.advanceTimersByTime(PAUSE * 10);
    expect(asks).toHaveLength(1);
  });

  it('a changed sketch has its first answer until its own is found; undo has the proof again', () => {
    const { session, asks, proof, prove } = setUp();
    vi.advanceTimersByTime(PAUSE);
    prove();
    session.commit(moved(-FOOT / 4));
    expect(proof()).toBe('first');
    session.undo();
    expect(proof()).toBe('proved');
    session.redo();
    expect(proof()).toBe('first');
    vi.advanceTimersByTime(PAUSE);
    expect(asks).toHaveLength(2);
    prove();
    expect(proof()).toBe('proved');
  });

  it('searches nothing during a drag, and figures each of its frames once', () => {
    const { session, asks, proof, prove, figured } = setUp();
    vi.advanceTimersByTime(PAUSE);
    prove();
    const before = figured();
    for (let frame = 1; frame <= 10; frame += 1) {
      session.preview(moved(-frame * SIXTEENTH));
      vi.advanceTimersByTime(PAUSE);
    }
    expect(figured() - before).toBe(10);
    expect(asks).toHaveLength(1);
    session.preview(null);
    expect(proof()).toBe('proved');
    expect(figured() - before).toBe(10);
  });

  it('looks for nothing where no plan is on show', () => {
    const { session, asks } = setUp();
    session.go('mix');
    vi.advanceTimersByTime(PAUSE * 5);
    expect(asks).toHaveLength(0);
    session.go('sheet');
    vi.advanceTimersByTime(PAUSE);
    expect(asks).toHaveLength(1);
  });

  it('asks the same of a job whatever was found for it, so that a find starts no search of its own', () => {
    const job = demoJob();
    const { boards } = takeoff(job);
    const plan: BoardPlan = { ...boards!.plan, proof: { is: 'proved', seconds: 1 } };
    const again = takeoff(job, { boards: { key: boards!.key, plan } }).boards!;
    expect(again.plan).toBe(plan);
    expect(again.key).toBe(boards!.key);
  });
});
