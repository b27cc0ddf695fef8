import type { Station } from '../../takeoff/figure.ts';

/** Where one can be: the stations of the day that are built, the sheet, and the day of the pour. */
export type Place = Station | 'sheet' | 'pour-day';

/** Whether a place is a station, with the sketch and its layer. */
export function isStation(place: Place): place is Station {
  return place !== 'sheet' && place !== 'pour-day';
}

/** In the order of the day. */
export const PLACES: readonly Place[] = [
  'ground',
  'forms',
  'steel',
  'joints',
  'mix',
  'order',
  'sheet',
  'pour-day',
];
