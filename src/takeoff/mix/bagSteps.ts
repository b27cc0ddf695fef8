import type { Practices } from '../../job/job.ts';
import type { WorkingStep } from '../figure.ts';
import { halfBags } from '../quantity.ts';
import type { BagCount } from '../result.ts';
import { mixOf } from './batchList.ts';

export function totalOf(bags: readonly BagCount[]): number {
  return bags.reduce((sum, each) => sum + each.bags, 0);
}

export function bagStep(practices: Practices, { mix, bags }: BagCount): WorkingStep {
  return { label: mixOf(mix, practices.mix.mixes).name, value: halfBags(bags) };
}
