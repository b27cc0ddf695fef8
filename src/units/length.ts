import { EXTENT_LIMIT, FOOT, type Grid, MILLIMETRE, SIXTY_FOURTH } from './grid.ts';
import type { UnitProblemCode } from './problems.ts';
import { nearestWhole } from './ratio.ts';
import { fail, ok, type Result } from './result.ts';
import { plain, unclearComma } from './typed.ts';
import {
  type AssumedUnit,
  endsInMetric,
  type LengthStyle,
  writtenLength,
} from './writtenLength.ts';

/** A length as it was understood, so that the screen can say how a bare number was taken. */
export interface LengthReading {
  readonly grid: Grid;
  /** False when what was typed lies between two grid units and the nearest was taken (1/640 mm at most). */
  readonly exact: boolean;
  /** The unit that a bare number was taken to be in; absent when the unit was typed. */
  readonly assumed?: AssumedUnit;
}

/** Longer than any flatwork: 2 km. What is more is a slip of the finger. (A job may be 200 m across.) */
const ABSURD = BigInt(10 * EXTENT_LIMIT);

/**
 * Reads a length the way tradespeople write it. Understood in every style: `12'-4 1/2"`, `12' 4 1/2"`, `12'4.5`,
 * `12 ft 4 in`, `12.25'`, `12.25 ft`, `148.5"`, `148.5 in`, `4-1/2"`, `4½"`, `3.76 m`, `376 cm`, `3760 mm`,
 * `3 760 mm`, `3,76 m`, `5 yd`, each with a minus sign in front.
 *
 * Numbers without a unit:
 * - feet-inches: one number or a number and a fraction is inches, as the tape reads (`12` = 12", `4 1/2` = 4 1/2");
 *   two numbers are feet and inches (`12-4.5`, `12 4 1/2` = 12'-4 1/2"). `12-1/2` is refused: it is written for
 *   12 1/2" as often as for 12'-0 1/2".
 * - decimal-feet: one number is feet; two are feet and inches; a bare fraction needs a unit.
 * - metric: a whole number is millimetres, one with a decimal point or comma is metres (the rule of metric building
 *   drawings, from memory); fractions need a unit.
 *
 * A comma is a decimal comma in metric alone. `3,760 mm` is refused, since it can be read two ways; `3,760 m` can't,
 * since no job is kilometres long, and a bare `3,760` is the same length both ways.
 *
 * Exact: kept as a ratio of whole numbers and rounded to the nearest grid unit only at the end.
 */
export function readLength(typed: string, style: LengthStyle): Result<LengthReading> {
  const refuse = (code: UnitProblemCode, facts?: Readonly<Record<string, string>>) =>
    fail({ code, where: typed, ...(facts ? { facts } : {}) });

  const read = plain(typed);
  if (!read) return refuse('length-unreadable');
  if (read.text === '') return refuse(read.signed ? 'length-unreadable' : 'length-empty');
  const text = withoutComma(read.text, style);
  if (text === null) return refuse('length-comma');
  const written = writtenLength(text, style);
  if ('refused' in written) {
    const { one, other } = written.facts ?? {};
    const sign = read.negative ? '-' : '';
    return one === undefined
      ? refuse(written.refused)
      : refuse(written.refused, { one: `${sign}${one}`, other: `${sign}${other}` });
  }
  const { whole, exact } = nearestWhole(written.length);
  if (whole > ABSURD) return refuse('length-absurd');
  const grid = read.negative && whole !== 0n ? -Number(whole) : Number(whole);
  return ok({ grid, exact, ...(written.assumed ? { assumed: written.assumed } : {}) });
}

/** The text with its decimal comma turned into a point; null when the comma can be read two ways. */
function withoutComma(text: string, style: LengthStyle): string | null {
  if (!text.includes(',')) return text;
  const unit = endsInMetric(text);
  if (!unit && (style !== 'metric' || /[^\d,]/.test(text))) return null;
  if (/,.*[,.]|\..*,/.test(text)) return null;
  return unclearComma(text) && unit === 'smaller' ? null : text.replace(',', '.');
}

/** The length alone, in grid units; see readLength for what is understood. */
export function parseLength(typed: string, style: LengthStyle): Result<Grid> {
  const reading = readLength(typed, style);
  return reading.ok ? ok(reading.value.grid) : reading;
}

/** How a number typed without a unit is taken, written out (`12` = 1'-0"); null when there is nothing to say. */
export function bareLength(typed: string, style: LengthStyle): string | null {
  const reading = readLength(typed, style);
  if (!reading.ok || !reading.value.assumed) return null;
  return formatLength(reading.value.grid, style, { fraction: 64 });
}

export interface LengthFormat {
  /** Feet-inches are rounded to one of this many parts of an inch. 16 when not said. */
  readonly fraction?: 2 | 4 | 8 | 16 | 32 | 64;
}

/** A written length, and whether it is the length itself or was rounded to be written. */
export interface LengthText {
  readonly text: string;
  readonly exact: boolean;
}

/**
 * Writes a length: `12'-4 1/2"` (zero inches are kept; under a foot inches alone), `12.375 ft` (two places, or three),
 * `3760 mm` under 10 m and `12.345 m` from there on. The minus sign stands in front of the whole; zero has none.
 * Lengths that came from a square root may lie between grid units; they are rounded once, here.
 */
export function formatLength(grid: Grid, style: LengthStyle, format?: LengthFormat): string {
  return formatLengthDetail(grid, style, format).text;
}

export function formatLengthDetail(
  grid: Grid,
  style: LengthStyle,
  { fraction = 16 }: LengthFormat = {},
): LengthText {
  const size = Math.abs(grid);
  const signed = (text: string, exact: boolean, isZero: boolean): LengthText => ({
    text: grid < 0 && !isZero ? `-${text}` : text,
    exact,
  });
  if (style === 'feet-inches') {
    const part = (SIXTY_FOURTH * 64) / fraction;
    const parts = Math.round(size / part);
    return signed(feetInches(parts, fraction), parts * part === size, parts === 0);
  }
  if (style === 'decimal-feet') {
    const thousandths = Math.round((size * 1000) / FOOT);
    const text = (thousandths / 1000).toFixed(thousandths % 10 === 0 ? 2 : 3);
    return signed(`${text} ft`, thousandths * FOOT === size * 1000, thousandths === 0);
  }
  const millimetres = Math.round(size / MILLIMETRE);
  const text = millimetres < 10_000 ? `${millimetres} mm` : `${(millimetres / 1000).toFixed(3)} m`;
  return signed(text, millimetres * MILLIMETRE === size, millimetres === 0);
}

function feetInches(parts: number, fraction: number): string {
  const feet = Math.floor(parts / (12 * fraction));
  const inches = Math.floor(parts / fraction) % 12;
  let top = parts % fraction;
  let bottom = fraction;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const rest = top > 0 ? `${top}/${bottom}` : '';
  if (feet > 0) return `${feet}'-${inches}${rest ? ` ${rest}` : ''}"`;
  if (inches > 0 || !rest) return `${inches}${rest ? ` ${rest}` : ''}"`;
  return `${rest}"`;
}
