import type { UnitStyle } from '../job/job.ts';

/** In the order in which they are offered. */
export const UNIT_STYLES: readonly UnitStyle[] = ['feet-inches', 'decimal-feet', 'metric'];
