import type { Grid } from '../units/grid.ts';
import type { Money } from '../units/money.ts';
import type { Quantity } from './figure.ts';
import type { CountUnit, TermKey } from './keys.ts';
import type { EdgeKind } from './outline/pour.ts';

export function length(grid: Grid): Quantity {
  return { of: 'length', grid };
}

/** A length for the tape, rounded to one of so many parts of an inch. */
export function tapeLength(grid: number, to: 8 | 16 | 32 | 64): Quantity {
  return { of: 'length', grid, to };
}

export function angle(degrees: number): Quantity {
  return { of: 'angle', degrees };
}

/** @param grid2 square grid units */
export function area(grid2: number): Quantity {
  return { of: 'area', grid2 };
}

/** @param grid3 cubic grid units */
export function volume(grid3: number): Quantity {
  return { of: 'volume', grid3 };
}

/** A volume among lines that are added up, always in the same unit. */
export function bagVolume(grid3: number): Quantity {
  return { of: 'volume', grid3, as: 'bags' };
}

/** What goes into joints, as tubes are sold. */
export function tubeVolume(grid3: number): Quantity {
  return { of: 'volume', grid3, as: 'tube' };
}

/** What one bag makes: as many places as are printed on bags. */
export function bagYield(grid3: number): Quantity {
  return { of: 'volume', grid3, as: 'one-bag' };
}

/** Water, as a crew measures it out. */
export function waterVolume(grid3: number): Quantity {
  return { of: 'volume', grid3, as: 'water' };
}

/** Bags of a batch, in whole ones and halves. */
export function halfBags(bags: number): Quantity {
  return { of: 'half-bags', bags };
}

export function weight(kg: number): Quantity {
  return { of: 'weight', kg };
}

export function weightByArea(kgPerSquareMetre: number): Quantity {
  return { of: 'weight-by-area', kgPerSquareMetre };
}

/** Steel each way, mm² in a metre's width. */
export function areaByLength(mm2PerMetre: number): Quantity {
  return { of: 'area-by-length', mm2PerMetre };
}

/** @param kgPerCubicMetre kg/m³ */
export function density(kgPerCubicMetre: number): Quantity {
  return { of: 'density', kgPerCubicMetre };
}

/** @param as what bears it */
export function pressure(pascals: number, as?: 'wood' | 'steel'): Quantity {
  return as ? { of: 'pressure', pascals, as } : { of: 'pressure', pascals };
}

/** @param newtonsPerMetre N/m */
export function lineLoad(newtonsPerMetre: number): Quantity {
  return { of: 'line-load', newtonsPerMetre };
}

/** @param minutes a span of time */
export function time(minutes: number): Quantity {
  return { of: 'time', minutes };
}

/** @param grid2PerHour square grid units in an hour */
export function areaRate(grid2PerHour: number): Quantity {
  return { of: 'area-rate', grid2PerHour };
}

export function temperature(celsius: number): Quantity {
  return { of: 'temperature', celsius };
}

export function wind(kmPerHour: number): Quantity {
  return { of: 'wind', kmPerHour };
}

/** A band; the same twice for a limit. kg/m² in an hour. */
export function evaporation(low: number, high: number): Quantity {
  return { of: 'evaporation', low, high };
}

export function count(number: number, unit: CountUnit): Quantity {
  return { of: 'count', count: number, unit };
}

export function money(cents: Money, currency: string): Quantity {
  return { of: 'money', cents, currency };
}

export function share(part: number): Quantity {
  return { of: 'share', share: part };
}

export function number(value: number): Quantity {
  return { of: 'number', number: value };
}

/** A word of the trade, which each language has its own for. */
export function term(word: EdgeKind | TermKey): Quantity {
  return { of: 'words', word };
}

/** Several, one after another. */
export function list(items: readonly Quantity[]): Quantity {
  return { of: 'list', items };
}

/** A mark or a name that somebody gave, the same in every language. */
export function text(written: string): Quantity {
  return { of: 'text', text: written };
}
