import type { UnitProblemCode } from './problems.ts';
import { decimal, nearestWhole, ratio, times } from './ratio.ts';
import { fail, ok, type Result } from './result.ts';
import { plain, unclearComma } from './typed.ts';

/** An amount of money in whole hundredths of the currency (cents): sums of prices are exact. */
export type Money = number;

/** The most that one price or sum may be: a hundred million. */
export const MOST_MONEY: Money = 10_000_000_000;

/**
 * A price: `12.50`, `12.5`, `12`, `12.`, with the currency's sign in front or behind (`$12.50`, `12.50 $`). A comma is a
 * decimal comma, unless three digits follow it, as in volumes and weights: `12,50` is read, `1,250` is refused.
 * More than two places is no price. Exact: nothing is rounded.
 */
export function parseMoney(typed: string, currency: string): Result<Money> {
  const refuse = (code: UnitProblemCode) => fail({ code, where: typed });
  const read = plain(typed);
  if (!read) return refuse('money-unreadable');
  const text = withoutSign(read.text, currency.trim().toLowerCase());
  if (text === '')
    return refuse(read.text === '' && !read.signed ? 'money-empty' : 'money-unreadable');
  if (unclearComma(text)) return refuse('money-comma');
  const digits = text.replace(',', '.');
  if (!/^(\d+\.?\d*|\.\d+)$/.test(digits)) return refuse('money-unreadable');
  const { whole, exact } = nearestWhole(times(decimal(digits), ratio(100)));
  if (!exact) return refuse('money-places');
  if ((read.negative && whole !== 0n) || whole > BigInt(MOST_MONEY)) return refuse('money-range');
  return ok(Number(whole));
}

/** The number without the currency's sign, which stands on one side of it. */
function withoutSign(text: string, sign: string): string {
  if (sign !== '' && text.startsWith(sign)) return text.slice(sign.length).trim();
  if (sign !== '' && text.endsWith(sign)) return text.slice(0, -sign.length).trim();
  return text;
}

/** An amount as `$12.50`; a sign that ends in a letter stands apart (`kr 12.50`). No thousands mark: it reads back. */
export function formatMoney(money: Money, currency: string): string {
  const cents = Math.round(Math.abs(money));
  const sign = currency.trim();
  const apart = /\p{Letter}$/u.test(sign) ? ' ' : '';
  const rest = String(cents % 100).padStart(2, '0');
  return `${money < 0 && cents > 0 ? '-' : ''}${sign}${apart}${Math.floor(cents / 100)}.${rest}`;
}
