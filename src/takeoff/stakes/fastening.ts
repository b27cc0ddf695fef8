import type { Practices } from '../../job/job.ts';
import { POUND_KG } from '../../units/grid.ts';
import type { Fastening } from '../result.ts';

/** What is nailed. */
export interface Fastened {
  /** Behind the forms and inside. */
  readonly stakes: number;
  /** Each a brace with a stake of its own: nailed at both of its ends. */
  readonly kickers: number;
  readonly corners: number;
  readonly cleats: number;
}

/**
 * Nails or screws: for each stake, for each end of a kicker as many, for each corner where two boards meet, for each cleat
 * over a splice. Nails are bought by weight, so many to the pound; both by whole boxes, rounded up. Nothing when a pound or
 * a box holds none.
 */
export function fastening(
  practice: Practices['fastening'],
  { stakes, kickers, corners, cleats }: Fastened,
): Fastening | undefined {
  const { by, perStake, perCorner, perCleat, nailsPerPound, nailBox, screwsPerBox } = practice;
  const count = perStake * (stakes + 2 * kickers) + perCorner * corners + perCleat * cleats;
  if (by === 'screws') {
    return screwsPerBox > 0
      ? { by, count, boxes: Math.ceil(count / screwsPerBox), cleats }
      : undefined;
  }
  if (!(nailsPerPound > 0 && nailBox > 0)) return undefined;
  const weight = (count / nailsPerPound) * POUND_KG;
  return { by, count, weight, boxes: wholeBoxes(count, nailsPerPound, nailBox), cleats };
}

/** Boxes that hold so many nails. Boxes of whole pounds are counted exactly. */
function wholeBoxes(count: number, nailsPerPound: number, nailBox: number): number {
  const pounds = nailBox / POUND_KG;
  const whole = Math.round(pounds);
  return Math.ceil(count / (nailsPerPound * (Math.abs(pounds - whole) < 1e-9 ? whole : pounds)));
}
