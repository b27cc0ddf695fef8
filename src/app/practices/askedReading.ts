import type { UnitStyle } from '../../job/job.ts';
import { formatNumber } from '../../units/format.ts';
import { parseNumber } from '../../units/measure.ts';
import { fail, ok, type Result } from '../../units/result.ts';
import type { AskedField, UnitKey } from './field.ts';

/** How something that may be unknown reads, and how what is typed is read back: an empty field is what nobody has said. */
export interface AskedReading {
  readonly text: string;
  readonly parse: (text: string) => Result<number | null>;
  readonly unit: UnitKey;
}

export function askedReading(
  { whole, unit: measuredIn, least, most }: Pick<AskedField, 'whole' | 'unit' | 'least' | 'most'>,
  value: number | null,
  units: UnitStyle,
): AskedReading {
  const [unit, one] = units === 'metric' ? measuredIn.metric : measuredIn.other;
  const write = (kept: number) => formatNumber(kept / one);
  return {
    unit,
    text: value === null ? '' : write(value),
    parse: (text) => {
      if (text.trim() === '') return ok(null);
      const read = parseNumber(text);
      if (!read.ok) return read;
      if (whole && !Number.isInteger(read.value)) return fail({ code: 'not-whole', where: text });
      const kept = read.value * one;
      if (kept >= least && kept <= most) return ok(kept);
      return fail({
        code: 'out-of-range',
        where: text,
        facts: { least: write(least), most: write(most) },
      });
    },
  };
}
