import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/job/job.ts';
import type { OrderPractices } from '../../../src/job/order.ts';
import { bidOf, orderOf } from '../../../src/job/orderDefaults.ts';
import { priceOf, withPrices } from '../../../src/job/prices.ts';
import { baseOf, quarters, retarderOf } from '../../../src/takeoff/order/groundLines.ts';
import { ORDER_FIGURE_KEYS } from '../../../src/takeoff/order/keys.ts';
import { priceItems } from '../../../src/takeoff/price/items.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { ticketOf } from '../../../src/takeoff/tickets.ts';
import { CUBIC_METRE, CUBIC_YARD, FOOT, POUND_KG, SQUARE_FOOT } from '../../../src/units/grid.ts';
import { chance } from '../../random/chance.ts';
import { slabJob } from '../../random/slabJobs.ts';
import { fullJob, ordering, slab } from './orderJobs.ts';

const orderFor = (job: Job) => takeoff(job).order!;
const codes = (job: Job) =>
  takeoff(job).notes.flatMap(({ station, code }) => (station === 'order' ? [code] : []));

describe('the list', () => {
  test('has everything that the tickets say is to get', () => {
    const job = fullJob();
    const all = takeoff(job);
    const kinds = new Set(all.order!.lines.map(({ is }) => is));
    const ordered = (['forms', 'steel', 'joints', 'mix'] as const).flatMap((station) =>
      ticketOf(job, all, station).figures.filter(({ role }) => role === 'order'),
    );
    const LINES: Readonly<Record<string, string>> = {
      bags: 'order-bag',
      'boards-bought': 'order-board',
      stakes: 'order-stake',
      kickers: 'order-kicker',
      spreaders: 'order-spreader',
      weights: 'order-weight',
      'stakes-inside': 'order-stake',
      cleats: 'order-cleat',
      'board-cleats': 'order-cleat',
      'fastening-boxes': 'order-nails',
      'mesh-sheets': 'order-mesh-sheet',
      'strip-pieces': 'order-strip',
    };
    // These say the same again in money, in weight, or piece by piece; or it is on the truck already.
    const again = /weight|money|length-bought|^nails$|from-truck|^batch/;
    for (const { key, value } of ordered) {
      if (again.test(key) || (value.of === 'count' && value.count === 0)) continue;
      expect(LINES, key).toHaveProperty(key);
      expect(kinds, key).toContain(LINES[key]);
    }
  });

  test('ten by twelve feet, four inches: bags, stakes and mesh as their tickets count them', () => {
    const all = takeoff(slab());
    const count = (is: string) => all.order!.lines.find((one) => one.is === is)?.count;
    expect(count('order-bag')).toBe(all.mix!.totalBags);
    expect(count('order-stake')).toBe(all.stakes!.stakes.length);
    expect(count('order-nails')).toBe(all.stakes!.fastening.boxes);
    // 120 ft² at 200 ft² to the gallon can.
    expect(count('order-cure')).toBe(1);
  });

  test('a line without a price is in no sum, and is told', () => {
    const job = withPrices(slab(), [{ item: 'stake', price: 129 }]);
    const { lines, money, unpriced } = orderFor(job);
    const stakes = lines.find(({ item }) => item === 'stake')!;
    expect(stakes.sum).toBe(stakes.count * 129);
    expect(money).toBe(stakes.sum);
    expect(unpriced).toBe(lines.length - 1);
    expect(codes(job)).toContain('order-unpriced');
    expect(codes(job)).toContain('bid-needs-prices');
    expect(orderFor(job).bid).toBeUndefined();
  });

  test('nought is a price', () => {
    const job = withPrices(slab(), [{ item: 'stake', price: 0 }]);
    expect(orderFor(job).money).toBe(0);
  });

  test('a price of boards, mesh or bars is kept where they are listed', () => {
    const job = slab();
    const board = orderFor(job).lines.find(({ is }) => is === 'order-board')!;
    const priced = withPrices(job, [{ item: board.item, price: 875 }]);
    expect(priceOf(priced, board.item)).toBe(875);
    expect(priced.practices).toBe(job.practices);
    expect(priced.lumber.yard.some(({ price }) => price === 875)).toBe(true);
    expect(withPrices(priced, [{ item: board.item, price: null }])).toEqual(job);
  });

  test('a sum larger than any that is written is none, and stops', () => {
    const job = withPrices(slab(), [{ item: 'stake', price: 10_000_000_000 }]);
    expect(orderFor(job).money).toBeUndefined();
    expect(codes(job)).toContain('order-too-dear');
  });

  test('a ticket that can’t be figured leaves the list not whole, and no bid', () => {
    const job = fullJob();
    const broken = {
      ...job,
      practices: {
        ...job.practices,
        mix: { ...job.practices.mix, blend: { main: 'regular', mainParts: 0, otherParts: 0 } },
      },
    };
    expect(codes(broken)).toContain('order-incomplete');
    expect(orderFor(broken).bid).toBeUndefined();
    expect(orderFor(broken).lines.some(({ is }) => is === 'order-bag')).toBe(false);
  });

  test('every figure that there are words for comes of a full job, or of one by truck', () => {
    const typed = fullJob();
    const seen = new Set(
      [
        typed,
        ordering(withPrices(typed, [{ item: 'stake', price: null }]), { concrete: 'ready-mix' }),
      ]
        .flatMap((job) => ticketOf(job, takeoff(job), 'order').figures)
        .map(({ key, working }) => {
          expect(working().of).toBe(key);
          return key;
        }),
    );
    expect(ORDER_FIGURE_KEYS.filter((key) => !seen.has(key))).toEqual([]);
  });
});

describe('base', () => {
  const area = 120 * SQUARE_FOOT;
  const job = (means: 'swell' | 'shrink', shrink = 0.25): Job => {
    const made = ordering(slab(), { base: { ...orderOf(slab().practices).base, means, shrink } });
    return {
      ...made,
      practices: { ...made.practices, base: { depth: FOOT / 3, retarder: false } },
    };
  };

  // @source shrink-factor-highway
  test('25 % as a highway manual means it: loose × 0.80 is compacted', () => {
    const { compacted, loose } = baseOf(job('swell'), area)!;
    expect(compacted).toBeCloseTo(area * (FOOT / 3), 0);
    expect(compacted / loose).toBeCloseTo(0.8, 12);
  });

  test('25 % as the other tables mean it: loose × 0.75 is compacted', () => {
    const { compacted, loose } = baseOf(job('shrink'), area)!;
    expect(compacted / loose).toBeCloseTo(0.75, 12);
  });

  test('is sold by the next quarter, never down', () => {
    expect(quarters(2 * CUBIC_YARD, 'cubic-yard')).toBe(2);
    expect(quarters(2.001 * CUBIC_YARD, 'cubic-yard')).toBe(2.25);
    expect(quarters(0.01 * CUBIC_METRE, 'cubic-metre')).toBe(0.25);
    // 40 ft³ compacted, 50 loose: 1.85 yd³.
    expect(orderFor(job('swell')).lines.find(({ is }) => is === 'order-base')?.count).toBe(2);
  });
});

test('retarder: laps take a part of each roll’s width', () => {
  const job = slab();
  const laid = { ...job, practices: { ...job.practices, base: { depth: 0, retarder: true } } };
  // 10 ft rolls lapped 6 in cover 9.5 ft: 120 ft² take 126.3.
  const { covered, rolls } = retarderOf(laid, 120 * SQUARE_FOOT)!;
  expect(covered / SQUARE_FOOT).toBeCloseTo(126.316, 3);
  expect(rolls).toBe(1);
  const wide = ordering(laid, { retarder: { width: FOOT, length: FOOT, lap: FOOT } });
  expect(retarderOf(wide, 120 * SQUARE_FOOT)).toBeUndefined();
  expect(codes(wide)).toContain('retarder-lap-wide');
});

describe('hauling', () => {
  const hauling = (haul: Partial<OrderPractices['haul']>) =>
    ordering(slab(), { haul: { ...orderOf(slab().practices).haul, ...haul } });

  test('is asked for until a payload is typed', () => {
    expect(codes(slab())).toContain('haul-asked');
    expect(orderFor(slab()).haul).toBeUndefined();
  });

  test('a payload below a pallet says that it must be split', () => {
    expect(codes(hauling({ truck: 1_200 * POUND_KG }))).toContain('haul-below-pallet');
    expect(codes(hauling({ truck: 5_000 * POUND_KG }))).not.toContain('haul-below-pallet');
  });

  test('a payload below one bag plans nothing, and says what is too heavy', () => {
    const job = hauling({ truck: 50 * POUND_KG });
    expect(orderFor(job).haul).toBeUndefined();
    expect(codes(job)).toContain('haul-piece-heavy');
  });

  test('what rides along as heavy as the payload plans nothing', () => {
    const job = hauling({ truck: 900 * POUND_KG, riding: 900 * POUND_KG });
    expect(codes(job)).toContain('haul-nothing-left');
  });

  test('everything of known weight is on some trip, once', () => {
    const { lines, haul } = orderFor(fullJob());
    const loaded = new Map<number, number>();
    for (const { of, count } of haul!.plan.trips.flat().flatMap((part) => part.items)) {
      loaded.set(of, (loaded.get(of) ?? 0) + count);
    }
    lines.forEach(({ delivered, weight, count }, i) => {
      const expected =
        delivered || weight === undefined ? undefined : Number.isInteger(count) ? count : 1;
      expect(loaded.get(i)).toBe(expected);
    });
  });
});

describe('by truck', () => {
  test('the order is ready-mix up to the next quarter, and no bag', () => {
    const job = ordering(slab(), { concrete: 'ready-mix' });
    const { lines, readyMix } = orderFor(job);
    const needed = takeoff(job).mix!.needed / CUBIC_YARD;
    expect(readyMix! - needed).toBeGreaterThanOrEqual(0);
    expect(readyMix! - needed).toBeLessThan(0.25);
    expect(lines[0]).toMatchObject({ is: 'order-ready-mix', count: readyMix, unit: 'cubic-yard' });
    expect(lines.some(({ is }) => is === 'order-bag')).toBe(false);
  });

  test('its price is of the unit it is sold by, and of no other', () => {
    const job = withPrices(ordering(slab(), { concrete: 'ready-mix' }), [
      { item: 'ready-mix-yd3', price: 18_000 },
    ]);
    expect(orderFor(job).lines[0]!.price).toBe(18_000);
    const rules = orderOf(job.practices);
    const metric = ordering(job, { readyMix: { ...rules.readyMix, soldBy: 'cubic-metre' } });
    expect(orderFor(metric).lines[0]!.price).toBeUndefined();
  });

  test('what isn’t typed yet is asked for, all of it', () => {
    const note = takeoff(slab()).notes.find(({ code }) => code === 'compare-asked')!;
    const items = note.facts!['items']!;
    expect(items.of === 'list' && items.items.length).toBe(10);
    expect(orderFor(slab()).compare).toBeUndefined();
  });
});

test('random jobs: whole cents, and the sum is that of its lines', () => {
  const draw = chance(5_519);
  for (let round = 0; round < 25; round++) {
    const { job } = slabJob(round + 1);
    const { order } = takeoff(job);
    if (!order) continue;
    const items = priceItems(job, order);
    const priced = withPrices(
      job,
      items
        .filter(() => draw.likely(0.7))
        .map(({ item }) => ({ item, price: draw.whole(0, 20_000) })),
    );
    const { lines, money, unpriced } = orderFor(priced);
    const sums = lines.flatMap(({ sum }) => (sum === undefined ? [] : [sum]));
    for (const sum of sums) expect(Number.isSafeInteger(sum)).toBe(true);
    expect(money ?? 0).toBe(sums.reduce((total, sum) => total + sum, 0));
    expect(unpriced + sums.length).toBe(lines.length);
  }
});

test('an empty bid is what a job without one has', () => {
  expect(bidOf(slab())).toEqual({ scope: '', hours: [], extras: [] });
});
