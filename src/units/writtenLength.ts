import { FOOT, INCH, METRE, MILLIMETRE, YARD } from './grid.ts';
import type { UnitProblemCode } from './problems.ts';
import { add, decimal, type Ratio, ratio, times } from './ratio.ts';

/** How lengths are written. The job keeps one; it never changes the geometry. */
export type LengthStyle = 'feet-inches' | 'decimal-feet' | 'metric';

export type AssumedUnit = 'inches' | 'feet' | 'feet-inches' | 'millimetres' | 'metres';

/** A written length in grid units, not rounded yet, or why it isn't taken. */
export type Written =
  | { readonly length: Ratio; readonly assumed?: AssumedUnit }
  | { readonly refused: UnitProblemCode; readonly facts?: Readonly<Record<string, string>> };

interface Way {
  readonly pattern: RegExp;
  readonly read: (found: readonly (string | undefined)[], style: LengthStyle) => Written;
}

const FEET = "(?:'|ft\\.?|foot|feet)";
const INCHES = '(?:"|in\\.?|inch|inches)';
const NUMBER = '(\\d+\\.?\\d*|\\.\\d+)';
const GROUPED = '\\d{1,3}(?: \\d{3})+';
/** Four groups: a whole number and a fraction (`4 1/2`, `4-1/2`), a fraction alone, or a decimal number. */
const MIXED = `(?:(?:(\\d+)[ -])?(\\d+)/(\\d+)|${NUMBER})`;
const METRIC = '(mm|cm|m|millimet(?:re|er)s?|centimet(?:re|er)s?|met(?:re|er)s?)';

function way(pattern: string, read: Way['read']): Way {
  return { pattern: new RegExp(`^${pattern}$`), read };
}

/** Tried in this order; the first that fits the whole text decides. */
const WAYS: readonly Way[] = [
  way(`(\\d+) ?${FEET} ?-? ?${MIXED} ?${INCHES}?`, ([feet, ...inches]) =>
    feetAndInches(feet, mixed(inches)),
  ),
  way(`${MIXED} ?${FEET}`, (feet) => ({ length: times(mixed(feet), ratio(FOOT)) })),
  way(`${MIXED} ?${INCHES}`, (inches) => ({ length: times(mixed(inches), ratio(INCH)) })),
  way(`(${GROUPED}) ?${METRIC}`, ([number, unit]) => metric(number, unit)),
  way(`${NUMBER} ?${METRIC}`, ([number, unit]) => metric(number, unit)),
  way(`${NUMBER} ?(?:yds?\\.?|yards?)`, ([yards]) => ({
    length: times(decimal(yards ?? ''), ratio(YARD)),
  })),
  way('(\\d+)-(\\d+)/(\\d+)', ([whole, top, bottom]) => ({
    refused: 'length-ambiguous',
    facts: { one: `${whole} ${top}/${bottom}"`, other: `${whole}'-0 ${top}/${bottom}"` },
  })),
  way('(?:(\\d+) )?(\\d+)/(\\d+)', (inches, style) =>
    style === 'feet-inches'
      ? { length: times(mixed(inches), ratio(INCH)), assumed: 'inches' }
      : { refused: 'length-unit-needed' },
  ),
  way(NUMBER, ([number = ''], style) => {
    const assumed = bareUnit(number, style);
    return { length: times(decimal(number), ratio(BARE[assumed])), assumed };
  }),
  way(`(${GROUPED})`, ([number], style) =>
    style === 'metric'
      ? { ...metric(number, 'mm'), assumed: 'millimetres' }
      : { refused: 'length-unreadable' },
  ),
  way(`(\\d+)(?: ?- ?| )${MIXED} ?(${INCHES})?`, ([feet, ...inches], style) =>
    style === 'metric' && inches[4] === undefined
      ? { refused: 'length-unit-needed' }
      : feetAndInches(feet, mixed(inches), 'feet-inches'),
  ),
];

const BARE = { inches: INCH, feet: FOOT, millimetres: MILLIMETRE, metres: METRE } as const;

function bareUnit(number: string, style: LengthStyle): keyof typeof BARE {
  if (style === 'feet-inches') return 'inches';
  if (style === 'decimal-feet') return 'feet';
  return number.includes('.') ? 'metres' : 'millimetres';
}

/** What a plain text (see typed.ts) says, by the ways of writing that `readLength` lists. */
export function writtenLength(text: string, style: LengthStyle): Written {
  if (noTapeFraction(text)) return { refused: 'length-fraction' };
  for (const { pattern, read } of WAYS) {
    const found = pattern.exec(text);
    if (found) return read(found.slice(1), style);
  }
  return { refused: 'length-unreadable' };
}

/** True where a unit of the metric system stands at the end; `metres` when it is the metre itself. */
export function endsInMetric(text: string): 'metres' | 'smaller' | null {
  const unit = new RegExp(`\\d ?${METRIC}$`).exec(text)?.[1];
  if (!unit) return null;
  return unit === 'm' || unit.startsWith('met') ? 'metres' : 'smaller';
}

function feetAndInches(feet: string | undefined, inches: Ratio, assumed?: AssumedUnit): Written {
  if (inches.top >= 12n * inches.bottom) return { refused: 'length-inches' };
  const length = add(times(decimal(feet ?? ''), ratio(FOOT)), times(inches, ratio(INCH)));
  return assumed ? { length, assumed } : { length };
}

/** The four groups of MIXED as one number. */
function mixed([whole, top, bottom, number]: readonly (string | undefined)[]): Ratio {
  if (number !== undefined) return decimal(number);
  return add(decimal(whole ?? '0'), ratio(BigInt(top ?? '0'), BigInt(bottom ?? '1')));
}

function metric(number = '', unit = ''): { readonly length: Ratio } {
  const size =
    unit === 'mm' || unit.startsWith('milli')
      ? MILLIMETRE
      : unit === 'cm' || unit.startsWith('centi')
        ? 10 * MILLIMETRE
        : METRE;
  return { length: times(decimal(number.replaceAll(' ', '')), ratio(size)) };
}

/** True for a fraction that is on no tape: thirds, tenths, 5/4, 1/0. */
function noTapeFraction(text: string): boolean {
  const found = /(\d+)\/(\d+)/.exec(text);
  if (!found) return false;
  const bottom = Number(found[2]);
  return ![2, 4, 8, 16, 32, 64].includes(bottom) || Number(found[1]) >= bottom;
}
