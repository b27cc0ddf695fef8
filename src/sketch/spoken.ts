import type { Job } from '../job/job.ts';
import { formatLength } from '../units/length.ts';
import { lengthOf } from './edgeMeasures.ts';
import { edgeLetters, featureName } from './featureName.ts';
import type { SiteStake } from './formLine.ts';
import { runEnds } from './runEnds.ts';
import type { Snap } from './snap.ts';
import type { Selection } from './tools/tool.ts';
import type { SketchWords } from './words/en.ts';

/** Why the point lies where it does, in words. */
export function spokenSnap({ reasons }: Snap, words: SketchWords): string {
  return words.stage.snapped(reasons.map((reason) => words.snaps[reason]));
}

/** What is selected, for somebody who doesn't see it. */
export function spokenSelection(job: Job, selection: Selection | null, words: SketchWords): string {
  const feature = job.features.find(({ id }) => id === selection?.feature);
  if (!feature || !selection) return words.stage.nothingSelected;
  const name = featureName(job, feature, words);
  const { corner } = selection;
  const letters = corner ? edgeLetters(feature, corner) : null;
  const length = corner ? lengthOf(feature, corner) : null;
  if (!letters || length === null) return words.stage.selectedFeature(name);
  return words.stage.selectedCorner(
    name,
    letters.from,
    `${letters.from}–${letters.to}`,
    formatLength(length, job.units),
  );
}

/** The stake that is picked, and where it is. */
export function spokenStake(job: Job, stake: SiteStake, words: SketchWords): string {
  const { is, run, along } = stake;
  const { start } = runEnds(job, run, words);
  return words.stakes.selected(
    words.stakes.named[is](run.mark),
    formatLength(along, job.units),
    start,
  );
}
