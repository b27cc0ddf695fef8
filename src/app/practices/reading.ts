import type { Practices, UnitStyle } from '../../job/job.ts';
import { formatNumber, formatShare, formatVolume, formatWeight } from '../../units/format.ts';
import { CUBIC_FOOT, CUBIC_METRE, POUND_KG, SQUARE_FOOT, SQUARE_METRE } from '../../units/grid.ts';
import { formatLength, parseLength } from '../../units/length.ts';
import { parseNumber, parseShare, parseVolume, parseWeight } from '../../units/measure.ts';
import { fail, type Result } from '../../units/result.ts';
import type { practicesEn } from '../words/practicesEn.ts';
import type { Field } from './fields.ts';

/** How a practice reads in the chosen units, and how what is typed is read back. */
export interface Reading {
  readonly text: string;
  readonly parse: (text: string) => Result<number>;
  /** Stands behind the field where it isn't part of what is typed. */
  readonly unit?: keyof (typeof practicesEn)['units'];
}

type TypedFieldKind = Exclude<Field, { readonly kind: 'yes-no' | 'board' }>;

/** kg per square metre in one pound per hundred square feet. */
const POUND_PER_100_SQUARE_FEET = (POUND_KG / 100) * (SQUARE_METRE / SQUARE_FOOT);

export function readingOf(field: TypedFieldKind, practices: Practices, units: UnitStyle): Reading {
  const value = field.get(practices);
  switch (field.kind) {
    case 'length':
      return lengthReading(value, field.least, field.most, units);
    case 'count':
      return countReading(value, field.least, field.most);
    case 'share':
      return within(
        { text: formatShare(value), parse: parseShare },
        field.least,
        field.most,
        formatShare,
      );
    case 'volume':
      return volumeReading(value, units);
    case 'area-weight': {
      const one = units === 'metric' ? 1 : POUND_PER_100_SQUARE_FEET;
      const reading: Reading = {
        text: formatNumber(value / one),
        parse: (text) => map(parseNumber(text), (number) => number * one),
        unit: units === 'metric' ? 'kgPerSquareMetre' : 'poundsPer100',
      };
      return within(reading, 0.1, 50, (kg) => formatNumber(kg / one));
    }
  }
}

export function lengthReading(
  value: number,
  least: number,
  most: number,
  units: UnitStyle,
): Reading {
  const write = (grid: number) => formatLength(grid, units);
  return within(
    { text: write(value), parse: (text) => parseLength(text, units) },
    least,
    most,
    write,
  );
}

export function countReading(value: number, least: number, most: number): Reading {
  const parse = (text: string): Result<number> => {
    const read = parseNumber(text);
    if (read.ok && !Number.isInteger(read.value)) return fail({ code: 'not-whole', where: text });
    return read;
  };
  return within({ text: formatNumber(value), parse }, least, most, formatNumber);
}

/** What a bag makes or a mixer holds: a litre at least, a load of six cubic metres at most. */
export function volumeReading(value: number, units: UnitStyle): Reading {
  const unit = units === 'metric' ? 'litre' : 'cubic-foot';
  const write = (grid3: number) =>
    units === 'metric'
      ? formatVolume(grid3, units, unit)
      : `${formatNumber(grid3 / CUBIC_FOOT, 4)} ft³`;
  const reading = { text: write(value), parse: (text: string) => parseVolume(text, units) };
  return within(reading, CUBIC_METRE / 1000, 6 * CUBIC_METRE, write);
}

/** One bag: what a person may carry at most twice over. */
export function weightReading(kg: number, units: UnitStyle): Reading {
  const write = (weight: number) => formatWeight(weight, units);
  return within({ text: write(kg), parse: (text) => parseWeight(text, units) }, 1, 100, write);
}

/** A reading that refuses what is out of bounds. */
export function within(
  reading: Reading,
  least: number,
  most: number,
  write: (value: number) => string,
): Reading {
  return {
    ...reading,
    parse: (text) => {
      const read = reading.parse(text);
      if (!read.ok || (read.value >= least && read.value <= most)) return read;
      const facts = { least: write(least), most: write(most) };
      return fail({ code: 'out-of-range', where: text, facts });
    },
  };
}

function map<T, U>(result: Result<T>, change: (value: T) => U): Result<U> {
  return result.ok ? { ok: true, value: change(result.value) } : result;
}
