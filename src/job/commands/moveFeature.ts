import type { Point } from '../../geometry/point.ts';
import { findFeature } from '../find.ts';
import type { Job } from '../job.ts';
import type { Outcome } from '../refusal.ts';
import { withPlaces } from '../wholeShape.ts';

/** Corners of other features that stay on its edges come along. */
export interface MoveFeature {
  readonly do: 'move-feature';
  readonly feature: string;
  readonly by: Point;
}

export function moveFeature(job: Job, { feature, by }: MoveFeature): Outcome {
  const found = findFeature(job, feature);
  if (!found.ok) return found;
  if (by.x === 0 && by.y === 0) return { ok: true, value: job };
  return {
    ok: true,
    value: withPlaces(job, found.value, ({ x, y }) => ({ x: x + by.x, y: y + by.y })),
  };
}
