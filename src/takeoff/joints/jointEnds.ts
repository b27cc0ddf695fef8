import type { Point } from '../../geometry/point.ts';
import type { JointsResult } from '../result.ts';

/** Where joints end, those of the new slab and those of the older one that come to it. */
export function jointEnds({ layout }: Pick<JointsResult, 'layout'>): readonly Point[] {
  if (!layout) return [];
  return [
    ...layout.joints.flatMap(({ from, to }) => [from, to]),
    ...layout.problems.flatMap(({ oldJoints }) => oldJoints),
  ];
}
