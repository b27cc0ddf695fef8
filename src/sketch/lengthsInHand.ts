import type { UnitStyle } from '../job/job.ts';
import { formatLength } from '../units/length.ts';
import type { Showing } from './tools/machine.ts';

/** The edges of the outline in hand, measured: what the tape would read while it is drawn. */
export function lengthsOf({ path, closed }: Showing, units: UnitStyle): readonly string[] {
  const ends = closed ? [...path, ...path.slice(0, 1)] : path;
  return ends.slice(1).map((to, index) => {
    const from = ends[index] ?? to;
    return formatLength(Math.hypot(to.x - from.x, to.y - from.y), units);
  });
}
