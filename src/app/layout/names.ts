import type { Job } from '../../job/job.ts';
import { featureName } from '../../sketch/featureName.ts';
import type { Baseline } from '../../takeoff/layout/baseline.ts';
import type { TapeMark } from '../../takeoff/layout/tapeTies.ts';
import { formatLength } from '../../units/length.ts';
import type { AllWords } from '../words/words.ts';

export function nameOf(job: Job, id: string, words: AllWords): string {
  const feature = job.features.find((one) => one.id === id);
  return feature ? featureName(job, feature, words.sketch) : '';
}

export function edgeName(job: Job, { feature, letters, length }: Baseline, words: AllWords) {
  const long = formatLength(Math.round(length), job.units);
  return words.app.layout.edge(nameOf(job, feature, words), ...letters, long);
}

export function markName(job: Job, { feature, letter }: TapeMark, words: AllWords): string {
  return words.app.layout.corner(nameOf(job, feature, words), letter);
}
