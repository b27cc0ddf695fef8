// @vitest-environment jsdom
import { act } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { apply, type Command, type Refusal } from '../../src/job/commands.ts';
import type { Job } from '../../src/job/job.ts';
import { StakeTable } from '../../src/sketch/table/StakeTable.tsx';
import type { Selection } from '../../src/sketch/tools/tool.ts';
import { en } from '../../src/sketch/words/en.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FOOT } from '../../src/units/grid.ts';
import { formsJob, handStake, withHandStakes } from './forms.ts';
import { outline, PAD } from './jobs.ts';

Reflect.set(globalThis, 'IS_REACT_ACT_ENVIRONMENT', true);

const says = en.stakes.table;
let root: Root;
let page: HTMLElement;
let job: Job;
let done: Command[];
let refused: Refusal[];
let selection: Selection | null;

/** The table on a page that keeps the job, as the app does. */
function show() {
  act(() =>
    root.render(
      <StakeTable
        job={job}
        takeoff={takeoff(job)}
        selection={selection}
        words={en}
        sayProblem={({ code }) => `problem: ${code}`}
        onSelect={(next) => {
          selection = next;
          show();
        }}
        onCommit={(command) => {
          const outcome = apply(job, command);
          if (!outcome.ok) throw new Error(`the table let through: ${outcome.problems.code}`);
          job = outcome.value;
          done.push(command);
          show();
        }}
        onRefusal={(refusal) => refused.push(refusal)}
      />,
    ),
  );
}

beforeEach(() => {
  page = document.createElement('main');
  document.body.append(page);
  root = createRoot(page);
  job = formsJob(PAD);
  done = [];
  refused = [];
  selection = null;
  show();
});

afterEach(() => {
  act(() => root.unmount());
  page.remove();
});

function box(name: string): HTMLInputElement | HTMLSelectElement {
  const found = [...page.querySelectorAll<HTMLInputElement>('input, select')].find(
    (one) =>
      one.getAttribute('aria-label') === name ||
      [...(one.labels ?? [])].some((label) => label.textContent === name),
  );
  if (!found) throw new Error(`no box called ${name}`);
  return found;
}

function set(name: string, text: string) {
  const one = box(name);
  const kind = one instanceof HTMLSelectElement ? HTMLSelectElement : HTMLInputElement;
  act(() => {
    Object.getOwnPropertyDescriptor(kind.prototype, 'value')?.set?.call(one, text);
    one.dispatchEvent(new Event('input', { bubbles: true }));
    one.dispatchEvent(new Event('change', { bubbles: true }));
  });
  return one;
}

function type(name: string, text: string) {
  const one = set(name, text);
  act(() => {
    one.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
  });
}

function press(name: string) {
  const found = [...page.querySelectorAll('button')].find(
    (one) => (one.getAttribute('aria-label') ?? one.textContent) === name,
  );
  if (!found) throw new Error(`no button called ${name}`);
  act(() => found.click());
}

function places() {
  return [...page.querySelectorAll<HTMLInputElement>('tbody input')].map(({ value }) => value);
}

describe('the stakes of one run', () => {
  test('each has its distance from the corner where the run starts', () => {
    expect(page.querySelector('caption')?.textContent).toBe('R1, 20\'-0"');
    expect([...page.querySelectorAll('thead th')][1]?.textContent).toBe('From corner A');
    expect(places()).toEqual(['1', '4', '7', '10', '13', '16', '19'].map((feet) => `${feet}'-0"`));
  });

  test('another run is shown when it is chosen, or when a stake of it is picked', () => {
    set(says.run, '1');
    expect(page.querySelector('caption')?.textContent).toBe('R2, 10\'-0"');
    selection = { stake: { run: 'R3', along: 4 * FOOT } };
    show();
    expect(page.querySelector('caption')?.textContent).toMatch(/^R3/);
    expect(page.querySelector('[aria-current]')?.textContent).toContain('2');
    set(says.run, '0');
    expect(page.querySelector('caption')?.textContent).toMatch(/^R1/);
  });

  test('a long one is shown in parts', () => {
    const far = 160;
    job = formsJob(
      outline('far', 'pad', [
        [0, 0],
        [far, 0],
        [far, 9],
        [0, 9],
      ]),
    );
    show();
    const options = [...box(says.run).querySelectorAll('option')].map((one) => one.textContent);
    expect(options.slice(0, 2)).toEqual(['R1, stakes 1 to 50', 'R1, stakes 51 to 54']);
    set(says.run, '1');
    expect(places()).toHaveLength(4);
    expect(page.querySelector('tbody th')?.textContent).toBe('51');
  });

  test('without forms it says so', () => {
    job = formsJob();
    show();
    expect(page.textContent).toContain(says.none);
  });
});

describe('by keyboard', () => {
  test('a stake is pinned where it is, or at a typed distance', () => {
    press(says.pin(2));
    type(says.cell(3, 'corner A'), '8-6');
    expect(done).toEqual([
      { do: 'pin-stake', at: { x: 4 * FOOT, y: 0 } },
      { do: 'pin-stake', at: { x: 8.5 * FOOT, y: 0 } },
    ]);
  });

  test('a distance that leaves it no room on the board is refused beside it', () => {
    type(says.cell(1, 'corner A'), '21-0');
    type(says.addAt('corner A'), '0"');
    expect(done).toEqual([]);
    const problems = [...page.querySelectorAll('.typed-problem')].map((one) => one.textContent);
    expect(problems[0]).toBe(en.stakes.tooNearEnd('3/4"', '19\'-11 1/4"'));
  });

  test('one is taken away, and brought back; the picked one stays picked', () => {
    press(says.select(2));
    expect(selection).toEqual({ stake: { run: 'R1', along: 4 * FOOT } });
    press(says.remove(2));
    expect(done).toEqual([{ do: 'remove-stake', at: { x: 4 * FOOT, y: 0 } }]);
    expect(selection).toEqual({ stake: { hand: 's100' } });
    const row = page.querySelector('[aria-current]');
    expect(row?.textContent).toContain(en.stakes.is.removed);
    const free = row?.querySelectorAll('button')[2];
    act(() => free?.click());
    expect(job.handStakes).toEqual([]);
  });

  test('one more is pinned at a typed distance', () => {
    set(says.addAt('corner A'), '5-6');
    press(says.add);
    expect(done).toEqual([{ do: 'pin-stake', at: { x: 5.5 * FOOT, y: 0 } }]);
  });

  test('one that is on no form any more is named, and can be freed', () => {
    job = withHandStakes(job, handStake('s1', 'pinned', 10, 5));
    show();
    expect(page.textContent).toContain(en.stakes.off.pinned);
    press(en.stakes.free);
    expect(done).toEqual([{ do: 'free-stake', id: 's1' }]);
  });

  test('all are freed at once', () => {
    job = withHandStakes(job, handStake('s1', 'pinned', 8, 0), handStake('s2', 'removed', 12, 0));
    show();
    press(says.freeAll(2));
    expect(done).toEqual([{ do: 'free-stakes' }]);
    expect(page.textContent).not.toContain('Free all');
  });
});
