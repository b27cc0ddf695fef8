import type { BagMix } from '../../job/job.ts';
import type { BagsOf } from '../../job/pourLog.ts';
import { formatNumber } from '../../units/format.ts';
import type { pourDayEn } from '../words/pourDayEn.ts';

/** A mix by its name; one that the job no longer lists by its id. */
export function nameOfMix(id: string, mixes: readonly BagMix[]): string {
  return mixes.find((one) => one.id === id)?.name ?? id;
}

/** `2 × Regular, 80 lb + 1 × Fast-setting, 50 lb`. */
export function sayBags(
  words: typeof pourDayEn,
  list: readonly BagsOf[],
  mixes: readonly BagMix[],
): string {
  return list
    .map(({ mix, bags }) => words.pour.bags(formatNumber(bags), nameOfMix(mix, mixes)))
    .join(' + ');
}
