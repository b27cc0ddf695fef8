// @vitest-environment jsdom
import { act } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { StartForm } from '../../../src/app/jobs/StartForm.tsx';
import { SessionContext } from '../../../src/app/SessionContext.ts';
import { en } from '../../../src/app/words/en.ts';
import { demoJob } from '../../../src/job/demo.ts';
import type { Job } from '../../../src/job/job.ts';
import { blankJob } from '../../../src/job/start.ts';
import { INCH } from '../../../src/units/grid.ts';
import { idleSession } from '../idleSession.ts';

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

const says = en.jobs;
const own: Job = {
  ...blankJob(),
  name: 'Back walk',
  practices: { ...blankJob().practices, thickness: 5 * INCH },
};

function show(open: Job): Job[] {
  const started: Job[] = [];
  act(() =>
    root.render(
      <SessionContext value={idleSession(open)}>
        <StartForm open={open} onStart={(job) => started.push(job)} />
      </SessionContext>,
    ),
  );
  return started;
}

function startWith(): HTMLSelectElement | null {
  const label = [...page.querySelectorAll('label')].find(
    ({ textContent }) => textContent === says.startWith,
  );
  return label ? page.querySelector<HTMLSelectElement>(`[id="${label.htmlFor}"]`) : null;
}

function choose(value: string): void {
  const select = startWith()!;
  const set = Object.getOwnPropertyDescriptor(HTMLSelectElement.prototype, 'value')!.set!;
  act(() => {
    set.call(select, value);
    select.dispatchEvent(new Event('change', { bubbles: true }));
  });
}

const start = () => act(() => page.querySelector('form')!.requestSubmit());

test('says that a new job takes the practices and boards of the open one, and does', () => {
  const started = show(own);
  expect(startWith()?.selectedOptions[0]?.textContent).toBe(says.withOpen('Back walk'));
  expect(page.textContent).not.toContain(says.madeUp);
  start();
  expect(started[0]?.practices.thickness).toBe(5 * INCH);
});

test('starts from the plain defaults when that is chosen', () => {
  const started = show(own);
  choose('defaults');
  start();
  expect(started[0]?.practices).toEqual(blankJob().practices);
});

test('takes nothing that the sample made up unless asked', () => {
  const started = show(demoJob());
  expect(startWith()?.value).toBe('defaults');
  expect(page.textContent).toContain(says.madeUp);
  start();
  choose('open-job');
  start();
  expect(started.map(({ lumber }) => lumber.truck.length)).toEqual([0, 4]);
});

test('the sample job itself is always the same: nothing to choose', () => {
  const started = show(own);
  const sample = [...page.querySelectorAll('label')].find(
    ({ textContent }) => textContent === says.sample,
  );
  act(() => sample!.querySelector('input')!.click());
  expect(startWith()).toBeNull();
  start();
  expect(started).toEqual([demoJob()]);
});
