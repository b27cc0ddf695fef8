import type { Job } from '../../job/job.ts';
import { orderOf } from '../../job/orderDefaults.ts';
import { priceOf } from '../../job/prices.ts';
import type { Figure, Quantity, TicketTable, WorkingInput } from '../figure.ts';
import { soldBy } from '../order/concrete.ts';
import { practice } from '../order/inputs.ts';
import type { OrderInputKey } from '../order/keys.ts';
import type { Comparison, OrderResult } from '../order/orderResult.ts';
import { count, list, money, number, term, text, volume, weight } from '../quantity.ts';
import type { Haul } from './haulOrder.ts';
import { MICROGRAMS } from './haulOrder.ts';

/** Bags against truck, and the trips. */
export function truckFigures(job: Job, { compare, haul }: OrderResult): readonly Figure[] {
  return [
    ...(compare ? compareFigures(job, compare) : []),
    ...(haul ? haulFigures(job, haul) : []),
  ];
}

function compareFigures(job: Job, compare: Comparison): readonly Figure[] {
  const { currency } = job.practices;
  const { bags, truck } = compare.rates;
  const { unit, mark } = soldBy(job);
  const cents = (key: OrderInputKey, amount: number) =>
    practice(key, money(Math.round(amount), currency));
  const labour = cents('labour-rate', bags.labour);
  const bagInputs: readonly WorkingInput[] = [
    { key: 'bags', value: count(compare.bags, 'bag'), from: 'figure' },
    cents('bag-price', bags.bag),
    practice('bag-hours', count(bags.hours, 'hour')),
    labour,
    cents('mixer-hire', bags.hire),
  ];
  const fee = (key: OrderInputKey, item: string) => {
    const price = priceOf(job, item);
    return price === undefined ? [] : [cents(key, price)];
  };
  const truckInputs: readonly WorkingInput[] = [
    { key: 'ready-mix', value: count(compare.readyMix, unit), from: 'figure' },
    cents('ready-price', truck.price),
    practice('ready-least', volume(truck.least)),
    practice('short-below', volume(truck.short)),
    ...fee('short-fee', 'short-load'),
    ...fee('missing-fee', `missing-${mark}`),
    { key: 'on-site', value: count(compare.onSite * 60, 'minute'), from: 'worked-out' },
    practice('free-time', count(truck.free * 60, 'minute')),
    ...fee('waiting-rate', 'waiting-minute'),
    practice('wheelers', count(truck.wheelers, 'person')),
    labour,
  ];
  const evens = compare.breakEvens.map((one): Quantity => volume(one.volume));
  return [
    {
      key: 'bags-cost',
      value: money(compare.bagCost, currency),
      working: () => ({
        of: 'bags-cost',
        formula: 'Σ n · p + n · h · w + H',
        inputs: bagInputs,
        rounding: 'cent',
        source: ['user'],
      }),
    },
    {
      key: 'truck-cost',
      value: money(compare.truckCost, currency),
      working: () => ({
        of: 'truck-cost',
        formula: 'max(N, N₀) · p + F + max(0, T − T₀) · r + T · k · w',
        inputs: truckInputs,
        rounding: 'cent',
        source: ['wheelbarrow-1908', 'common-practice', 'user'],
      }),
    },
    ...(evens.length > 0
      ? [
          {
            key: 'break-even',
            value: evens.length === 1 ? evens[0]! : list(evens),
            working: () => ({
              of: 'break-even' as const,
              formula: 'H + V ÷ y · (p + h · w) = C(V)',
              inputs: [...bagInputs.slice(1), ...truckInputs.slice(1)],
              rounding: 'none' as const,
              source: ['geometry', 'user'],
            }),
          } satisfies Figure,
        ]
      : []),
  ];
}

function haulFigures(job: Job, haul: Haul): readonly Figure[] {
  const { truck, trailer, riding } = orderOf(job.practices).haul;
  const rooms: readonly WorkingInput[] = [
    ...(truck === undefined ? [] : [practice('truck-payload', weight(truck))]),
    ...(riding === undefined ? [] : [practice('riding-weight', weight(riding))]),
    ...(trailer === undefined ? [] : [practice('trailer-payload', weight(trailer))]),
  ];
  const all: WorkingInput = { key: 'haul-weight', value: weight(haul.weight), from: 'figure' };
  return [
    {
      key: 'haul-weight',
      value: weight(haul.weight),
      working: () => ({
        of: 'haul-weight',
        formula: 'W = Σ n · w',
        inputs: [],
        rounding: 'none',
        source: ['user', 'common-practice'],
      }),
    },
    {
      key: 'trips',
      value: count(haul.plan.trips.length, 'trip'),
      working: () => ({
        of: 'trips',
        formula: 'm',
        inputs: [all, ...rooms],
        rounding: 'up',
        source: ['common-practice'],
        steps: haul.plan.trips.map((parts, i) => ({
          label: `${i + 1}`,
          value: weight(parts.reduce((sum, part) => sum + part.weight, 0) / MICROGRAMS),
        })),
      }),
    },
    {
      key: 'trips-least',
      value: count(haul.plan.least, 'trip'),
      working: () => ({
        of: 'trips-least',
        formula: 'm₀ = ⌈W ÷ Σ R⌉',
        inputs: [all, ...rooms],
        rounding: 'up',
        source: ['geometry'],
      }),
    },
  ];
}

/** What concrete costs, part by part, both ways. */
export function costTable(
  { practices: { currency } }: Job,
  { parts, bagCost, truckCost }: Comparison,
): TicketTable {
  return {
    key: 'cost-parts',
    columns: ['cost-part', 'cost-bags', 'cost-truck'],
    rows: [
      ...parts.map(({ is, bags, truck }) => [
        term(is),
        money(bags, currency),
        money(truck, currency),
      ]),
      [term('part-all'), money(bagCost, currency), money(truckCost, currency)],
    ],
  };
}

/** What goes on which trip, on truck or trailer. */
export function haulTable({ lines, haul }: OrderResult): readonly TicketTable[] {
  if (!haul || haul.plan.trips.length === 0) return [];
  return [
    {
      key: 'haul-plan',
      columns: ['trip', 'trip-on', 'order-what', 'order-count', 'weight'],
      rows: haul.plan.trips.flatMap((parts, trip) =>
        parts.flatMap((part) =>
          part.items.map((item, nth) => {
            const { is, named, count: all, unit } = lines[item.of]!;
            const loaded = Number.isInteger(all) ? item.count : all;
            return [
              nth === 0 ? number(trip + 1) : text(''),
              nth === 0 ? term(`on-${part.on}`) : text(''),
              list([term(is), ...named]),
              count(loaded, unit),
              nth === 0 ? weight(part.weight / MICROGRAMS) : text(''),
            ];
          }),
        ),
      ),
    },
  ];
}
