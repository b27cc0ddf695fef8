import { boxOf } from '../../geometry/box.ts';
import type { Point } from '../../geometry/point.ts';
import { edgeEnd, findFeature, withFeature } from '../find.ts';
import type { Corner, Feature, Job, Outline, Shape } from '../job.ts';
import type { Outcome } from '../refusal.ts';
import { placedAt, withAttachmentsTo } from '../settle.ts';

/**
 * Across a vertical or horizontal line through its middle, unless another place is said. The corners are then listed
 * the other way round, so that the outline keeps running the same way.
 */
export interface MirrorFeature {
  readonly do: 'mirror-feature';
  readonly feature: string;
  readonly across: 'vertical' | 'horizontal';
  readonly about?: Point;
}

export function mirrorFeature(job: Job, { feature: id, across, about }: MirrorFeature): Outcome {
  const found = findFeature(job, id);
  if (!found.ok) return found;
  const { shape } = found.value;
  // Twice the middle is on the grid even where the middle isn't.
  const { minX, minY, maxX, maxY } =
    shape.form === 'round' ? boxOf([shape.center]) : boxOf(shape.corners);
  const twiceX = about ? 2 * about.x : minX + maxX;
  const twiceY = about ? 2 * about.y : minY + maxY;
  const mirrored = ({ x, y }: Point): Point =>
    across === 'vertical' ? { x: twiceX - x, y } : { x, y: twiceY - y };

  const next: Shape =
    shape.form === 'round'
      ? { ...shape, center: mirrored(shape.center) }
      : { ...shape, corners: turnedAbout(job, shape, mirrored) };
  const changed = withFeature(job, { ...found.value, shape: next } as Feature);
  if (shape.form === 'round') return { ok: true, value: changed };
  return {
    ok: true,
    value: withAttachmentsTo(changed, id, (on) => {
      const index = shape.corners.findIndex((corner) => corner.id === on.corner);
      const end = edgeEnd(shape, index);
      return end ? { ...on, corner: end.id, t: 1 - on.t } : null;
    }),
  };
}

/**
 * Mirroring puts an arc on the other side of its edge, and running the edge backwards puts it on the other side again:
 * so each edge keeps its rise, but leaves from the corner at which it used to arrive.
 */
function turnedAbout(
  job: Job,
  { corners }: Outline,
  mirrored: (place: Point) => Point,
): readonly Corner[] {
  const count = corners.length;
  return corners.map((_, index) => {
    const corner = corners[count - 1 - index] as Corner;
    const edge = corners[(2 * count - 2 - index) % count] as Corner;
    return { ...placedAt(job, corner, mirrored(corner)), rise: edge.rise };
  });
}
