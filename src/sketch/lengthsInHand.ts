import type { Point } from '../geometry/point.ts';
import type { Job, UnitStyle } from '../job/job.ts';
import { formatLength } from '../units/length.ts';
import { edgesOf } from './site.ts';
import type { Showing } from './tools/machine.ts';

/** The edges of the outline in hand, measured: what the tape would read while it is drawn. */
export function lengthsOf({ path, closed }: Showing, units: UnitStyle): readonly string[] {
  const ends = closed ? [...path, ...path.slice(0, 1)] : path;
  return ends.slice(1).map((to, index) => {
    const from = ends[index] ?? to;
    return formatLength(Math.hypot(to.x - from.x, to.y - from.y), units);
  });
}

/** A length written beside the middle of its edge. */
export interface WrittenLength {
  readonly at: Point;
  readonly text: string;
}

/** The edges on both sides of the corner that is dragged, as they are now. */
export function lengthsBesideMoving(job: Job, { moving }: Showing): readonly WrittenLength[] {
  const feature = moving && job.features.find(({ id }) => id === moving.feature);
  if (!feature) return [];
  return edgesOf(feature)
    .filter(({ from, to }) => from.id === moving.corner || to.id === moving.corner)
    .map(({ from, to, middle }) => ({
      at: middle,
      text: formatLength(Math.hypot(to.x - from.x, to.y - from.y), job.units),
    }));
}
