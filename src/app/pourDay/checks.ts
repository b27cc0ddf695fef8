import type { pourDayEn } from '../words/pourDayEn.ts';

export type CheckKey = keyof (typeof pourDayEn)['before']['checks'];

/** In the order in which one walks round the pour. */
export const CHECKS: readonly CheckKey[] = [
  'lines',
  'depth',
  'forms',
  'steel',
  'strip',
  'subgrade',
  'water',
  'tools',
  'power',
  'ppe',
  'silica',
  'bags',
  'weather',
  'hands',
  'wayOut',
  'washout',
];
