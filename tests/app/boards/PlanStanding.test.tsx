// @vitest-environment jsdom
import { act } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { SessionContext } from '../../../src/app/SessionContext.ts';
import { createSession } from '../../../src/app/session.ts';
import { openState } from '../../../src/app/state.ts';
import { TicketPanel } from '../../../src/app/ticket/TicketPanel.tsx';
import { en } from '../../../src/app/words/en.ts';
import { createLiveTakeoffs } from '../../../src/app/worker/live.ts';
import { createSearch } from '../../../src/app/worker/search.ts';
import type { SearchSent } from '../../../src/app/worker/searchMessages.ts';
import { demoJob } from '../../../src/job/demo.ts';
import { leftovers } from '../../../src/takeoff/boards/leftovers.ts';
import type { BoardPlan, Proof } from '../../../src/takeoff/boards/plan.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { idleSearches } from '../idleSearches.ts';

const PAUSE = 400;
let root: Root;
let page: HTMLElement;

beforeEach(() => {
  vi.useFakeTimers();
  Reflect.set(globalThis, 'IS_REACT_ACT_ENVIRONMENT', true);
  page = document.createElement('div');
  document.body.append(page);
  root = createRoot(page);
});
afterEach(() => {
  act(() => root.unmount());
  page.remove();
  vi.useRealTimers();
});

/** The forms' ticket of the sample job, with a search that is answered by hand. */
function show() {
  let send: (sent: SearchSent<BoardPlan>) => void = () => {};
  let id = 0;
  const session = createSession({
    first: { ...openState('one', demoJob(), {}, 'light'), place: 'forms' },
    untried: false,
    takeoffs: createLiveTakeoffs({
      figure: takeoff,
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
          return {
            ask: (ask) => {
              id = ask.id;
            },
            terminate: () => {},
          };
        },
        pause: PAUSE,
        seconds: 20,
        grace: 5000,
      }),
    },
    saver: { save: () => {}, soon: () => {} },
    keepTheme: () => {},
  });
  act(() => {
    root.render(
      <SessionContext value={session}>
        <TicketPanel station="forms" />
      </SessionContext>,
    );
  });
  const plan = (proof: Proof): BoardPlan => ({ ...session.live.get().takeoff.boards!.plan, proof });
  return {
    session,
    begin: () => act(() => vi.advanceTimersByTime(PAUSE)),
    better: () => act(() => send({ id, better: plan({ is: 'first' }) })),
    done: (proof: Proof) => act(() => send({ id, done: plan(proof) })),
    failed: (why: string) => act(() => send({ id, failed: why })),
  };
}

function line(): string {
  return page.querySelector('.plan-standing [data-is]')?.textContent ?? '';
}

function press(name: string): void {
  const buttons = [...page.querySelectorAll<HTMLButtonElement>('.plan-standing button')];
  const button = buttons.find(({ textContent }) => textContent === name);
  if (!button) throw new Error(`There is no “${name}” in: ${page.textContent}`);
  act(() => button.click());
}

describe('how the board plan stands', () => {
  it('says first answer, looking, better, proved', () => {
    const { begin, better, done } = show();
    expect(line()).toBe(en.plan.waiting);
    begin();
    expect(line()).toBe(en.plan.searching);
    better();
    expect(line()).toBe(en.plan.better);
    done({ is: 'proved', seconds: 2 });
    expect(line()).toContain('Proved in 2 s');
    expect(page.textContent).not.toContain(en.plan.stop);
  });

  it('says by how much another could be better when time ran out', () => {
    const { begin, done } = show();
    begin();
    done({ is: 'gap', of: 'cuts', bound: 0, seconds: 20 });
    expect(line()).toContain('Best found in 20 s');
    expect(line()).toMatch(/save \d cuts at most/);
  });

  it('is left at what was found, and looks again', () => {
    const { begin, better } = show();
    begin();
    better();
    press(en.plan.stop);
    expect(line()).toContain(en.plan.stopped);
    expect(line()).toContain('first answer');
    press(en.plan.again);
    expect(line()).toBe(en.plan.better);
  });

  it('says why it failed, keeps the plan, and looks again', () => {
    const { begin, failed } = show();
    begin();
    failed('no file');
    expect(line()).toContain(en.plan.failed('no file'));
    press(en.plan.again);
    expect(line()).toBe(en.plan.searching);
  });

  it('is of the sketch on screen: a change has a first answer again', () => {
    const { session, begin, done } = show();
    begin();
    done({ is: 'proved', seconds: 2 });
    const { practices } = demoJob();
    const thinner = { ...practices, boards: { ...practices.boards, kerf: 0 } };
    act(() => session.commit({ do: 'set-practices', practices: thinner }));
    expect(line()).toBe(en.plan.waiting);
    act(() => session.undo());
    expect(line()).toContain('Proved in 2 s');
  });

  it('puts the leftovers on the truck’s list in one step of undo, and says what that does', () => {
    const { session, begin, done } = show();
    expect(page.textContent).not.toContain(en.plan.leftovers);
    begin();
    done({ is: 'proved', seconds: 2 });
    const before = session.state.get().history.now.job;
    const { plan } = session.live.get().takeoff.boards!;
    press(en.plan.leftovers);
    const { truck } = session.state.get().history.now.job.lumber;
    expect(truck).toEqual(leftovers(before, plan));
    expect(page.textContent).toContain(en.plan.leftoversDone);
    // Pressed again, it would take the boards of another plan off the list.
    expect(page.textContent).not.toContain(en.plan.leftovers);
    act(() => session.undo());
    expect(session.state.get().history.now.job).toBe(before);
    expect(page.textContent).not.toContain(en.plan.leftoversDone);
    expect(page.textContent).toContain(en.plan.leftovers);
  });
});
