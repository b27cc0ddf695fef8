import { describe, expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import type { Job } from '../../src/job/job.ts';
import { blankJob } from '../../src/job/start.ts';
import { BOARD_FIGURE_KEYS } from '../../src/takeoff/boards/keys.ts';
import type { Figure, Quantity } from '../../src/takeoff/figure.ts';
import { FIGURE_KEYS, INPUT_KEYS } from '../../src/takeoff/keys.ts';
import { ORDER_FIGURE_KEYS } from '../../src/takeoff/order/keys.ts';
import { STAKE_FIGURE_KEYS } from '../../src/takeoff/stakes/keys.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { tickets } from '../../src/takeoff/tickets.ts';
import { INCH } from '../../src/units/grid.ts';

function figuresOf(job: Job): readonly Figure[] {
  return tickets(job, takeoff(job)).flatMap(({ figures }) => figures);
}

/** The sample job with a form that gives another depth and a thickened edge, so that every figure is there. */
function fullJob(): Job {
  const job = demoJob();
  const thickenedEdge = { ...job.practices.thickenedEdge, use: true };
  return { ...job, practices: { ...job.practices, thickness: 5 * INCH, thickenedEdge } };
}

function amount(quantity: Quantity): number {
  switch (quantity.of) {
    case 'length':
      return quantity.grid;
    case 'area':
      return quantity.grid2;
    case 'volume':
      return quantity.grid3;
    case 'weight':
      return quantity.kg;
    case 'count':
      return quantity.count;
    case 'time':
      return quantity.minutes;
    case 'area-rate':
      return quantity.grid2PerHour;
    default:
      throw new Error(quantity.of);
  }
}

describe('tickets', () => {
  test('are in the order of the day, one a station', () => {
    const stations = tickets(demoJob(), takeoff(demoJob())).map(({ station }) => station);
    expect(stations).toEqual(['ground', 'forms', 'steel', 'joints', 'mix', 'order']);
  });

  test('hold every figure there is, once', () => {
    const apart: readonly string[] = [
      ...BOARD_FIGURE_KEYS,
      ...STAKE_FIGURE_KEYS,
      ...ORDER_FIGURE_KEYS,
    ];
    const all = figuresOf(fullJob()).map(({ key }) => key);
    expect(new Set(all).size).toBe(all.length);
    // Which of the boards', the stakes' and the order's there are hangs on the job: see their own tests.
    const keys = all.filter((key) => !apart.includes(key));
    // The same goes for mesh off the roll or off the truck, for bars, dowels, sealant, ground readings and half bags: see their own tests.
    const others =
      /^(mesh-(rolls|unrolled|truck(-rolls)?|money)|bars?-(lines|length|to-buy|money|proof|cuts|least|weight|ties)|dowels?(-hole)?|joint-stop-length|ground-(depth|spread)|allowance-(share|extra|floor)|open-rounding|sealant(-cartridges)?|backer-length)$/;
    expect([...keys].sort()).toEqual(FIGURE_KEYS.filter((key) => !others.test(key)).sort());
  });

  test('without a pour hold none', () => {
    expect(figuresOf(blankJob())).toEqual([]);
  });

  test('net, allowance, rounding and order are told apart', () => {
    const roles = Object.fromEntries(figuresOf(fullJob()).map(({ key, role }) => [key, role]));
    expect(roles).toMatchObject({
      'net-volume': 'net',
      allowance: 'allowance',
      'bag-rounding': 'rounding',
      bags: 'order',
      needed: undefined,
    });
  });

  test('rows have as many cells as columns', () => {
    for (const { tables } of tickets(fullJob(), takeoff(fullJob()))) {
      for (const { columns, rows } of tables) {
        for (const row of rows) expect(row).toHaveLength(columns.length);
      }
    }
  });
});

describe('workings', () => {
  const figures = figuresOf(fullJob());
  const byKey = new Map(figures.map((one) => [one.key as string, one]));

  test.each(figures.map((one) => [one.key, one] as const))(
    '%s is the working of its figure',
    (key, one) => {
      const working = one.working();
      expect(working.of).toBe(key);
      expect(working.source.length).toBeGreaterThan(0);
      expect(working.formula).not.toBe('');
      for (const input of working.inputs) {
        const figure = input.from === 'figure' ? byKey.get(input.key) : undefined;
        // An input that is a figure has that figure's value.
        if (figure) expect(amount(input.value)).toBeCloseTo(amount(figure.value), -8);
      }
      for (const { template = '', values = [] } of working.steps ?? []) {
        values.forEach((_, i) => {
          expect(template).toContain(`{${i}}`);
        });
      }
    },
  );

  test('take every input that there are words for', () => {
    const taken = new Set(figures.flatMap((one) => one.working().inputs.map(({ key }) => key)));
    // An allowance by one share is figured in tests/takeoff/mix.
    expect(INPUT_KEYS.filter((key) => !taken.has(key))).toEqual(['waste-share']);
  });

  test.each(['edge-free', 'form-length', 'strip-length', 'net-area'])(
    'the steps of %s add up to it exactly',
    (key) => {
      const figure = byKey.get(key)!;
      const sum = (figure.working().steps ?? []).reduce((all, { value }) => all + amount(value), 0);
      expect(sum).toBe(amount(figure.value));
    },
  );

  test('stakes: the places of all runs, less those where something else holds the form', () => {
    const places = byKey
      .get('stakes')!
      .working()
      .steps!.reduce((all, { value }) => all + amount(value), 0);
    // The sample's skirting leaves no room for stakes, and no kicker may be driven by the feed either.
    expect(amount(byKey.get('spreaders')!.value)).toBe(4);
    expect(amount(byKey.get('weights')!.value)).toBe(1);
    expect(places - 4 - 1).toBe(amount(byKey.get('stakes')!.value));
  });

  test('bags: the lines add up', () => {
    const value = (key: string) => amount(byKey.get(key)!.value);
    expect(value('needed') + value('bag-rounding') + value('batch-rounding')).toBe(value('made'));
    expect(value('net-volume') + value('allowance')).toBeCloseTo(value('needed'), -8);
    expect(value('allowance-spread') + value('allowance-spillage')).toBe(value('allowance'));
  });
});
