import type { Job } from '../../job/job.ts';
import { priceOf } from '../../job/prices.ts';
import type { Money } from '../../units/money.ts';
import type { Quantity } from '../figure.ts';
import type { CountUnit } from '../keys.ts';
import { mixParts } from '../mix/parts.ts';
import { soldBy } from '../order/concrete.ts';
import type { OrderTermKey } from '../order/keys.ts';
import type { OrderResult } from '../order/orderResult.ts';
import { text } from '../quantity.ts';

/** Something that a price is asked for. */
export interface PriceItem {
  readonly item: string;
  readonly is: OrderTermKey;
  readonly named: readonly Quantity[];
  readonly unit: CountUnit;
  /** Absent where nobody has typed one. */
  readonly price?: Money;
}

/** Every price that this job's order, comparison and bid can use, the list's own first; each item once. */
export function priceItems(job: Job, { lines }: OrderResult): readonly PriceItem[] {
  const { unit, mark } = soldBy(job);
  const blend = mixParts(job.practices);
  const bags =
    'code' in blend
      ? []
      : blend.map(({ mix }) => wanted(`bag-${mix.id}`, 'order-bag', 'bag', [text(mix.name)]));
  const all: readonly Omit<PriceItem, 'price'>[] = [
    ...bags,
    ...lines.map(({ item, is, named, unit: sold }) => wanted(item, is, sold, named)),
    wanted('labour-hour', 'price-labour', 'hour'),
    wanted('one-short', 'price-one-short', 'bag'),
    wanted('one-over', 'price-one-over', 'bag'),
    wanted('pallet', 'price-pallet', 'pallet'),
    wanted('mixer-hire', 'order-mixer-hire', 'unit'),
    wanted(`ready-mix-${mark}`, 'order-ready-mix', unit),
    wanted('short-load', 'order-short-load', 'load'),
    wanted(`missing-${mark}`, 'order-missing', unit),
    wanted('waiting-minute', 'order-waiting', 'minute'),
  ];
  const first = new Map<string, Omit<PriceItem, 'price'>>();
  for (const one of all) if (!first.has(one.item)) first.set(one.item, one);
  return [...first.values()].map((one) => {
    const price = priceOf(job, one.item);
    return price === undefined ? one : { ...one, price };
  });
}

function wanted(
  item: string,
  is: OrderTermKey,
  unit: CountUnit,
  named: readonly Quantity[] = [],
): Omit<PriceItem, 'price'> {
  return { item, is, named, unit };
}
