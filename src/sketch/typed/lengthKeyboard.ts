import type { UnitStyle } from '../../job/job.ts';

/** Feet and inches need their marks; numbers alone get the number pad. */
export function lengthKeyboard(units: UnitStyle): 'text' | 'decimal' {
  return units === 'feet-inches' ? 'text' : 'decimal';
}
