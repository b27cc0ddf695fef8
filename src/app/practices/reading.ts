import type { Practices, UnitStyle } from '../../job/job.ts';
import { formatNumber, formatShare, formatVolume, formatWeight } from '../../units/format.ts';
import { CUBIC_FOOT, CUBIC_METRE, POUND_KG, SQUARE_FOOT, SQUARE_METRE } from '../../units/grid.ts';
import { formatLength, formatLengthDetail, parseLength } from '../../units/length.ts';
import { parseNumber, parseShare, parseVolume, parseWeight } from '../../units/measure.ts';
import { fail, ok, type Result } from '../../units/result.ts';
import { fromFahrenheit, toFahrenheit } from '../../units/temperature.ts';
import type { practicesEn } from '../words/practicesEn.ts';
import type { Field } from './field.ts';

/** How a practice reads in the chosen units, and how what is typed is read back. */
export interface Reading {
  readonly text: string;
  readonly parse: (text: string) => Result<number>;
  /** Stands behind the field where it isn't part of what is typed. */
  readonly unit?: keyof (typeof practicesEn)['units'];
}

type TypedFieldKind = Exclude<
  Field,
  { readonly kind: 'yes-no' | 'board' | 'choice' | 'sign' | 'price' | 'asked' }
>;

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
    case 'one-part-of':
      return partReading(value, field.least, field.most);
    case 'volume':
      return volumeReading(value, units);
    case 'weight': {
      const write = (kg: number) => formatWeight(kg, units);
      const parse = (text: string) => parseWeight(text, units);
      return within({ text: write(value), parse }, field.least, field.most, write);
    }
    case 'measured': {
      const [unit, one] = units === 'metric' ? field.unit.metric : field.unit.other;
      const write = (kept: number) => formatNumber(kept / one);
      const parse = (text: string) => map(parseNumber(text), (number) => number * one);
      return within({ text: write(value), parse, unit }, field.least, field.most, write);
    }
    case 'temperature':
      return temperatureReading(value, field.least, field.most, units);
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
  const write = (grid: number) => writtenWhole(grid, units);
  return within(
    { text: write(value), parse: (text) => parseLength(text, units) },
    least,
    most,
    write,
  );
}

/** In sixteenths, or as fine as it takes to say the whole of it: a saw's kerf is not always on the tape. */
function writtenWhole(grid: number, units: UnitStyle): string {
  const fine = ([16, 32] as const).find(
    (fraction) => formatLengthDetail(grid, units, { fraction }).exact,
  );
  return formatLength(grid, units, { fraction: fine ?? 64 });
}

/** °C, typed in the degrees of the units in use. */
export function temperatureReading(
  celsius: number,
  least: number,
  most: number,
  units: UnitStyle,
): Reading {
  const metric = units === 'metric';
  const write = (kept: number) => formatNumber(metric ? kept : toFahrenheit(kept), 1);
  const parse = (text: string) =>
    map(parseNumber(text), (number) => (metric ? number : fromFahrenheit(number)));
  const unit = metric ? 'celsius' : 'fahrenheit';
  return within({ text: write(celsius), parse, unit }, least, most, write);
}

export function countReading(value: number, least: number, most: number): Reading {
  const parse = (text: string): Result<number> => {
    const read = parseNumber(text);
    if (read.ok && !Number.isInteger(read.value)) return fail({ code: 'not-whole', where: text });
    return read;
  };
  return within({ text: formatNumber(value), parse }, least, most, formatNumber);
}

/** One part of so many: `1/360`, `L/360` as the formwork texts have it, or the 360 alone. */
function partReading(share: number, least: number, most: number): Reading {
  const write = (part: number) => `1/${formatNumber(1 / part, 1)}`;
  const parse = (text: string): Result<number> => {
    const read = parseNumber(text.replace(/^\s*[1lL]\s*[/⁄]\s*/, ''));
    if (!read.ok) {
      const [problem] = read.problems;
      return fail({ code: problem?.code ?? 'number-unreadable', where: text });
    }
    // Bounds are of the many: a part of nothing has none.
    return read.value >= least && read.value <= most
      ? ok(1 / read.value)
      : fail({
          code: 'out-of-range',
          where: text,
          facts: { least: write(1 / most), most: write(1 / least) },
        });
  };
  return { text: write(share), parse };
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

/** The sign of a currency: short, and nothing that could be part of a price. */
export function readSign(text: string): Result<string> {
  const sign = text.trim();
  return sign.length <= 4 && !/[\d,+-]/.test(sign) ? ok(sign) : fail({ code: 'sign', where: text });
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
