import type { OrderPractices } from '../../job/order.ts';
import type { OrderLine } from '../order/line.ts';
import { type HaulItem, type HaulPlan, type HaulRoom, haul } from './load.ts';

/** How the order gets to the site. */
export interface Haul {
  readonly plan: HaulPlan;
  /** Of the order's lines, by their place in the list, those that are hauled. */
  readonly rooms: readonly HaulRoom[];
  /** kg of what is hauled. */
  readonly weight: number;
}

export type HaulTrouble =
  /** Neither payload was typed. */
  | { readonly is: 'asked' }
  /** What rides along weighs as much as the payload or more. */
  | { readonly is: 'nothing-left' }
  /** One piece is over what either takes. Its line, and kg. */
  | {
      readonly is: 'piece-heavy';
      readonly line: OrderLine;
      readonly each: number;
      readonly most: number;
    }
  | { readonly is: 'too-many' };

/** Lines that are fetched and whose weight is known, on truck and trailer. */
export function haulOrder(
  lines: readonly OrderLine[],
  { truck, trailer, riding = 0 }: OrderPractices['haul'],
): Haul | HaulTrouble {
  if (truck === undefined && trailer === undefined) return { is: 'asked' };
  const rooms: readonly HaulRoom[] = [
    { on: 'truck' as const, room: micrograms(truck ?? 0) - micrograms(riding) },
    { on: 'trailer' as const, room: micrograms(trailer ?? 0) },
  ].filter(({ room }) => room > 0);
  if (rooms.length === 0 || (truck !== undefined && truck < riding)) return { is: 'nothing-left' };
  const items = lines.flatMap((line, of): readonly HaulItem[] => {
    if (line.delivered || line.weight === undefined) return [];
    // What isn't sold by the piece goes as one.
    const count = Number.isInteger(line.count) ? line.count : 1;
    return [{ of, count, each: micrograms(line.weight / count) }];
  });
  const most = Math.max(...rooms.map(({ room }) => room));
  const heavy = items.find(({ each }) => each > most);
  if (heavy) {
    const line = lines[heavy.of]!;
    return { is: 'piece-heavy', line, each: heavy.each / MICROGRAMS, most: most / MICROGRAMS };
  }
  const plan = haul(items, rooms);
  if (!plan) return { is: 'too-many' };
  const weight = items.reduce((sum, { count, each }) => sum + count * each, 0) / MICROGRAMS;
  return { plan, rooms, weight };
}

/** A pound is 453,592,370 of them exactly: 25 bags of 80 lb are 2,000 lb, and no more. */
export const MICROGRAMS = 1e9;

function micrograms(kg: number): number {
  return Math.round(kg * MICROGRAMS);
}
