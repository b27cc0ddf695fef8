import type { Grid } from '../../units/grid.ts';
import { findEdge, withCorners } from '../find.ts';
import type { Job } from '../job.ts';
import type { Outcome } from '../refusal.ts';

/** How far the edge that leaves a corner bulges: positive to the right of its direction; 0 straight. */
export interface SetRise {
  readonly do: 'set-rise';
  readonly feature: string;
  readonly corner: string;
  readonly rise: Grid;
}

export function setRise(job: Job, { feature, corner, rise }: SetRise): Outcome {
  const found = findEdge(job, feature, corner);
  if (!found.ok) return found;
  if (found.value.corner.rise === rise) return { ok: true, value: job };
  const risen = { ...found.value.corner, rise };
  const corners = found.value.outline.corners.with(found.value.index, risen);
  return { ok: true, value: withCorners(job, found.value, corners) };
}
