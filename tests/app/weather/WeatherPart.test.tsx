// @vitest-environment jsdom
import { act } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { SessionContext } from '../../../src/app/SessionContext.ts';
import type { Session } from '../../../src/app/session.ts';
import { WeatherPart } from '../../../src/app/weather/WeatherPart.tsx';
import { en } from '../../../src/app/words/en.ts';
import { blankJob } from '../../../src/job/start.ts';
import { idleSession } from '../idleSession.ts';

let root: Root;
let page: HTMLElement;
const says = en.weather;

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

function show(units: 'feet-inches' | 'metric' = 'feet-inches'): Session {
  const session = idleSession({ ...blankJob(), units });
  act(() =>
    root.render(
      <SessionContext value={session}>
        <WeatherPart />
      </SessionContext>,
    ),
  );
  return session;
}

function field(label: string): HTMLInputElement {
  const found = [...page.querySelectorAll('label')].find((one) => one.textContent === label)!;
  return page.querySelector<HTMLInputElement>(`[id="${found.htmlFor}"]`)!;
}

function enter(label: string, text: string): void {
  const input = field(label);
  const set = Object.getOwnPropertyDescriptor(Object.getPrototypeOf(input), 'value')!.set!;
  act(() => {
    set.call(input, text);
    input.dispatchEvent(new Event('input', { bubbles: true }));
  });
  act(() => {
    input.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
  });
}

const weatherOf = (session: Session) => session.state.get().history.now.job.weather;

test('what is typed is kept in the job, what is emptied is taken out again', () => {
  const session = show();
  enter(says.fields.air, '68');
  enter(says.fields.wind, '10');
  expect(weatherOf(session)).toEqual({
    air: expect.closeTo(20),
    wind: expect.closeTo(16.09344),
  });
  enter(says.fields.air, '');
  enter(says.fields.wind, '');
  expect(weatherOf(session)).toBeUndefined();
});

test('a humidity of 130 % is refused with its bounds, and nothing is kept', () => {
  const session = show();
  enter(says.fields.humidity, '130%');
  expect(page.textContent).toContain(en.practices.range('0', '100'));
  expect(field(says.fields.humidity).value).toBe('130%');
  expect(weatherOf(session)).toBeUndefined();
  enter(says.fields.humidity, '40');
  expect(weatherOf(session)).toEqual({ humidity: 0.4 });
});

test('words and nonsense are said to be none', () => {
  const session = show();
  enter(says.fields.concrete, 'warm');
  expect(page.querySelector('.field-error')?.textContent).not.toBe('');
  expect(weatherOf(session)).toBeUndefined();
});

test('in metric degrees are Celsius and wind is in km/h', () => {
  const session = show('metric');
  enter(says.fields.air, '-5');
  enter(says.fields.wind, '20');
  expect(weatherOf(session)).toEqual({ air: -5, wind: 20 });
});
