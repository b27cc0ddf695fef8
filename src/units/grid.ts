/**
 * The grid: every length inside is a whole number of grid units, 1/320 mm each.
 *
 * 1 in = 25.4 mm exactly (international inch), so 1/64 in = 127 units and 1 mm = 320 units: a tape
 * reading in sixteenths and one in millimetres are both exact integers, and the two unit systems
 * meet with no rounding.
 */

/** A length or coordinate in grid units (an integer wherever it is stored). */
export type Grid = number;

export const MILLIMETRE: Grid = 320;
export const METRE: Grid = 320_000;
export const SIXTY_FOURTH: Grid = 127;
export const SIXTEENTH: Grid = 508;
export const INCH: Grid = 8_128;
export const FOOT: Grid = 97_536;
export const YARD: Grid = 292_608;

/** The largest extent a job may have, 200 m: the bound within which one cross product is exact. */
export const EXTENT_LIMIT: Grid = 200 * METRE;

/** Square grid units in one square foot. */
export const SQUARE_FOOT = FOOT * FOOT;
export const SQUARE_METRE = METRE * METRE;
/** Cubic grid units in one cubic foot. */
export const CUBIC_FOOT = FOOT * FOOT * FOOT;
export const CUBIC_YARD = YARD * YARD * YARD;
export const CUBIC_METRE = METRE * METRE * METRE;

/** Cubic grid units in one US fluid ounce, 1/128 of a gallon of 231 cubic inches; and in a millilitre. */
export const FLUID_OUNCE = (231 / 128) * INCH ** 3;
export const MILLILITRE = (10 * MILLIMETRE) ** 3;

/** Cubic grid units in a US liquid quart and gallon (231 cubic inches, exact by definition), and in a litre. */
export const QUART = (231 / 4) * INCH ** 3;
export const GALLON = 231 * INCH ** 3;
export const LITRE = METRE ** 3 / 1000;

/** Kilograms in one avoirdupois pound, exact by definition (international pound, 1959). */
export const POUND_KG = 0.45359237;
/** Pascals in one pound to the square inch, under standard gravity. */
export const PSI = (POUND_KG * 9.80665) / 0.0254 ** 2;
/** Kilograms per cubic metre in one pound to the cubic foot. */
export const POUND_PER_CUBIC_FOOT = POUND_KG / 0.3048 ** 3;
