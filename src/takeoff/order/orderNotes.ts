import type { Job } from '../../job/job.ts';
import { orderOf } from '../../job/orderDefaults.ts';
import { priceOf } from '../../job/prices.ts';
import type { Note, Quantity } from '../figure.ts';
import { tradeNote } from '../notes.ts';
import { count, list, money, number, share, term, weight } from '../quantity.ts';
import type { Takeoff } from '../result.ts';
import type { Haul, HaulTrouble } from '../truck/haulOrder.ts';
import { bagsOnPallet } from './concrete.ts';
import type { OrderNoteCode, OrderTermKey } from './keys.ts';
import type { OrderLine } from './line.ts';
import type { OrderResult } from './orderResult.ts';

/** What was found on the way, besides the figures. */
export interface Found {
  readonly hauled: Haul | HaulTrouble;
  /** Some ticket before couldn't be figured. */
  readonly incomplete: boolean;
  /** A sum is more than any that is written. */
  readonly tooDear: boolean;
  /** Rates that the comparison lacks. */
  readonly asked: readonly OrderTermKey[];
}

export function orderNotes(
  job: Job,
  { mix }: Takeoff,
  order: OrderResult,
  found: Found,
): readonly Note[] {
  return [
    ...(found.tooDear ? [tradeNote('order', 'stop', 'order-too-dear')] : []),
    ...(found.incomplete ? [tradeNote('order', 'caution', 'order-incomplete')] : []),
    ...listNotes(order),
    ...(mix ? concreteNotes(job, order, found.asked) : []),
    ...groundNotes(job, order),
    ...haulNotes(job, order, found.hauled),
    ...bidNotes(job, order),
  ];
}

type Facts = Readonly<Record<string, Quantity>>;

function caution(code: OrderNoteCode, facts: Facts = {}): Note {
  return tradeNote('order', 'caution', code, { facts });
}

function assumed(code: OrderNoteCode, facts: Facts = {}): Note {
  return tradeNote('order', 'assumption', code, { facts });
}

/** Kinds of lines, each named once. */
function kinds(lines: readonly OrderLine[]): Facts {
  return {
    lines: count(lines.length, 'line'),
    items: list([...new Set(lines.map(({ is }) => is))].map((is) => term(is))),
  };
}

function listNotes({ lines }: OrderResult): readonly Note[] {
  const unpriced = lines.filter(({ price }) => price === undefined);
  const unweighed = lines.filter((one) => !one.delivered && one.weight === undefined);
  return [
    ...(unpriced.length > 0 ? [assumed('order-unpriced', kinds(unpriced))] : []),
    ...(unweighed.length > 0 ? [assumed('order-unweighed', kinds(unweighed))] : []),
    assumed('order-on-truck'),
  ];
}

function concreteNotes(
  job: Job,
  { bags, compare }: OrderResult,
  asked: readonly OrderTermKey[],
): readonly Note[] {
  const { concrete, bags: rules } = orderOf(job.practices);
  const byBags = concrete === 'bags';
  return [
    ...(byBags && bags ? spareNotes(job, bags) : []),
    ...(byBags ? [assumed(rules.returns ? 'bags-returned' : 'bags-not-returned')] : []),
    ...(byBags && bags && bags.pallets === undefined ? [assumed('pallets-asked')] : []),
    ...(byBags ? [] : [assumed('ready-mix-quarter')]),
    ...(asked.length > 0
      ? [assumed('compare-asked', { items: list(asked.map((is) => term(is))) })]
      : []),
    ...(compare ? [assumed('compare-smooth')] : []),
  ];
}

function spareNotes(
  job: Job,
  { by, noEnd, spare }: NonNullable<OrderResult['bags']>,
): readonly Note[] {
  const { over, spread, jobs, returns } = orderOf(job.practices).bags;
  if (noEnd) return [caution('spare-no-end')];
  if (!by) {
    const items: OrderTermKey[] = [];
    if (priceOf(job, 'one-short') === undefined) items.push('price-one-short');
    if (returns && priceOf(job, 'one-over') === undefined) items.push('price-one-over');
    if (!returns && items.length === 0) items.push('order-bag');
    return [assumed('spare-asked', { items: list(items.map((is) => term(is))) })];
  }
  const facts = { over: share(over), spread: share(spread), jobs: count(jobs, 'job') };
  return [
    assumed(jobs >= 2 ? 'spare-from-jobs' : 'spare-guessed', facts),
    ...(spare === 0 ? [assumed('spare-covered', { take: count(by.take, 'bag') })] : []),
  ];
}

function groundNotes(job: Job, { base, retarder, cure }: OrderResult): readonly Note[] {
  const { base: rules } = job.practices;
  const order = orderOf(job.practices);
  const lap = order.retarder;
  return [
    ...(rules.retarder && !retarder
      ? [
          tradeNote('order', 'stop', 'retarder-lap-wide', {
            facts: {
              lap: { of: 'length', grid: lap.lap },
              width: { of: 'length', grid: lap.width },
            },
          }),
        ]
      : []),
    ...(base
      ? [
          assumed(order.base.means === 'swell' ? 'base-means-swell' : 'base-means-shrink', {
            share: share(order.base.shrink),
            factor: number(
              order.base.means === 'swell' ? 1 + order.base.shrink : 1 / (1 - order.base.shrink),
            ),
          }),
          assumed('order-delivered'),
        ]
      : []),
    ...(retarder ? [assumed('retarder-by-area')] : []),
    ...(cure === undefined ? [] : [assumed('cure-by-can')]),
  ];
}

function haulNotes(
  job: Job,
  { haul, lines }: OrderResult,
  hauled: Haul | HaulTrouble,
): readonly Note[] {
  if ('is' in hauled) {
    switch (hauled.is) {
      case 'asked':
        return [assumed('haul-asked')];
      case 'nothing-left':
        return [tradeNote('order', 'stop', 'haul-nothing-left')];
      case 'too-many':
        return [tradeNote('order', 'stop', 'haul-trips-many')];
      case 'piece-heavy':
        return [
          tradeNote('order', 'stop', 'haul-piece-heavy', {
            facts: {
              what: list([term(hauled.line.is), ...hauled.line.named]),
              each: weight(hauled.each),
              most: weight(hauled.most),
            },
          }),
        ];
    }
  }
  const pallet = heaviestPallet(job, lines);
  const most = Math.max(...hauled.rooms.map(({ room }) => room)) / 1e9;
  return [
    ...(haul && pallet !== undefined && pallet > most
      ? [caution('haul-below-pallet', { pallet: weight(pallet), most: weight(most) })]
      : []),
    caution('haul-axles'),
  ];
}

/** kg of a whole pallet of the bags that are bought; nothing where none is whole. */
function heaviestPallet(job: Job, lines: readonly OrderLine[]): number | undefined {
  const pallets = lines.flatMap(({ is, count: bags, weight: kg = 0 }) => {
    const on =
      is === 'order-bag'
        ? bagsOnPallet(kg / bags, orderOf(job.practices).bags.perPallet)
        : undefined;
    return on !== undefined && bags >= on ? [(kg / bags) * on] : [];
  });
  return pallets.length > 0 ? Math.max(...pallets) : undefined;
}

function bidNotes(job: Job, { bid, labour, unpriced, bags }: OrderResult): readonly Note[] {
  if (bid) {
    return bags?.deposit && orderOf(job.practices).concrete === 'bags'
      ? [assumed('bid-before-deposit', { deposit: money(bags.deposit, job.practices.currency) })]
      : [];
  }
  const asked: OrderTermKey[] = [];
  if (priceOf(job, 'labour-hour') === undefined) asked.push('price-labour');
  if (labour.length === 0 || labour.some(({ hours }) => hours === undefined))
    asked.push('rate-hours');
  return [
    ...(asked.length > 0
      ? [assumed('bid-asked', { items: list(asked.map((is) => term(is))) })]
      : []),
    ...(unpriced > 0 ? [assumed('bid-needs-prices', { lines: count(unpriced, 'line') })] : []),
  ];
}
