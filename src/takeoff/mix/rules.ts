import { toGrid } from '../../geometry/round.ts';
import { MILLIMETRE, POUND_KG, QUART } from '../../units/grid.ts';

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

/**
 * Water seen for dry mix by its weight, cubic grid units to the kg: 3 to 5 quarts for 80 lb. Texts contradict each other, so
 * it only tells whether a hose is needed, never what goes into a batch.
 * @source bag-water
 */
export const WATER_SEEN = {
  least: (3 * QUART) / (80 * POUND_KG),
  most: (5 * QUART) / (80 * POUND_KG),
};

/** A worst case allows for the depth's spread so many times. Common practice, no source: two standard deviations. */
export const WORST_SPREADS = 2;
