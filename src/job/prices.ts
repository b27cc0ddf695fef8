import type { Money } from '../units/money.ts';
import type { Job } from './job.ts';
import type { ItemPrice } from './order.ts';
import { bidOf, orderOf } from './orderDefaults.ts';

/** What is put in for an item: its price, or null for none. */
export interface PriceChange {
  readonly item: string;
  readonly price: Money | null;
}

/** In front of the id of a row that has its price in its own list. */
const LISTS = ['board-', 'mesh-', 'bar-', 'extra-'] as const;
type Listed = (typeof LISTS)[number];

/** An item's price, wherever it is kept: boards, mesh, bars and extras have theirs in their own lists. */
export function priceOf(job: Job, item: string): Money | undefined {
  const found = inList(item);
  if (!found) return orderOf(job.practices).prices.find((one) => one.item === item)?.price;
  const { list, id } = found;
  switch (list) {
    case 'board-':
      return job.lumber.yard.find((one) => one.id === id)?.price;
    case 'mesh-':
      return job.meshStock.yard.find((one) => one.id === id)?.price;
    case 'bar-':
      return job.practices.steel.bars.price;
    case 'extra-':
      return bidOf(job).extras.find((one) => one.id === id)?.price;
  }
}

/** The job with prices changed; a row that is no longer in its list changes nothing. The same job when nothing does. */
export function withPrices(job: Job, changes: readonly PriceChange[]): Job {
  return changes.reduce(withPrice, job);
}

function withPrice(job: Job, { item, price }: PriceChange): Job {
  if ((priceOf(job, item) ?? null) === price) return job;
  const found = inList(item);
  const { practices } = job;
  if (!found) {
    const others = orderOf(practices).prices.filter((one) => one.item !== item);
    const prices: readonly ItemPrice[] = price === null ? others : [...others, { item, price }];
    return { ...job, practices: { ...practices, order: { ...orderOf(practices), prices } } };
  }
  const { list, id } = found;
  switch (list) {
    case 'board-':
      return { ...job, lumber: { ...job.lumber, yard: priced(job.lumber.yard, id, price) } };
    case 'mesh-':
      return {
        ...job,
        meshStock: { ...job.meshStock, yard: priced(job.meshStock.yard, id, price) },
      };
    case 'bar-': {
      const { steel } = practices;
      return {
        ...job,
        practices: { ...practices, steel: { ...steel, bars: withOne(steel.bars, price) } },
      };
    }
    case 'extra-':
      return { ...job, bid: { ...bidOf(job), extras: priced(bidOf(job).extras, id, price) } };
  }
}

function inList(item: string): { readonly list: Listed; readonly id: string } | undefined {
  const list = LISTS.find((one) => item.startsWith(one));
  return list && { list, id: item.slice(list.length) };
}

function priced<T extends { readonly id: string; readonly price?: Money }>(
  rows: readonly T[],
  id: string,
  price: Money | null,
): readonly T[] {
  return rows.map((row) => (row.id === id ? withOne(row, price) : row));
}

function withOne<T extends { readonly price?: Money }>(row: T, price: Money | null): T {
  const { price: _, ...unpriced } = row;
  return (price === null ? unpriced : { ...unpriced, price }) as T;
}
