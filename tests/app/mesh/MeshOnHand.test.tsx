// @vitest-environment jsdom
import { act } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { MeshOnHand } from '../../../src/app/mesh/MeshOnHand.tsx';
import { SessionContext } from '../../../src/app/SessionContext.ts';
import type { Session } from '../../../src/app/session.ts';
import { en } from '../../../src/app/words/en.ts';
import { blankJob } from '../../../src/job/start.ts';
import { FOOT } from '../../../src/units/grid.ts';
import { idleSession } from '../idleSession.ts';

let root: Root;
let page: HTMLElement;
const says = en.mesh;

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

function show(): Session {
  const session = idleSession(blankJob());
  act(() =>
    root.render(
      <SessionContext value={session}>
        <MeshOnHand />
      </SessionContext>,
    ),
  );
  const section = page.querySelector('details')!;
  act(() => {
    section.open = true;
    section.dispatchEvent(new Event('toggle'));
  });
  return session;
}

function press(name: string): void {
  const button = [...page.querySelectorAll('button')].find(
    (one) => (one.getAttribute('aria-label') ?? one.textContent) === name,
  );
  act(() => button!.click());
}

function enter(row: Element, label: string, text: string): void {
  const found = [...row.querySelectorAll('label')].find((one) => one.textContent === label)!;
  const input = row.querySelector<HTMLInputElement>(`[id="${found.htmlFor}"]`)!;
  const set = Object.getOwnPropertyDescriptor(Object.getPrototypeOf(input), 'value')!.set!;
  act(() => {
    set.call(input, text);
    input.dispatchEvent(new Event('input', { bubbles: true }));
  });
  act(() => {
    input.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
  });
}

const stockOf = (session: Session) => session.state.get().history.now.job.meshStock;

test('what is left of a roll is put on the truck, typed, and taken off again', () => {
  const session = show();
  press(says.truck.add);
  const row = page.querySelector('fieldset')!;
  enter(row, says.fields.length, "23' 6");
  enter(row, says.fields.width, '60');
  expect(stockOf(session).truck).toEqual([
    { id: 'm1', form: 'roll', length: 23.5 * FOOT, width: 5 * FOOT, count: 1 },
  ]);
  press(says.remove(says.row('Roll', '23\'-6"', '5\'-0"')));
  expect(stockOf(session).truck).toEqual([]);
});

test('a price at the yard goes in, and out when it is emptied; a size out of bounds stays out', () => {
  const session = show();
  const [row] = page.querySelectorAll('fieldset');
  enter(row!, says.fields.price, '14.50');
  expect(stockOf(session).yard[0]).toMatchObject({ price: 1450 });
  enter(row!, says.fields.price, '');
  expect(stockOf(session).yard[0]).not.toHaveProperty('price');
  enter(row!, says.fields.width, '1');
  expect(stockOf(session).yard[0]).toMatchObject({ width: 5 * FOOT });
  expect(page.textContent).toContain('Must be from');
});
