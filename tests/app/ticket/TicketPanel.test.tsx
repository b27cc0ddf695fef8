// @vitest-environment jsdom
import { act } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { SessionContext } from '../../../src/app/SessionContext.ts';
import { createSession, type Session } from '../../../src/app/session.ts';
import { openState } from '../../../src/app/state.ts';
import { TicketPanel } from '../../../src/app/ticket/TicketPanel.tsx';
import { createLiveTakeoffs } from '../../../src/app/worker/live.ts';
import { demoJob } from '../../../src/job/demo.ts';
import type { Job } from '../../../src/job/job.ts';
import { rectangleJob } from '../../../src/job/start.ts';
import type { Station } from '../../../src/takeoff/figure.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FOOT, METRE } from '../../../src/units/grid.ts';
import { idleSearches } from '../idleSearches.ts';

let root: Root;
let page: HTMLElement;

beforeEach(() => {
  Reflect.set(globalThis, 'IS_REACT_ACT_ENVIRONMENT', true);
  page = document.createElement('div');
  document.body.append(page);
  root = createRoot(page);
});
afterEach(() => {
  act(() => root.unmount());
  page.remove();
});

function rectangle(length: number, width: number): Job {
  const job = rectangleJob(length, width);
  if (!job.ok) throw new Error('A plain rectangle was refused.');
  return job.value;
}

/** Shows a job's ticket; `breaks` makes the takeoff of that job fail. */
function show(job: Job, station: Station, breaks?: (job: Job) => boolean): Session {
  const takeoffs = createLiveTakeoffs({
    figure: (one) => {
      if (breaks?.(one)) throw new Error('impossible');
      return takeoff(one);
    },
    startWorker: () => ({ ask: () => {}, terminate: () => {} }),
    clock: () => 0,
    slowAfter: 8,
    manyCorners: 1000,
    patience: 1000,
  });
  const session = createSession({
    first: openState('one', job, {}, 'light'),
    untried: false,
    searches: idleSearches(),
    takeoffs,
    saver: { save: () => {}, soon: () => {} },
    keepTheme: () => {},
  });
  act(() => {
    root.render(
      <SessionContext value={session}>
        <TicketPanel station={station} />
      </SessionContext>,
    );
  });
  return session;
}

function figureOf(key: string): string {
  const cell = page.querySelector(`.slip [data-figure="${key}"]`);
  if (!cell) throw new Error(`The ticket has no ${key}: ${page.textContent}`);
  return cell.textContent ?? '';
}

describe('ticket', () => {
  it('shows the net area and perimeter of a plain pad', () => {
    show(rectangle(12 * FOOT, 10 * FOOT), 'ground');
    expect(figureOf('net-area')).toBe('120.0 ft²');
    expect(figureOf('perimeter')).toBe(`44'-0"`);
  });

  it('follows an edit at once, and the units without touching the figures', () => {
    const session = show(rectangle(4 * METRE, 3 * METRE), 'ground');
    act(() => session.commit({ do: 'set-units', units: 'metric' }));
    expect(figureOf('net-area')).toBe('12.00 m²');
    const by = { do: 'move-corner', feature: 'f1', corner: 'c3', to: { x: 8 * METRE, y: 0 } };
    act(() => session.commit(by as Parameters<Session['commit']>[0]));
    // A trapezoid of 8 m and 4 m, 3 m deep.
    expect(figureOf('net-area')).toBe('18.00 m²');
    act(() => session.undo());
    expect(figureOf('net-area')).toBe('12.00 m²');
  });

  it('keeps net, allowance, rounding and what to get apart', () => {
    show(demoJob(), 'mix');
    const roles = [...page.querySelectorAll('.slip .figures')].map((one) =>
      one.getAttribute('data-role'),
    );
    for (const role of ['net', 'allowance', 'rounding', 'order']) expect(roles).toContain(role);
    expect(roles.at(-1)).toBe('order');
    expect(roles.filter((role) => role === 'order')).toHaveLength(1);
  });

  it('opens every figure of every station to a working with its source', () => {
    for (const station of ['ground', 'forms', 'steel', 'joints', 'mix', 'order'] as const) {
      show(demoJob(), station);
      const rows = [...page.querySelectorAll<HTMLDetailsElement>('details.figure')];
      expect(rows.length).toBeGreaterThan(0);
      for (const row of rows) {
        act(() => {
          row.open = true;
          row.dispatchEvent(new Event('toggle'));
        });
        const working = row.querySelector('.working');
        expect(working?.querySelectorAll('dt').length, row.textContent ?? '').toBeGreaterThan(2);
      }
    }
  });

  it('names the figures that are withheld, with the reason, and shows no number', () => {
    const plain = rectangle(12 * FOOT, 10 * FOOT);
    const job: Job = { ...plain, practices: { ...plain.practices, thickness: 0 } };
    show(job, 'mix');
    expect(page.querySelector('.slip [data-figure="bags"]')).toBeNull();
    const withheld = [...page.querySelectorAll('.figure-withheld')].map((one) => one.textContent);
    expect(withheld.some((text) => text?.includes('Bags') && text.includes('—'))).toBe(true);
    expect(page.querySelector('.note[data-weight="stop"]')?.textContent).toBeTruthy();
  });

  it('marks figures plainly when they are not of the sketch on screen', () => {
    const session = show(rectangle(12 * FOOT, 10 * FOOT), 'ground', (job) => job.name === 'breaks');
    expect(page.querySelector('.standing')).toBeNull();
    act(() => session.commit({ do: 'set-text', name: 'breaks' }));
    expect(page.querySelector('.slip')?.getAttribute('data-standing')).toBe('failed');
    expect(page.querySelector('.standing')?.textContent).toContain('our mistake');
    expect(figureOf('net-area')).toBe('120.0 ft²');
    act(() => session.undo());
    expect(page.querySelector('.standing')).toBeNull();
  });

  it('points at the place of a note', () => {
    const session = show(demoJob(), 'forms');
    const button = [...page.querySelectorAll<HTMLButtonElement>('.note button')][0];
    expect(button).toBeDefined();
    act(() => button?.click());
    const { selection, view } = session.state.get();
    expect(selection ?? view).not.toBeNull();
  });
});
