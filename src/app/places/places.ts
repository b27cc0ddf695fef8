import type { Station } from '../../takeoff/figure.ts';

/** Where one can be: the stations of the day that are built, and the sheet. */
export type Place = Station | 'sheet';

/** In the order of the day. */
export const PLACES: readonly Place[] = ['ground', 'forms', 'steel', 'joints', 'mix', 'sheet'];
