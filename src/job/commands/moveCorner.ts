import type { Point } from '../../geometry/point.ts';
import { findCorner, withCorners } from '../find.ts';
import type { Attachment, Corner, Job } from '../job.ts';
import type { Outcome } from '../refusal.ts';

export interface MoveCorner {
  readonly do: 'move-corner';
  readonly feature: string;
  readonly corner: string;
  readonly to: Point;
  /** Stay on this edge; the corner is then put on it at `t`. Without: let go of the edge it was on. */
  readonly on?: Attachment;
}

export function moveCorner(job: Job, { feature, corner, to, on }: MoveCorner): Outcome {
  const found = findCorner(job, feature, corner);
  if (!found.ok) return found;
  const { id, rise } = found.value.corner;
  const moved: Corner = { id, x: to.x, y: to.y, rise, ...(on ? { on } : {}) };
  const corners = found.value.outline.corners.with(found.value.index, moved);
  return { ok: true, value: withCorners(job, found.value, corners) };
}
