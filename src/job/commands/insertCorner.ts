import type { Point } from '../../geometry/point.ts';
import { nearestAlong, riseOfPart } from '../edge.ts';
import { findEdge, withCorners } from '../find.ts';
import type { Attachment, Corner, Job } from '../job.ts';
import type { Outcome } from '../refusal.ts';
import { withAttachmentsTo } from '../settle.ts';

/** An arc becomes two arcs of the same circle. Corners of others on the edge stay on the part they were on. */
export interface InsertCorner {
  readonly do: 'insert-corner';
  readonly feature: string;
  /** The corner at which the edge starts. */
  readonly after: string;
  readonly at: Point;
  readonly on?: Attachment;
}

export function insertCorner(job: Job, { feature, after, at, on }: InsertCorner): Outcome {
  const found = findEdge(job, feature, after);
  if (!found.ok) return found;
  const { outline, corner: start, end, index } = found.value;
  const share = nearestAlong(start, end, at);
  const first: Corner = { ...start, rise: riseOfPart(start, end, share) };
  const second: Corner = {
    id: `c${job.nextId}`,
    x: at.x,
    y: at.y,
    rise: riseOfPart(start, end, 1 - share),
    ...(on ? { on } : {}),
  };
  const corners = outline.corners.toSpliced(index, 1, first, second);
  const next = withCorners({ ...job, nextId: job.nextId + 1 }, found.value, corners);
  return {
    ok: true,
    value: withAttachmentsTo(next, feature, (held) => {
      if (held.corner !== after) return held;
      return held.t <= share && share > 0
        ? { ...held, t: held.t / share }
        : { ...held, corner: second.id, t: share < 1 ? (held.t - share) / (1 - share) : 1 };
    }),
  };
}
