import { riseThrough } from '../edge.ts';
import { edgeEnd, edgeStart, findCorner, withCorners } from '../find.ts';
import type { Corner, Job } from '../job.ts';
import type { Outcome } from '../refusal.ts';
import { heldBy, withAttachmentsTo } from '../settle.ts';

/**
 * The two edges at the corner become one: straight, or an arc where both were arcs to the same side. Corners of others
 * on those edges stay on the new one if it passes through them, else they let go and stay where they are.
 */
export interface RemoveCorner {
  readonly do: 'remove-corner';
  readonly feature: string;
  readonly corner: string;
}

export function removeCorner(job: Job, { feature, corner }: RemoveCorner): Outcome {
  const found = findCorner(job, feature, corner);
  if (!found.ok) return found;
  const { outline, index, corner: gone } = found.value;
  const before = edgeStart(outline, index);
  const after = edgeEnd(outline, index);
  const rise =
    before && after && before !== after && before.rise * gone.rise > 0
      ? riseThrough(before, gone, after)
      : 0;
  const corners = outline.corners
    .filter((one) => one !== gone)
    .map((one): Corner => (one === before ? { ...one, rise } : one));
  const next = withCorners(job, found.value, corners);
  return {
    ok: true,
    value: withAttachmentsTo(next, feature, (on, held) => {
      if (on.corner !== corner && on.corner !== before?.id) return on;
      return before ? heldBy(next, { ...on, corner: before.id }, held) : null;
    }),
  };
}
