import { locate, turn } from '../../geometry/locate.ts';
import type { Point } from '../../geometry/point.ts';
import type { Job, Outline } from '../../job/job.ts';

/** Whether a tape can't be stretched from one place to another because a building or steps stand between. */
export type Blocks = (from: Point, to: Point) => boolean;

/** What stands in the way of a tape: walls, and steps, over which it wouldn't lie flat. Arcs count by their chords. */
export function blocksOf({ features }: Job): Blocks {
  const standing = features.flatMap(({ kind, shape }): Outline[] =>
    (kind === 'building-line' || kind === 'steps') && shape.form === 'outline' ? [shape] : [],
  );
  return (from, to) => standing.some((outline) => blocks(outline, from, to));
}

function blocks({ corners, closed }: Outline, from: Point, to: Point): boolean {
  const ends = closed ? corners.length : corners.length - 1;
  for (let i = 0; i < ends; i++) {
    if (crosses(from, to, corners[i]!, corners[(i + 1) % corners.length]!)) return true;
  }
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  return closed && locate(middle, corners) === 'inside';
}

/** Whether two straights cross between their ends: touching is no crossing. Exact on the grid. */
function crosses(a: Point, b: Point, c: Point, d: Point): boolean {
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}
