// @vitest-environment jsdom
import { act } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { BoardsOnHand } from '../../../src/app/boards/BoardsOnHand.tsx';
import { SessionContext } from '../../../src/app/SessionContext.ts';
import { createSession, type Session } from '../../../src/app/session.ts';
import { openState } from '../../../src/app/state.ts';
import { en } from '../../../src/app/words/en.ts';
import { createLiveTakeoffs } from '../../../src/app/worker/live.ts';
import type { Job } from '../../../src/job/job.ts';
import { blankJob } from '../../../src/job/start.ts';
import { en as sheet } from '../../../src/sheet/words/en.ts';
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

const says = en.boards;

function show(job: Job = blankJob()): Session {
  const session = createSession({
    first: openState('one', job, {}, 'light'),
    untried: false,
    searches: idleSearches(),
    takeoffs: createLiveTakeoffs({
      figure: () => ({ notes: [] }),
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
        <BoardsOnHand />
      </SessionContext>,
    ),
  );
  const section = page.querySelector('details');
  act(() => {
    section!.open = true;
    section!.dispatchEvent(new Event('toggle'));
  });
  return session;
}

/** The part of the truck or of the yard. */
function part(title: string): HTMLElement {
  const found = [...page.querySelectorAll<HTMLElement>('section')].find(
    (one) => one.querySelector('h3')?.textContent === title,
  );
  if (!found) throw new Error(`There is no part “${title}”.`);
  return found;
}
const truck = () => part(says.truck.title);
const yard = () => part(says.yard.title);
const form = (of: HTMLElement) => of.querySelector('form')!;

function field(of: Element, label: string): HTMLInputElement {
  const found = [...of.querySelectorAll('label')].find(({ textContent }) => textContent === label);
  const input = found?.htmlFor
    ? of.querySelector<HTMLInputElement>(`[id="${found.htmlFor}"]`)
    : found?.querySelector('input');
  if (!input) throw new Error(`There is no field “${label}”.`);
  return input;
}

function type(of: Element, label: string, text: string): void {
  const input = field(of, label);
  const set = Object.getOwnPropertyDescriptor(Object.getPrototypeOf(input), 'value')!.set!;
  act(() => {
    set.call(input, text);
    input.dispatchEvent(
      new Event(input.tagName === 'SELECT' ? 'change' : 'input', { bubbles: true }),
    );
  });
}

function enter(of: Element, label: string, text: string): void {
  type(of, label, text);
  act(() => {
    field(of, label).dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
  });
}

function send(of: HTMLElement): void {
  act(() => form(of).requestSubmit());
}

function press(of: Element, name: string): void {
  const button = [...of.querySelectorAll('button')].find(
    (one) => (one.ariaLabel ?? one.getAttribute('aria-label') ?? one.textContent) === name,
  );
  if (!button) throw new Error(`There is no button “${name}”.`);
  act(() => button.click());
}

const boards = (session: Session) => session.state.get().history.now.job.lumber;
const errors = (of: Element) =>
  [...of.querySelectorAll('.field-error')].map(({ textContent }) => textContent).filter(Boolean);

describe('boards on the truck', () => {
  test('are typed one row after another, the hand staying at the length', () => {
    const session = show();
    expect(truck().textContent).toContain(says.truck.none);
    type(form(truck()), says.fields.count, '2');
    type(form(truck()), says.fields.length, '12 ft');
    send(truck());
    expect(document.activeElement).toBe(field(form(truck()), says.fields.length));
    type(form(truck()), says.fields.length, `14'`);
    act(() => field(form(truck()), says.twisted).click());
    send(truck());
    expect(boards(session).truck).toEqual([
      { id: 't1', size: '2x4', length: 12 * FOOT, count: 2, twisted: false },
      { id: 't2', size: '2x4', length: 14 * FOOT, count: 1, twisted: true },
    ]);
    const legends = [...truck().querySelectorAll('legend')].map(({ textContent }) => textContent);
    expect(legends).toEqual([`2 of 2×4, 12'-0", straight`, `1 of 2×4, 14'-0", twisted`]);
  });

  test('boards alike go to the row that is there', () => {
    const session = show();
    for (const count of ['2', '3']) {
      type(form(truck()), says.fields.count, count);
      type(form(truck()), says.fields.length, '12 ft');
      send(truck());
    }
    expect(boards(session).truck.map(({ count }) => count)).toEqual([5]);
    expect(truck().textContent).toContain(says.truck.added(5, '2×4', `12'-0"`));
  });

  test('a row is changed in place, taken off, and brought back by undo', () => {
    const session = show();
    type(form(truck()), says.fields.length, '12 ft');
    send(truck());
    const row = () => truck().querySelector('fieldset')!;
    enter(row(), says.fields.count, '4');
    enter(row(), says.fields.length, '3.6 m');
    type(row(), says.fields.size, '2x6');
    act(() => field(row(), says.twisted).click());
    const changed = { id: 't1', size: '2x6', length: 3.6 * METRE, count: 4, twisted: true };
    expect(boards(session).truck).toEqual([changed]);
    press(row(), says.remove(row().querySelector('legend')!.textContent));
    expect(boards(session).truck).toEqual([]);
    expect(document.activeElement?.textContent).toBe(says.truck.title);
    act(() => session.undo());
    expect(boards(session).truck).toEqual([changed]);
  });

  test.each([
    ['', sheet.problems['length-empty']],
    ['0 ft', en.practices.range(`1'-0"`, `65'-7 3/8"`)],
    ['11 in', en.practices.range(`1'-0"`, `65'-7 3/8"`)],
    ['400 ft', en.practices.range(`1'-0"`, `65'-7 3/8"`)],
    // Of a board, twelve is feet; on the tape, twelve is inches. Neither is guessed.
    ['12', `“12” could be 12'-0" or 1'-0". Type the one you mean.`],
    ['8', `“8” could be 8'-0" or 8". Type the one you mean.`],
  ])('length “%s” is refused beside its field', (text, says_) => {
    const session = show();
    type(form(truck()), says.fields.length, text);
    send(truck());
    expect(boards(session).truck).toEqual([]);
    expect(errors(truck())).toEqual([says_]);
    expect(field(form(truck()), says.fields.length).getAttribute('aria-invalid')).toBe('true');
  });

  test('none, half a board, or a thousand and one are no count', () => {
    const session = show();
    type(form(truck()), says.fields.length, '12 ft');
    for (const [text, error] of [
      ['0', en.practices.range('1', '1000')],
      ['1.5', en.practices.whole],
      ['1001', en.practices.range('1', '1000')],
    ] as const) {
      type(form(truck()), says.fields.count, text);
      send(truck());
      expect(errors(truck())).toEqual([error]);
    }
    expect(boards(session).truck).toEqual([]);
  });

  test('in a job that another tab holds nothing is said to be added', () => {
    const session = show();
    act(() => session.lose('one'));
    type(form(truck()), says.fields.length, '12 ft');
    send(truck());
    expect(boards(session).truck).toEqual([]);
    expect(truck().textContent).not.toContain(says.truck.added(1, '2×4', `12'-0"`));
  });
});

describe('boards at the yard', () => {
  test('those of the form board’s size are shown, shortest first; the others are folded', () => {
    show();
    const folded = yard().querySelector('details')!;
    const legend = (of: Element) => of.querySelector('legend')?.textContent;
    const shown = [...yard().querySelectorAll('fieldset')].filter((row) => !folded.contains(row));
    expect(shown.map(legend)).toEqual([8, 10, 12, 16].map((feet) => `2×4, ${feet}'-0"`));
    expect(folded.querySelector('summary')?.textContent).toBe(says.yard.others(24));
  });

  test('a price is typed as money, and emptied when it is not known', () => {
    const session = show();
    const price = () => boards(session).yard.find(({ id }) => id === 'y2x4-8')?.price;
    const row = () => yard().querySelector('fieldset')!;
    enter(row(), says.fields.price, '4.98');
    expect(price()).toBe(498);
    expect(field(row(), says.fields.price).value).toBe('$4.98');
    enter(row(), says.fields.price, 'five');
    expect(errors(yard())).toEqual(['“five” isn’t a price I can read. Write it like 12.50.']);
    expect(price()).toBe(498);
    enter(row(), says.fields.price, '');
    expect(price()).toBeUndefined();
  });

  test('a new length goes on the list; a length that is listed gets the new price', () => {
    const session = show();
    type(form(yard()), says.fields.length, '14 ft');
    type(form(yard()), says.fields.price, '9,25');
    send(yard());
    type(form(yard()), says.fields.length, '8 ft');
    type(form(yard()), says.fields.price, '$5');
    send(yard());
    const of2x4 = boards(session).yard.filter(({ size }) => size === '2x4');
    expect(of2x4.map(({ length, price }) => [length / FOOT, price])).toEqual([
      [8, 500],
      [10, undefined],
      [12, undefined],
      [16, undefined],
      [14, 925],
    ]);
  });

  test('with nothing of that size, it says so', () => {
    show({ ...blankJob(), lumber: { truck: [], yard: [] } });
    expect(yard().textContent).toContain(says.yard.none('2×4'));
    expect(yard().querySelector('details')).toBeNull();
  });
});
