// @vitest-environment jsdom
import { act } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { apply, type Command, type Refusal } from '../../src/job/commands.ts';
import type { Job } from '../../src/job/job.ts';
import { CornerTable } from '../../src/sketch/CornerTable.tsx';
import type { Selection } from '../../src/sketch/tools/tool.ts';
import { en } from '../../src/sketch/words/en.ts';
import { FOOT } from '../../src/units/grid.ts';
import { jobOf, outline, PAD, POST } from './jobs.ts';

Reflect.set(globalThis, 'IS_REACT_ACT_ENVIRONMENT', true);

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
      <CornerTable
        job={job}
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
  job = jobOf(PAD, POST);
  done = [];
  refused = [];
  selection = null;
  show();
});

afterEach(() => {
  act(() => root.unmount());
  page.remove();
});

function labelled(name: string): HTMLInputElement {
  const box = [...page.querySelectorAll<HTMLInputElement>('input, select')].find(
    (one) =>
      one.getAttribute('aria-label')?.startsWith(name) ||
      [...(one.labels ?? [])].some((label) => label.textContent?.startsWith(name)),
  );
  if (!box) throw new Error(`no box called ${name}`);
  return box;
}

function button(name: string): HTMLButtonElement {
  const found = [...page.querySelectorAll('button')].find(
    (one) => (one.getAttribute('aria-label') ?? one.textContent) === name,
  );
  if (!found) throw new Error(`no button called ${name}`);
  return found;
}

function set(box: HTMLInputElement | HTMLSelectElement, text: string) {
  const prototype = box instanceof HTMLSelectElement ? HTMLSelectElement : HTMLInputElement;
  Object.getOwnPropertyDescriptor(prototype.prototype, 'value')?.set?.call(box, text);
  box.dispatchEvent(new Event('input', { bubbles: true }));
  box.dispatchEvent(new Event('change', { bubbles: true }));
}

function type(name: string, text: string, key = 'Enter') {
  const box = labelled(name);
  act(() => set(box, text));
  act(() => {
    box.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
  });
}

function press(name: string) {
  act(() => button(name).click());
}

function cornersOf(id: string) {
  const shape = job.features.find((feature) => feature.id === id)?.shape;
  if (shape?.form !== 'outline') throw new Error(`${id} is an outline`);
  return shape.corners.map(({ x, y }) => [x / FOOT, y / FOOT]);
}

describe('as it is read', () => {
  test('each shape is a table with a caption, column and row headings', () => {
    const tables = [...page.querySelectorAll('table')];
    expect(tables.map((table) => table.caption?.textContent)).toEqual(['Pad', 'Block-out']);
    const rows = [...(tables[0]?.querySelectorAll('tbody th[scope=row]') ?? [])];
    expect(rows.map((row) => row.textContent)).toEqual(['A', 'B', 'C', 'D']);
    expect(tables[0]?.querySelectorAll('thead th[scope=col]')).toHaveLength(7);
  });

  test('every box and button has a name', () => {
    const unnamed = [...page.querySelectorAll('input, select, button')].filter(
      (one) =>
        !one.getAttribute('aria-label') &&
        !one.textContent?.trim() &&
        !(one instanceof HTMLInputElement && one.labels && one.labels.length > 0),
    );
    expect(unnamed).toEqual([]);
  });

  test('offsets are from the first pad’s first corner, or from one that is chosen', () => {
    expect(labelled('Corner C, right of datum').value).toBe('20\'-0"');
    act(() => set(labelled('Offsets are measured from'), 'pad-1'));
    expect(labelled('Corner C, right of datum').value).toBe('0"');
    expect(labelled('Corner A, right of datum').value).toBe('-20\'-0"');
  });
});

describe('typed over', () => {
  test('an offset moves the corner', () => {
    type('Corner C, right of datum', '21-6');
    expect(done).toEqual([
      {
        do: 'move-corner',
        feature: 'pad',
        corner: 'pad-2',
        to: { x: 21.5 * FOOT, y: 10 * FOOT },
      },
    ]);
    expect(labelled('Corner C, right of datum').value).toBe('21\'-6"');
  });

  test('an edge’s length slides the next side along', () => {
    type('Length from A to B', "18'");
    expect(cornersOf('pad')).toEqual([
      [0, 0],
      [18, 0],
      [18, 10],
      [0, 10],
    ]);
  });

  test('a direction and a rise', () => {
    type('Rise of the arc from B to C', '1-6');
    expect(done).toMatchObject([{ do: 'set-rise', corner: 'pad-1', rise: 1.5 * FOOT }]);
    type('Direction from A to B', '5');
    expect(done[1]).toMatchObject({ do: 'set-edge-direction', corner: 'pad-0', degrees: 5 });
  });

  test('what can’t be read stays, with its message tied to the box', () => {
    type('Length from A to B', 'twelve');
    const box = labelled('Length from A to B');
    expect(box.value).toBe('twelve');
    expect(box.getAttribute('aria-invalid')).toBe('true');
    const message = document.getElementById(box.getAttribute('aria-describedby') ?? '');
    expect(message?.textContent).toBe('problem: length-unreadable');
    expect(done).toEqual([]);
  });

  test('what can’t be done stays as well', () => {
    type('Length from A to B', '0');
    expect(labelled('Length from A to B').value).toBe('0');
    expect(page.textContent).toContain('problem: size-not-positive');
    expect(done).toEqual([]);
  });

  test('Escape puts back what stood there; leaving a box untouched does nothing', () => {
    const box = labelled('Length from A to B');
    act(() => set(box, '3'));
    act(() => {
      box.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
    });
    expect(box.value).toBe('20\'-0"');
    act(() => {
      box.focus();
      box.blur();
    });
    expect(done).toEqual([]);
  });

  test('a round block-out’s middle and diameter', () => {
    type('Diameter', '8');
    type('Middle right of datum', '6-0');
    const shape = job.features[1]?.shape;
    expect(shape).toMatchObject({
      form: 'round',
      center: { x: 6 * FOOT, y: 5 * FOOT },
      diameter: (8 / 12) * FOOT,
    });
  });
});

describe('by buttons', () => {
  test('a corner is added in the middle of an edge, and taken away', () => {
    press('Add a corner after A');
    expect(cornersOf('pad')[1]).toEqual([10, 0]);
    press('Take away corner B');
    expect(cornersOf('pad')).toHaveLength(4);
  });

  test('what can’t be done goes to the app', () => {
    job = jobOf(
      outline('tri', 'pad', [
        [0, 0],
        [4, 0],
        [0, 3],
      ]),
    );
    show();
    press('Take away corner B');
    expect(refused).toMatchObject([{ code: 'too-few-corners' }]);
  });

  test('a corner is shown on the sketch', () => {
    press('Show corner C on the sketch');
    expect(selection).toEqual({ feature: 'pad', corner: 'pad-2' });
    expect(button('Show corner C on the sketch').getAttribute('aria-pressed')).toBe('true');
  });

  test('a shape is moved, turned and mirrored', () => {
    type('To the right by', '2-0', 'Tab');
    press('Move');
    expect(cornersOf('pad')[0]).toEqual([2, 0]);
    type('Turn by degrees', '90', 'Tab');
    press('Turn');
    expect(done[1]).toMatchObject({ do: 'turn-feature', degrees: 90 });
    press('Mirror left and right');
    expect(done[2]).toMatchObject({ do: 'mirror-feature', across: 'vertical' });
  });

  test('a shape is taken away', () => {
    press('Take away Pad');
    expect(job.features.map(({ id }) => id)).toEqual(['post']);
  });
});

describe('a new shape by its sizes', () => {
  test('a rectangle at an offset', () => {
    act(() => set(labelled('What it is'), 'existing-slab'));
    type('Starts right of datum', '20-0', 'Tab');
    type('Size to the right', '5-0', 'Tab');
    type('Size up the page', '10-0', 'Tab');
    press('Add shape');
    expect(cornersOf('f100')).toEqual([
      [20, 0],
      [25, 0],
      [25, 10],
      [20, 10],
    ]);
    expect(selection).toEqual({ feature: 'f100' });
  });

  test('a round no-stake zone', () => {
    act(() => set(labelled('What it is'), 'no-stake-zone'));
    act(() => set(labelled('Its form'), 'round'));
    const form = page.querySelector('form[aria-label="Add a shape by its sizes"]');
    const box = [...(form?.querySelectorAll('input') ?? [])][2];
    if (!box) throw new Error('it has a box for the diameter');
    act(() => set(box, '3-0'));
    press('Add shape');
    expect(job.features.at(-1)).toMatchObject({
      kind: 'no-stake-zone',
      shape: { form: 'round', diameter: 3 * FOOT },
    });
  });

  test('a utility line by how far it runs, and then what it carries', () => {
    act(() => set(labelled('What it is'), 'utility-line'));
    type('Starts right of datum', '3-0', 'Tab');
    type('Runs up the page by', '-4-0', 'Tab');
    press('Add shape');
    expect(cornersOf('f100')).toEqual([
      [3, 0],
      [3, -4],
    ]);
    expect(job.features.at(-1)?.shape).toMatchObject({ closed: false });
    act(() => set(labelled(en.table.service), 'gas'));
    expect(job.features.at(-1)).toMatchObject({ kind: 'utility-line', service: 'gas' });
  });

  test('a utility line that runs nowhere is told beside the box', () => {
    act(() => set(labelled('What it is'), 'utility-line'));
    press('Add shape');
    expect(page.textContent).toContain(en.table.noRun);
    expect(done).toEqual([]);
  });

  test('a size of nothing is told beside the box', () => {
    type('Size to the right', '0', 'Tab');
    type('Size up the page', '4', 'Tab');
    press('Add shape');
    expect(page.textContent).toContain(en.table.positive);
    expect(done).toEqual([]);
  });
});

describe('an outline of a great many corners', () => {
  const many = Array.from({ length: 120 }, (_, i) => {
    const angle = (2 * Math.PI * i) / 120;
    return [60 * Math.cos(angle), 60 * Math.sin(angle)] as const;
  });
  const rows = () => page.querySelectorAll('tbody tr').length;
  const pick = () =>
    [...page.querySelectorAll('select')].find(({ labels }) =>
      labels?.[0]?.textContent?.startsWith(en.table.page(120)),
    );

  beforeEach(() => {
    job = jobOf(outline('ring', 'pad', many));
    show();
  });

  test('is shown so many at a time, and every one can be turned to', () => {
    expect(rows()).toBe(50);
    expect([...(pick()?.options ?? [])].map(({ text }) => text)).toEqual([
      'A to AX',
      'AY to CV',
      'CW to DP',
    ]);
    const select = pick();
    if (!select) throw new Error('there is a choice of pages');
    act(() => {
      select.value = '2';
      select.dispatchEvent(new Event('change', { bubbles: true }));
    });
    expect(rows()).toBe(20);
    expect(page.textContent).toContain('DP');
  });

  test('turns to the corner that is selected on the sketch', () => {
    selection = { feature: 'ring', corner: 'ring-70' };
    show();
    expect(pick()?.value).toBe('1');
    expect(page.querySelector('[aria-current="true"]')?.textContent).toContain('BS');
  });

  test('a short outline is shown whole', () => {
    job = jobOf(PAD);
    show();
    expect(rows()).toBe(4);
  });
});
