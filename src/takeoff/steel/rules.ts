import { SQUARE_METRE } from '../../units/grid.ts';

/** More pieces than this is a sheet size typed wrong. Our own limit: it keeps a drag quick. */
export const MOST_PIECES = 50_000;

/**
 * What each sheet or roll after the first adds to the width covered: its own width less the lap. A 5 ft roll lapped 6 in
 * adds 4 1/2 ft. The unit is that of the arguments.
 * @source estimating-book-mesh-lap
 */
export function netCover(width: number, lap: number): number {
  return width - lap;
}

/**
 * Share of mesh that laps cost on a wide area: lap ÷ (width − lap). 11.1 % for a 5 ft roll lapped 6 in; the books that
 * divide by the whole width say 10 % and come up short.
 * @source estimating-book-mesh-lap
 */
export function lapShare(width: number, lap: number): number {
  return lap / netCover(width, lap);
}

/**
 * Weight of so much mesh, kg.
 * @param grid2 square grid units
 * @param perSquareMetre kg per square metre; published tables give pounds per 100 ft² (21 for 6x6-W1.4xW1.4).
 * @source welded-wire-table-1975
 */
export function meshWeight(grid2: number, perSquareMetre: number): number {
  return (grid2 / SQUARE_METRE) * perSquareMetre;
}
