import type { Job } from '../../job/job.ts';
import { priceOf } from '../../job/prices.ts';
import type { Money } from '../../units/money.ts';
import type { Quantity } from '../figure.ts';
import type { CountUnit } from '../keys.ts';
import { timesCount } from '../price/cents.ts';
import type { OrderTermKey } from './keys.ts';

/** Something that is bought. */
export interface OrderLine {
  /** What its price is kept under: see job/prices.ts. */
  readonly item: string;
  readonly is: OrderTermKey;
  /** A size or a name, where there are several of the kind. */
  readonly named: readonly Quantity[];
  /** Whole, but for what is sold loose and for lines that were typed: those to a thousandth. */
  readonly count: number;
  readonly unit: CountUnit;
  /** kg of all of it; absent where nobody said. */
  readonly weight?: number;
  /** Brought by whoever sells it: no part of what is hauled. */
  readonly delivered: boolean;
  /** Of one. Absent where it isn't known, and then there is no sum. */
  readonly price?: Money;
  /** Absent as well where it would be more than any sum that is written. */
  readonly sum?: Money;
}

interface Wanted extends Pick<OrderLine, 'item' | 'is' | 'count' | 'unit'> {
  readonly named?: readonly Quantity[];
  readonly weight?: number | undefined;
  readonly delivered?: boolean;
}

/** A line with its price, when there is one; none where nothing is wanted. */
export function line(job: Job, wanted: Wanted): readonly OrderLine[] {
  const { weight, named = [], delivered = false, ...rest } = wanted;
  if (!(rest.count > 0)) return [];
  const price = priceOf(job, rest.item);
  const sum = price === undefined ? undefined : timesCount(price, rest.count);
  return [
    {
      ...rest,
      named,
      delivered,
      ...(weight === undefined ? {} : { weight }),
      ...(price === undefined ? {} : { price }),
      ...(sum === undefined ? {} : { sum }),
    },
  ];
}
