import { add, decimal, type Ratio, ratio, times, toNumber } from './ratio.ts';
import { fail, ok, type Result } from './result.ts';
import { plain } from './typed.ts';

/** Minutes come only after a degree sign: else `45'` would be 4 degrees and 5 minutes. */
const DEGREES = new RegExp(
  [
    '^(?:(\\d+) (\\d+)/([1-9]\\d*)|(\\d+\\.?\\d*|\\.\\d+))',
    '(?: ?(?:°|deg\\.?|degrees?)',
    '(?: ?(\\d+\\.?\\d*) ?(?:\'|min)(?: ?(\\d+\\.?\\d*) ?(?:"|sec))?)?)?$',
  ].join(''),
);

/**
 * An angle in degrees, within a full turn either way: `45`, `45°`, `22.5 deg`, `22 1/2`, `-30`, `45° 30' 15"`.
 * A comma is a decimal comma.
 */
export function parseAngle(typed: string): Result<number> {
  const read = plain(typed);
  if (read?.text === '' && !read.signed) return fail({ code: 'angle-empty', where: typed });
  const found = read && DEGREES.exec(read.text.replace(',', '.'));
  if (!found) return fail({ code: 'angle-unreadable', where: typed });
  const [, whole, top, bottom, number, minutes = '0', seconds = '0'] = found;
  const degrees: Ratio =
    number === undefined
      ? add(decimal(whole ?? '0'), ratio(BigInt(top ?? '0'), BigInt(bottom ?? '1')))
      : decimal(number);
  const parts = add(times(decimal(minutes), ratio(1, 60)), times(decimal(seconds), ratio(1, 3600)));
  const angle = toNumber(add(degrees, parts));
  if (angle > 360) return fail({ code: 'angle-range', where: typed });
  return ok(read.negative && angle !== 0 ? -angle : angle);
}
