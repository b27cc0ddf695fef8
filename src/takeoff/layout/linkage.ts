import type { Point } from '../../geometry/point.ts';
import { between } from './corners.ts';
import { LEAN_MOST } from './rules.ts';
import { crossing } from './tapeTies.ts';

export type Four<T> = readonly [T, T, T, T];

export function eachOf<T, U>([a, b, c, d]: Four<T>, make: (one: T, at: number) => U): Four<U> {
  return [make(a, 0), make(b, 1), make(c, 2), make(d, 3)];
}

/** The same four, begun at another. */
export function begunAt<T>(four: Four<T>, first: number): Four<T> {
  return eachOf(four, (_, at) => four[(first + at) % 4]!);
}

/** Lengths of the sides that leave the first, second, third and fourth corner. */
export type Sides = Four<number>;

/** A form as it stands and as it was meant, with its first corner and the line of its first side in common. */
export interface Linked {
  readonly stands: Four<Point>;
  readonly meant: Four<Point>;
}

/** Halvings of the angle: from 40° to less than a float can tell. */
const HALVINGS = 60;

/**
 * Four sides of known length, joined at their corners, lean one way or the other: one angle decides, and as it opens
 * the second diagonal grows while the first shrinks. Finds the lean at which second − first is `difference`; nothing when
 * no lean within LEAN_MOST of the meant one gives it. Floats; corners near those meant, in the same frame.
 * Source: geometry.
 */
export function linkage(sides: Sides, difference: number, meant: Four<Point>): Linked | undefined {
  const [a, b, , d] = meant;
  const reach = between(a, b);
  const [ux, uy] = [(b.x - a.x) / reach, (b.y - a.y) / reach];
  // In the frame of the first side: along it, and to the side on which the form lies.
  const along = ux * (d.x - a.x) + uy * (d.y - a.y);
  const left = ux * (d.y - a.y) - uy * (d.x - a.x);
  const way = Math.sign(left);
  const opening = Math.atan2(Math.abs(left), along);
  const lean = (LEAN_MOST * Math.PI) / 180;
  const over = (angle: number) => {
    const four = linked(sides, angle);
    return four && between(four[1], four[3]) - between(four[0], four[2]) - difference;
  };
  let [low, high] = [Math.max(opening - lean, 1e-3), Math.min(opening + lean, Math.PI - 1e-3)];
  // The far side may not reach at the ends of the range: come in until it does.
  const [lowest, highest] = [inward(over, low, opening), inward(over, high, opening)];
  if (lowest === undefined || highest === undefined) return undefined;
  [low, high] = [lowest, highest];
  if (over(low)! > 0 || over(high)! < 0) return undefined;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (over(middle)! < 0) low = middle;
    else high = middle;
  }
  const found = linked(sides, (low + high) / 2);
  if (!found) return undefined;
  const place = ({ x, y }: Point): Point => ({
    x: a.x + ux * x - uy * way * y,
    y: a.y + uy * x + ux * way * y,
  });
  return { stands: eachOf(found, place), meant };
}

/** The outermost of a few angles between an end of the range and the meant one at which the form closes. */
function inward(
  over: (angle: number) => number | undefined,
  end: number,
  meant: number,
): number | undefined {
  for (let share = 0; share <= 1; share += 1 / 64) {
    const angle = end + share * (meant - end);
    if (over(angle) !== undefined) return angle;
  }
  return undefined;
}

/** The corners when the side to the last stands at this angle on the first; nothing when the others don't reach. */
function linked([ab, bc, cd, da]: Sides, angle: number): Four<Point> | undefined {
  const b = { x: ab, y: 0 };
  const d = { x: da * Math.cos(angle), y: da * Math.sin(angle) };
  const bd = between(b, d);
  // Third corner on the far side of the diagonal from the first.
  const far = crossing(cd, bc, bd);
  if (!far) return undefined;
  const [vx, vy] = [(b.x - d.x) / bd, (b.y - d.y) / bd];
  return [
    { x: 0, y: 0 },
    b,
    { x: d.x + vx * far.x - vy * far.y, y: d.y + vy * far.x + vx * far.y },
    d,
  ];
}
