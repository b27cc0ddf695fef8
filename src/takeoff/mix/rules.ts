import { toGrid } from '../../geometry/round.ts';
import { MILLIMETRE, POUND_KG } from '../../units/grid.ts';

const CUBIC_MILLIMETRE = MILLIMETRE ** 3;

/**
 * A volume to the nearest whole cubic millimetre, in cubic grid units. Volumes are compared and added as whole numbers,
 * so that 45 bags of 0.60 ft³ are enough for 27 ft³ although 0.6 has no exact binary fraction, and the lines of a ticket
 * add up to its total.
 */
export function wholeVolume(grid3: number): number {
  return toGrid(grid3 / CUBIC_MILLIMETRE) * CUBIC_MILLIMETRE;
}

/** More bags than this is a truck's job, or a number typed wrong. Our own limit. */
export const MOST_BAGS = 1_000_000;

/**
 * A bag heavier than this is over what one person should lift in the best of conditions.
 * @source niosh-lifting
 */
export const ONE_PERSON_LIFT = 51 * POUND_KG;
