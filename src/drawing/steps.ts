import { distanceToEdge } from '../geometry/locate.ts';
import type { Point } from '../geometry/point.ts';
import type { Job, Steps } from '../job/job.ts';
import { addLine, FEATURE } from './clearance.ts';
import { type Board, toMm } from './dimension/board.ts';
import type { Mark } from './marks.ts';
import { polyline, shapePath, sidesOf } from './paths.ts';

/** An arrow up a flight, mm of output: its head, and how long it must be to be drawn. */
const HEAD_MM = 2.4;
const LEAST_MM = 9;

/** More treads than this are drawn as this many: the lines would run together. */
const MOST_TREADS = 40;

type Pair = readonly [Point, Point];

/** Tread lines across four-cornered steps, and an arrow the way up: toward the nearest building. */
export function drawTreads(board: Board, steps: Steps, job: Job): readonly Mark[] {
  const { corners, closed } = steps.shape;
  const count = Math.min(steps.treads, MOST_TREADS);
  if (!closed || corners.length !== 4 || count < 1 || !shapePath(steps.shape)) return [];
  const [a, b, c, d] = corners as unknown as readonly [Point, Point, Point, Point];
  const flights: readonly (readonly [Pair, Pair])[] = [
    [
      [a, b],
      [d, c],
    ],
    [
      [b, c],
      [a, d],
    ],
  ];
  const walls = wallSides(job);
  const away = (pair: Pair) => nearness(middle(pair), walls);
  // Up the flight whose ends differ most in how near a wall they are; with no wall, across the longer sides.
  const gain = ([low, high]: readonly [Pair, Pair]) => Math.abs(away(low) - away(high));
  const wide = ([low, high]: readonly [Pair, Pair]) => span(low) + span(high);
  const rank = walls.length > 0 ? gain : wide;
  const [first, second] = flights as [readonly [Pair, Pair], readonly [Pair, Pair]];
  const [one, other] = rank(first) >= rank(second) ? first : second;
  const [low, high] = away(one) < away(other) ? [other, one] : [one, other];
  const treads = Array.from({ length: count - 1 }, (_, i): Mark => {
    const share = (i + 1) / count;
    const ends = [between(low[0], high[0], share), between(low[1], high[1], share)] as const;
    addLine(board.clearance, FEATURE, toMm(board, ends[0]), toMm(board, ends[1]));
    return {
      kind: 'line',
      layer: 'existing',
      style: 'hairline',
      path: polyline(ends),
      feature: steps.id,
    };
  });
  return walls.length > 0 ? [...treads, ...arrowUp(board, steps.id, low, high)] : treads;
}

function arrowUp(board: Board, feature: string, low: Pair, high: Pair): readonly Mark[] {
  const foot = between(middle(low), middle(high), 0.12);
  const tip = between(middle(low), middle(high), 0.9);
  const length = Math.hypot(tip.x - foot.x, tip.y - foot.y);
  if (length < LEAST_MM * board.gridPerMm) return [];
  addLine(board.clearance, FEATURE, toMm(board, foot), toMm(board, tip));
  const angle = Math.atan2(tip.y - foot.y, tip.x - foot.x);
  return [
    { kind: 'line', layer: 'existing', style: 'dimension', path: polyline([foot, tip]), feature },
    { kind: 'symbol', layer: 'existing', symbol: 'arrow', at: tip, size: HEAD_MM, angle, feature },
  ];
}

function wallSides({ features }: Job): readonly { readonly from: Point; readonly to: Point }[] {
  return features.flatMap((feature) =>
    feature.kind === 'building-line' && shapePath(feature.shape) ? sidesOf(feature.shape) : [],
  );
}

function nearness(
  point: Point,
  sides: readonly { readonly from: Point; readonly to: Point }[],
): number {
  return sides.reduce(
    (least, { from, to }) => Math.min(least, distanceToEdge(point, from, to)),
    Number.POSITIVE_INFINITY,
  );
}

function middle([a, b]: Pair): Point {
  return between(a, b, 0.5);
}

function span([a, b]: Pair): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

function between(a: Point, b: Point, share: number): Point {
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}
