import type { Job, JointUse } from '../../job/job.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { line } from '../furniture.ts';
import type { PageWords } from '../sheetOptions.ts';
import { type LegendRow, rowsSaying } from './legendRow.ts';

const SAMPLE_MM = 15;

const USES: readonly JointUse[] = ['control', 'construction', 'existing'];

/**
 * A row for each kind of joint that is on the plan, by its line and the letter in it.
 * @param words From the left of a row to its words, mm.
 */
export function jointRows(
  { features }: Job,
  { joints }: Takeoff,
  { drawing }: Pick<PageWords, 'drawing'>,
  words: number,
): readonly LegendRow[] {
  const drawn = new Set<JointUse>([
    ...features.flatMap((feature) => (feature.kind === 'joint' ? [feature.joint] : [])),
    ...(joints?.layout?.joints ?? []).map(({ kind }) => kind),
  ]);
  return USES.filter((use) => drawn.has(use)).flatMap((use) => {
    const { letter, name } = drawing.joints[use];
    return rowsSaying(`${letter}: ${name}`, words, (x, y) => [
      line(x, y - 1.1, x + SAMPLE_MM, y - 1.1, `joint-${use}`),
    ]);
  });
}
