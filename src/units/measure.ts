import { FOOT, METRE, YARD } from './grid.ts';
import type { UnitProblemCode } from './problems.ts';
import { decimal, nearestWhole, type Ratio, ratio, times, toNumber } from './ratio.ts';
import { fail, ok, type Result } from './result.ts';
import { plain, unclearComma } from './typed.ts';
import type { LengthStyle } from './writtenLength.ts';

type Kind = 'number' | 'volume' | 'weight' | 'share';

interface Split {
  readonly negative: boolean;
  readonly number: Ratio;
  /** What stands behind the number, lower case; empty for a bare number. */
  readonly unit: string;
}

/** A number and the unit behind it. A comma is a decimal comma, unless three digits follow it. */
function split(typed: string, kind: Kind): Result<Split> {
  const code = (what: string) => `${kind}-${what}` as UnitProblemCode;
  const read = plain(typed);
  if (read?.text === '' && !read.signed) return fail({ code: code('empty'), where: typed });
  if (read && unclearComma(read.text)) return fail({ code: code('comma'), where: typed });
  const found = read && /^(\d+\.?\d*|\.\d+) ?([^\d].*)?$/.exec(read.text.replace(',', '.'));
  if (!found) return fail({ code: code('unreadable'), where: typed });
  return ok({
    negative: read.negative,
    number: decimal(found[1] ?? ''),
    unit: (found[2] ?? '').replace(/³/g, '3').replace(/\.$/, '').trim(),
  });
}

function signed(negative: boolean, number: number): number {
  return negative && number !== 0 ? -number : number;
}

/** A plain decimal number. */
export function parseNumber(typed: string): Result<number> {
  const read = split(typed, 'number');
  if (!read.ok) return read;
  const { negative, number, unit } = read.value;
  if (unit !== '') return fail({ code: 'number-unreadable', where: typed });
  return ok(signed(negative, toNumber(number)));
}

/** US liquid gallon: 231 cubic inches, exact by definition. */
const CUBIC_INCHES_IN_A_GALLON = 231;

function cubicUnit(word: string, style: LengthStyle): Ratio | null {
  const cube = (side: number) => ratio(BigInt(side) ** 3n);
  switch (word) {
    case '':
      return style === 'metric' ? ratio(BigInt(METRE) ** 3n, 1000n) : cube(FOOT);
    case 'ft3':
    case 'cu ft':
    case 'cubic feet':
    case 'cubic foot':
    case 'cf':
      return cube(FOOT);
    case 'yd3':
    case 'cu yd':
    case 'cubic yards':
    case 'cubic yard':
    case 'cy':
      return cube(YARD);
    case 'm3':
    case 'cubic metres':
    case 'cubic meters':
      return cube(METRE);
    case 'l':
    case 'litre':
    case 'litres':
    case 'liter':
    case 'liters':
      return ratio(BigInt(METRE) ** 3n, 1000n);
    case 'gal':
    case 'gallon':
    case 'gallons':
      return ratio(BigInt(CUBIC_INCHES_IN_A_GALLON) * BigInt(FOOT) ** 3n, 1728n);
    case 'qt':
    case 'quart':
    case 'quarts':
      return ratio(BigInt(CUBIC_INCHES_IN_A_GALLON) * BigInt(FOOT) ** 3n, 1728n * 4n);
    case 'pt':
    case 'pint':
    case 'pints':
      return ratio(BigInt(CUBIC_INCHES_IN_A_GALLON) * BigInt(FOOT) ** 3n, 1728n * 8n);
    default:
      return null;
  }
}

/**
 * A volume in cubic grid units, to the nearest (as near as a plain number can hold it). A bare number is cubic feet,
 * in metric litres. Understood: ft³, yd³, m³, L, US gal, qt and pt, with 3 for ³ or in words.
 */
export function parseVolume(typed: string, style: LengthStyle): Result<number> {
  const read = split(typed, 'volume');
  if (!read.ok) return read;
  const { negative, number, unit } = read.value;
  const cubic = cubicUnit(unit, style);
  if (!cubic) return fail({ code: 'volume-unreadable', where: typed });
  return ok(signed(negative, Number(nearestWhole(times(number, cubic)).whole)));
}

/** Water in cubic grid units: as a volume, but a bare number is US quarts, in metric litres. */
export function parseWater(typed: string, style: LengthStyle): Result<number> {
  const bare = split(typed, 'volume');
  const quarts = style !== 'metric' && bare.ok && bare.value.unit === '';
  return parseVolume(quarts ? `${typed} qt` : typed, style);
}

/** A weight in kilograms. A bare number is pounds, in metric kilograms. */
export function parseWeight(typed: string, style: LengthStyle): Result<number> {
  const read = split(typed, 'weight');
  if (!read.ok) return read;
  const { negative, number, unit } = read.value;
  const word = unit || (style === 'metric' ? 'kg' : 'lb');
  if (/^(kg|kgs|kilos?|kilograms?)$/.test(word)) return ok(signed(negative, toNumber(number)));
  if (!/^(lbs?|pounds?)$/.test(word)) return fail({ code: 'weight-unreadable', where: typed });
  // 0.45359237 kg to the pound, as a ratio.
  return ok(signed(negative, toNumber(times(number, ratio(45_359_237, 100_000_000)))));
}

/** A share of one from percent: `10%`, `10 percent` and a bare `10` are all 0.10. */
export function parseShare(typed: string): Result<number> {
  const read = split(typed, 'share');
  if (!read.ok) return read;
  const { negative, number, unit } = read.value;
  if (!/^(%|percent|per cent|pct)?$/.test(unit)) {
    return fail({ code: 'share-unreadable', where: typed });
  }
  return ok(signed(negative, toNumber(times(number, ratio(1, 100)))));
}
