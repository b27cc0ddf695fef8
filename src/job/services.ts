import type { Service } from './job.ts';

/** What buried lines carry, in the order of the published list of marking colours. */
export const SERVICES: readonly Service[] = [
  'electric',
  'gas',
  'communication',
  'water',
  'reclaimed-water',
  'sewer',
];
