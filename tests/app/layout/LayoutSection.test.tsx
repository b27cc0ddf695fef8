// @vitest-environment jsdom
import { act } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { LayoutSection } from '../../../src/app/layout/LayoutSection.tsx';
import { SessionContext } from '../../../src/app/SessionContext.ts';
import { createSession, type Session } from '../../../src/app/session.ts';
import { openState } from '../../../src/app/state.ts';
import { en } from '../../../src/app/words/en.ts';
import { createLiveTakeoffs } from '../../../src/app/worker/live.ts';
import { demoJob } from '../../../src/job/demo.ts';
import type { Job } from '../../../src/job/job.ts';
import { en as sheet } from '../../../src/sheet/words/en.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { ELL, padJob, TEN_BY_TWELVE } from '../../takeoff/layout/forms.ts';
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

function show(job: Job): Session {
  const session = createSession({
    first: openState('one', job, {}, 'light'),
    untried: false,
    searches: idleSearches(),
    takeoffs: createLiveTakeoffs({
      figure: takeoff,
      startWorker: () => ({ ask: () => {}, terminate: () => {} }),
      clock: () => 0,
      slowAfter: 8,
      manyCorners: 1000,
      patience: 1000,
    }),
    saver: { save: () => {}, soon: () => {} },
    keepTheme: () => {},
  });
  act(() =>
    root.render(
      <SessionContext value={session}>
        <LayoutSection />
      </SessionContext>,
    ),
  );
  return session;
}

function field(label: string): HTMLInputElement | HTMLSelectElement {
  const found = [...page.querySelectorAll('label')].find(
    ({ textContent }) => textContent === label,
  );
  return page.querySelector(`[id="${found?.htmlFor}"]`)!;
}

function type(label: string, text: string): void {
  const input = field(label);
  act(() => {
    const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!;
    set.call(input, text);
    input.dispatchEvent(new Event('input', { bubbles: true }));
  });
  act(() => {
    input.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
  });
}

function choose(label: string, value: string): void {
  const select = field(label);
  act(() => {
    const set = Object.getOwnPropertyDescriptor(HTMLSelectElement.prototype, 'value')!.set!;
    set.call(select, value);
    select.dispatchEvent(new Event('change', { bubbles: true }));
  });
}

const says = en.layout;

describe('squaring and layout under the forms', () => {
  test('works nothing out while it is closed', () => {
    show(padJob(TEN_BY_TWELVE));
    expect(page.querySelector('table')).toBeNull();
  });

  test('open: diagonals, 3-4-5, offsets, ties, and a place to type', () => {
    const session = show(padJob(TEN_BY_TWELVE));
    act(() => session.openSettingOut(true));
    const captions = [...page.querySelectorAll('caption')].map(({ textContent }) => textContent);
    expect(captions).toEqual([
      sheet.tables['layout-ties'],
      sheet.tables['layout-squares'],
      sheet.tables['layout-offsets'],
      sheet.tables['layout-tape-ties'],
    ]);
    expect(page.textContent).toContain(`15'-7 7/16"`);
    expect(page.textContent).toContain(sheet.notes['layout-not-proof']);
  });

  test('what the tape said: half an inch apart moves the far corners 0.39 in, 3/8 on the tape', () => {
    const session = show(padJob(TEN_BY_TWELVE));
    act(() => session.openSettingOut(true));
    type(says.diagonal('A', 'C'), `15'-7 11/16"`);
    expect(page.textContent).not.toContain(sheet.tables['layout-moves']);
    type(says.diagonal('B', 'D'), `15'-7 3/16"`);
    expect(page.textContent).toContain(sheet.tables['layout-moves']);
    const rows = [...page.querySelectorAll('table')].at(-1)!.querySelectorAll('tbody tr');
    expect([...rows].map(({ lastChild }) => lastChild?.textContent)).toEqual([
      '0"',
      '0"',
      '3/8"',
      '3/8"',
    ]);
    // Nothing of it is in the job, so nothing to undo.
    expect(session.state.get().history.past).toEqual([]);
  });

  test('what the tape said of an L: what is still to be taped, then the moves', () => {
    const session = show(padJob(ELL));
    act(() => session.openSettingOut(true));
    type(says.diagonal('A', 'D'), `10'-9 13/16"`);
    expect(page.textContent).toContain('Tape more ties across');
    type(says.diagonal('B', 'D'), `7'-9 3/4"`);
    type(says.diagonal('A', 'E'), `14'-2 9/16"`);
    // Drawn 7'-0 7/8": half an inch long swings E on its tape from A, so E–F is no more as drawn.
    type(says.diagonal('C', 'E'), `7'-1 3/8"`);
    expect(page.textContent).toContain(sheet.tables['layout-moves']);
    expect(page.textContent).toContain(sheet.notes['tape-fit-unchecked']);
    expect(session.state.get().history.past).toEqual([]);
  });

  test('what can’t be read, or is no length, stays in the field with a word on how to mend it', () => {
    const session = show(padJob(TEN_BY_TWELVE));
    act(() => session.openSettingOut(true));
    type(says.diagonal('A', 'C'), 'about 15');
    expect(field(says.diagonal('A', 'C')).getAttribute('aria-invalid')).toBe('true');
    expect(page.textContent).toContain('about 15');
    type(says.diagonal('A', 'C'), '-3');
    expect(page.textContent).toContain(sheet.problems['size-not-positive']);
    expect(session.state.get().settingOut.choice.tape).toBeUndefined();
  });

  test('a line and marks are chosen; one that is gone says so and withholds its table', () => {
    const session = show(demoJob());
    act(() => session.openSettingOut(true));
    choose(says.measureFrom, 'f1 c2');
    expect(session.state.get().settingOut.choice.baseline).toEqual({ feature: 'f1', corner: 'c2' });
    choose(says.firstMark, 'f1 c3');
    expect(session.state.get().settingOut.choice.marks?.[0]).toEqual({
      feature: 'f1',
      corner: 'c3',
    });
    act(() => session.commit({ do: 'remove-feature', feature: 'f1' }));
    expect(page.textContent).toContain(sheet.notes['layout-baseline-gone']);
    expect(page.textContent).toContain(sheet.notes['layout-mark-gone']);
    expect(page.textContent).toContain(says.gone);
    expect(page.textContent).not.toContain(sheet.tables['layout-offsets']);
    choose(says.measureFrom, '');
    expect(page.textContent).toContain(sheet.tables['layout-offsets']);
  });

  test('another job starts afresh', () => {
    const session = show(padJob(TEN_BY_TWELVE));
    act(() => session.setOut(() => ({ pad: 'pad' })));
    act(() => session.open('two', demoJob(), {}, { untried: false, hold: 'mine' }));
    expect(session.state.get().settingOut).toEqual({ open: false, choice: {} });
  });
});
