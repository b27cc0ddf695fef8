// @vitest-environment jsdom
import { act } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Desk } from '../../../src/app/jobs/desk.ts';
import { PourDayPlace } from '../../../src/app/pourDay/PourDayPlace.tsx';
import { closedJobs } from '../../../src/app/pourDay/useClosedJobs.ts';
import { SessionContext } from '../../../src/app/SessionContext.ts';
import { createSession, type Session } from '../../../src/app/session.ts';
import { type Hold, openState } from '../../../src/app/state.ts';
import { createStore } from '../../../src/app/store.ts';
import { en } from '../../../src/app/words/en.ts';
import { createLiveTakeoffs } from '../../../src/app/worker/live.ts';
import type { Job } from '../../../src/job/job.ts';
import type { CloseOut } from '../../../src/job/pourLog.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { pad } from '../../takeoff/pourDay/pours.ts';
import { idleSearches } from '../idleSearches.ts';

let root: Root;
let page: HTMLElement;
const says = en.pourDay;

beforeEach(() => {
  Reflect.set(globalThis, 'IS_REACT_ACT_ENVIRONMENT', true);
  page = document.createElement('div');
  document.body.append(page);
  root = createRoot(page);
});
afterEach(() => {
  act(() => root.unmount());
  page.remove();
  Reflect.deleteProperty(navigator, 'wakeLock');
});

function desk(): Desk {
  const board = createStore({
    jobs: [],
    removed: null,
    refused: null,
    fromLink: null,
    trouble: null,
    mayBeCleared: false,
  });
  return { board, refresh: async () => {}, exportOpen: () => {} } as unknown as Desk;
}

function show(job: Job, hold: Hold = 'mine', saved: Job[] = []): Session {
  const takeoffs = createLiveTakeoffs({
    figure: takeoff,
    startWorker: () => ({ ask: () => {}, terminate: () => {} }),
    clock: () => 0,
    slowAfter: 8,
    manyCorners: 1000,
    patience: 1000,
  });
  const session = createSession({
    first: { ...openState('one', job, { place: 'pour-day' }, 'light'), hold },
    untried: false,
    searches: idleSearches(),
    takeoffs,
    saver: { save: (_, kept) => saved.push(kept), soon: () => {} },
    keepTheme: () => {},
  });
  act(() =>
    root.render(
      <SessionContext value={session}>
        <PourDayPlace desk={desk()} />
      </SessionContext>,
    ),
  );
  return session;
}

function button(name: string | RegExp): HTMLButtonElement {
  const found = [...page.querySelectorAll('button')].find((one) => {
    const label = one.getAttribute('aria-label') ?? one.textContent ?? '';
    return typeof name === 'string' ? label === name : name.test(label);
  });
  if (!found) throw new Error(`no button ${name}`);
  return found;
}

async function press(name: string | RegExp): Promise<void> {
  await act(async () => button(name).click());
}

function logOf(session: Session) {
  return session.state.get().history.now.job.pourLog;
}

describe('every tap', () => {
  test('is saved at once, with its time, and can be taken back', async () => {
    const saved: Job[] = [];
    const session = show(pad(), 'mine', saved);
    await press(says.parts.pour);
    await press(/^\+1 Batch in/);
    await press(/^\+1 Batch in/);
    expect(saved.map(({ pourLog }) => pourLog?.entries.length)).toEqual([1, 2]);
    const [first] = logOf(session)!.entries;
    expect(first).toMatchObject({ is: 'batch', bags: [{ mix: 'regular', bags: 2 }] });
    expect(Math.abs(Date.now() - first!.at)).toBeLessThan(60_000);
    await press(says.pour.takeBackWhat.batch);
    expect(logOf(session)!.entries.length).toBe(1);
    act(() => session.undo());
    expect(logOf(session)!.entries.length).toBe(2);
  });

  test('on the front right after another sets it right', async () => {
    const session = show(pad());
    await press(says.parts.pour);
    await press(/^\+1 Batch in/);
    await press(says.front.quarter);
    await press(says.front.half);
    expect(logOf(session)!.entries.map(({ is }) => is)).toEqual(['batch', 'front']);
    expect(page.textContent).toContain(says.front.placed('50%'));
    await press(says.front.turnRound);
    await press(/^\+1 Batch in/);
    await press(says.front.half);
    expect(logOf(session)!.entries.at(-1)).toMatchObject({ is: 'front', toward: 180 });
  });

  test('where another tab holds the job changes nothing, and says so', async () => {
    const session = show(pad(), 'other-tab');
    await press(says.parts.pour);
    await press(/^\+1 Batch in/);
    expect(logOf(session)).toBeUndefined();
    expect(page.textContent).toContain(en.otherTab.says);
  });

  test('on a batch that was different changes its bags, never under none', async () => {
    const session = show(pad());
    await press(says.parts.pour);
    await press(/^\+1 Batch in/);
    const name = pad().practices.mix.mixes[0]!.name;
    for (let tap = 0; tap < 6; tap++) {
      const less = button(says.pour.less(name, '1'));
      if (!less.disabled) await act(async () => less.click());
    }
    expect(logOf(session)!.entries[0]).toMatchObject({ bags: [{ bags: 0 }] });
    await press(says.pour.more(name, '1'));
    expect(logOf(session)!.entries[0]).toMatchObject({ bags: [{ bags: 0.5 }] });
  });
});

describe('the checklist', () => {
  test('keeps its ticks with the job, and the user’s own things with the practices', async () => {
    const session = show(pad());
    const boxes = [...page.querySelectorAll<HTMLInputElement>('input[type=checkbox]')];
    act(() => boxes[0]!.click());
    expect(logOf(session)!.checked).toEqual(['lines']);
    const input = page.querySelector<HTMLInputElement>('form input')!;
    const set = Object.getOwnPropertyDescriptor(Object.getPrototypeOf(input), 'value')!.set!;
    act(() => {
      set.call(input, 'Ice for the water');
      input.dispatchEvent(new Event('input', { bubbles: true }));
    });
    await press(says.before.add);
    const { practices } = session.state.get().history.now.job;
    expect(practices.pourDay?.checks).toEqual([{ id: 'own-1', text: 'Ice for the water' }]);
    await press(says.before.remove('Ice for the water'));
    expect(session.state.get().history.now.job.practices.pourDay?.checks).toEqual([]);
  });
});

describe('the screen', () => {
  test('that can’t be kept on is said to be so, with what to do instead', async () => {
    show(pad());
    await press(says.parts.pour);
    expect(page.textContent).toContain(says.awake.none);
  });

  test('is kept on while the pour is open, asked again after the phone slept, and let go after', async () => {
    const locks: (EventTarget & { released: boolean; release: () => Promise<void> })[] = [];
    const request = vi.fn(async () => {
      const lock = Object.assign(new EventTarget(), {
        released: false,
        release: async () => {
          lock.released = true;
          lock.dispatchEvent(new Event('release'));
        },
      });
      locks.push(lock);
      return lock;
    });
    Object.defineProperty(navigator, 'wakeLock', { value: { request }, configurable: true });
    show(pad());
    await press(says.parts.pour);
    expect(page.textContent).toContain(says.awake.on);
    await act(async () => locks[0]!.release());
    expect(page.textContent).toContain(says.awake.off);
    await act(async () => document.dispatchEvent(new Event('visibilitychange')));
    expect(page.textContent).toContain(says.awake.on);
    expect(request).toHaveBeenCalledTimes(2);
    await press(says.parts.before);
    expect(locks.at(-1)!.released).toBe(true);
  });

  test('that the phone won’t keep on is said to be so', async () => {
    const request = async () => Promise.reject(new Error('low battery'));
    Object.defineProperty(navigator, 'wakeLock', { value: { request }, configurable: true });
    show(pad());
    await press(says.parts.pour);
    expect(page.textContent).toContain(says.awake.refused);
  });
});

test('a pour that can’t be figured says where to look, and a job with a log opens at it', async () => {
  const session = show({ ...pad(), features: [] });
  await press(says.parts.pour);
  expect(page.textContent).toContain(says.waiting);
  await press(says.parts.after);
  expect(page.textContent).toContain(says.waiting);
  expect(session.state.get().history.now.job.closeOut).toBeUndefined();
});

test('a pour closed twice on this device, brought in from a file, counts once', () => {
  const closed = { at: 5, net: 10, bags: [] } as unknown as CloseOut;
  const row = (id: string, more: Partial<CloseOut> = {}) => ({
    id,
    name: id,
    changed: 0,
    closed: { ...closed, ...more },
  });
  const found = closedJobs([
    row('a'),
    row('b'),
    row('c', { at: 9 }),
    { id: 'd', name: '', changed: 0 },
  ]);
  expect(found.map(({ id }) => id)).toEqual(['c', 'a']);
});
