import type { UnitStyle } from '../../job/job.ts';
import type { PriceChange } from '../../job/prices.ts';
import type { PriceItem } from '../../takeoff/price/items.ts';
import { count, list, term } from '../../takeoff/quantity.ts';
import { parseMoney } from '../../units/money.ts';
import type { Problem } from '../../units/result.ts';
import { sayQuantity } from '../words/say.ts';
import type { Words } from '../words/words.ts';
import { csvText } from './csvText.ts';
import { readCsv } from './readCsv.ts';

/** The table of prices: an item's own name, what it is in words, what one of it is, and the price, empty where there is none. */
export function pricesCsv(words: Words, items: readonly PriceItem[], units: UnitStyle): string {
  const heads = words.csv.prices;
  return csvText([
    [heads.item, heads.what, heads.unit, heads.price],
    ...items.map(({ item, is, named, unit, price }) => [
      item,
      sayQuantity(words, list([term(is), ...named]), units),
      sayQuantity(words, count(1, unit), units),
      price === undefined ? '' : price / 100,
    ]),
  ]);
}

/** Why a line of a table of prices isn't taken. */
export type PriceLineProblem =
  /** A quote is never closed. */
  | { readonly is: 'quote'; readonly line: number }
  /** The first line names no column of items, or none of prices. */
  | { readonly is: 'heads'; readonly line: number }
  | { readonly is: 'unknown-item'; readonly line: number; readonly item: string }
  | { readonly is: 'twice'; readonly line: number; readonly item: string }
  | { readonly is: 'price'; readonly line: number; readonly problem: Problem };

export type PricesRead =
  | { readonly ok: true; readonly prices: readonly PriceChange[] }
  | { readonly ok: false; readonly problems: readonly PriceLineProblem[] };

/**
 * Prices out of a CSV file, as this program or anybody's spreadsheet wrote it: columns in any order, found by their heads,
 * in any of its languages. An empty price leaves the item as it is. One wrong line, and nothing is taken: each is told.
 * @param spoken The words of every language.
 */
export function readPrices(
  text: string,
  items: readonly PriceItem[],
  currency: string,
  spoken: readonly Words[],
): PricesRead {
  const read = readCsv(text);
  if (!read.ok) return { ok: false, problems: [{ is: 'quote', line: read.line }] };
  const [head, ...records] = read.records;
  const place = (name: 'item' | 'price') =>
    head?.fields.findIndex((field) =>
      spoken.some(({ csv }) => csv.prices[name].toLowerCase() === field.trim().toLowerCase()),
    ) ?? -1;
  const [itemAt, priceAt] = [place('item'), place('price')];
  if (itemAt < 0 || priceAt < 0) {
    return { ok: false, problems: [{ is: 'heads', line: head?.line ?? 1 }] };
  }
  const known = new Set(items.map(({ item }) => item));
  const seen = new Set<string>();
  const prices: PriceChange[] = [];
  const problems: PriceLineProblem[] = [];
  for (const { line, fields } of records) {
    const item = (fields[itemAt] ?? '').trim();
    const typed = (fields[priceAt] ?? '').trim();
    if (!known.has(item)) {
      problems.push({ is: 'unknown-item', line, item });
      continue;
    }
    if (seen.has(item)) {
      problems.push({ is: 'twice', line, item });
      continue;
    }
    seen.add(item);
    if (typed === '') continue;
    const price = parseMoney(typed, currency);
    if (price.ok) prices.push({ item, price: price.value });
    else problems.push({ is: 'price', line, problem: price.problems[0]! });
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, prices };
}
