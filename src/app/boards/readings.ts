import { MOST_BOARDS } from '../../job/boardLists.ts';
import type { UnitStyle } from '../../job/job.ts';
import { FOOT, type Grid, INCH, METRE } from '../../units/grid.ts';
import { bareLength, formatLength, readLength } from '../../units/length.ts';
import { formatMoney, type Money, parseMoney } from '../../units/money.ts';
import { fail, ok, type Result } from '../../units/result.ts';
import { countReading, type Reading, within } from '../practices/reading.ts';

/** Of the schema: a board is a foot long at least, and no longer than a long truck carries. */
const LEAST = FOOT;
const MOST = 20 * METRE;
/** A bare number up to here is a board's length in feet as likely as in inches. */
const FEET_OR_INCHES = 24 * INCH;

/**
 * A board's length. The tape reads a bare 12 as inches, but of a board everybody says “twelve” and means feet: so a bare
 * number up to 24 is asked back, and neither is guessed.
 */
function boardLength(typed: string, units: UnitStyle): Result<Grid> {
  const read = readLength(typed, units);
  if (!read.ok) return read;
  const { grid, assumed } = read.value;
  if (assumed === 'inches' && grid > 0 && grid <= FEET_OR_INCHES) {
    const facts = { one: formatLength(grid * 12, units), other: formatLength(grid, units) };
    return fail({ code: 'length-ambiguous', where: typed, facts });
  }
  return ok(grid);
}

/** How a bare number was taken, where there is nothing to ask back. */
export function boardTakenAs(typed: string, units: UnitStyle): string | null {
  return boardLength(typed, units).ok ? bareLength(typed, units) : null;
}

export function boardLengthReading(length: Grid, units: UnitStyle): Reading {
  const write = (grid: Grid) => formatLength(grid, units);
  const reading = { text: write(length), parse: (text: string) => boardLength(text, units) };
  return within(reading, LEAST, MOST, write);
}

export function boardCountReading(count: number): Reading {
  return countReading(count, 1, MOST_BOARDS);
}

/** A price, or none: an empty field is a price that isn't known. */
export function priceReading(price: Money | undefined, currency: string) {
  return {
    text: price === undefined ? '' : formatMoney(price, currency),
    parse: (text: string): Result<Money | null> =>
      text.trim() === '' ? ok(null) : parseMoney(text, currency),
  };
}
