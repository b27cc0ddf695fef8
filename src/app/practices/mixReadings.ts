import type { UnitStyle } from '../../job/job.ts';
import { formatNumber, formatWater } from '../../units/format.ts';
import { CUBIC_METRE, LITRE } from '../../units/grid.ts';
import { parseNumber, parseVolume, parseWater } from '../../units/measure.ts';
import { fail, ok, type Result } from '../../units/result.ts';
import { type Reading, volumeReading, within } from './reading.ts';

const MOST_PARTS = 20;
const FRACTIONS: Readonly<Record<string, number>> = { '1/4': 0.25, '1/2': 0.5, '3/4': 0.75 };

/** Parts of a blend, in quarters: `1 1/2`, `1.5`, `3/4`. */
export function partsReading(parts: number): Reading {
  const parse = (text: string): Result<number> => {
    const [, whole = '', fraction] = /^\s*(.*?)\s*(\d\/\d)?\s*$/.exec(text) ?? [];
    const part = fraction === undefined ? 0 : FRACTIONS[fraction];
    const read = whole === '' && fraction !== undefined ? ok(0) : parseNumber(whole);
    if (!read.ok) return fail({ code: 'number-unreadable', where: text });
    const value = read.value + (part ?? Number.NaN);
    return Number.isInteger(value * 4) ? ok(value) : fail({ code: 'not-quarters', where: text });
  };
  return within({ text: writtenParts(parts), parse }, 0.25, MOST_PARTS, writtenParts);
}

function writtenParts(parts: number): string {
  const whole = Math.floor(parts);
  const fraction = Object.entries(FRACTIONS).find(([, value]) => value === parts - whole)?.[0];
  if (fraction === undefined) return formatNumber(parts);
  return whole === 0 ? fraction : `${whole} ${fraction}`;
}

/** Water of one bag, or none: an empty field is water that nobody has read off the bag. */
export function waterReading(
  water: number | undefined,
  bounds: { readonly least?: number | undefined; readonly most?: number | undefined },
  units: UnitStyle,
) {
  const write = (grid3: number) => formatWater(grid3, units);
  const reading = within(
    { text: '', parse: (text) => parseWater(text, units) },
    bounds.least ?? LITRE / 100,
    bounds.most ?? 100 * LITRE,
    write,
  );
  return {
    text: water === undefined ? '' : write(water),
    parse: (text: string): Result<number | null> =>
      text.trim() === '' ? ok(null) : reading.parse(text),
  };
}

/** Minutes: `240`, `4 h`, `4 h 30`, `4:30`. */
export function minutesReading(minutes: number, least: number, most: number): Reading {
  const parse = (text: string): Result<number> => {
    const hours =
      /^\s*(\d{1,3}(?:\.\d+)?)\s*(?:h|hr|hours?|horas?|:)\s*(?:(\d{1,2})\s*(?:min)?)?\s*$/i.exec(
        text,
      );
    const plain = /^\s*(.*?)\s*(?:min|minutes?|minutos?)?\s*$/i.exec(text)?.[1] ?? '';
    const read = hours ? ok(Number(hours[1]) * 60 + Number(hours[2] ?? 0)) : parseNumber(plain);
    if (!read.ok) return fail({ code: 'not-minutes', where: text });
    return Number.isInteger(read.value) ? read : fail({ code: 'not-minutes', where: text });
  };
  return within({ text: writtenMinutes(minutes), parse }, least, most, writtenMinutes);
}

function writtenMinutes(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = minutes - hours * 60;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}

/** Concrete allowed for by hand: a hundredth of a litre at least. */
export function extraReading(volume: number, units: UnitStyle): Reading {
  const { text } = volumeReading(volume, units);
  const write = (grid3: number) => volumeReading(grid3, units).text;
  return within(
    { text, parse: (typed) => parseVolume(typed, units) },
    LITRE / 100,
    6 * CUBIC_METRE,
    write,
  );
}
