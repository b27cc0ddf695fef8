import type { Point, Polygon } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import type { Grid } from '../../units/grid.ts';
import type { NetPour, PourEdge } from '../outline/pour.ts';
import { directionOf, inside, type Turned, turned } from './rows.ts';

/** One bar line as it lies: from edge cover to edge cover, laps not counted. */
export interface BarLine {
  readonly way: 'along' | 'across' | 'corner';
  readonly from: Point;
  readonly to: Point;
  readonly length: Grid;
}

/** Turns less than this, radians, are no inside corner: 30°. Our own default. */
const LEAST_TURN = Math.PI / 6;

/**
 * Bars one way: lines square to each other's way, the first and last at the edge of the shape, none farther apart than the
 * spacing; a line that a hole or a notch breaks is two bars. Nothing shorter than `shortest` is laid.
 * @param polygons The pour moved in by the cover.
 * @param angle Direction of the bars, radians.
 */
export function barsOneWay(
  polygons: readonly Polygon[],
  angle: number,
  spacing: number,
  closeness: number,
  shortest: number,
  way: BarLine['way'],
): readonly BarLine[] {
  const [cos, sin] = directionOf(angle);
  const at = (u: number, v: number): Point => ({
    x: toGrid(u * cos - v * sin),
    y: toGrid(u * sin + v * cos),
  });
  return polygons.flatMap((polygon) => {
    const shape = turned(polygon, angle);
    return lineHeights(shape, spacing, closeness).flatMap((v) =>
      inside(shape.ends, v)
        .filter(([from, to]) => to - from >= shortest)
        .map(([from, to]) => ({
          way,
          from: at(from, v),
          to: at(to, v),
          length: toGrid(to - from),
        })),
    );
  });
}

/** Where lines lie across a shape: one just inside either edge, the others evenly between. */
export function lineHeights(
  { bottom, top }: Turned,
  spacing: number,
  closeness: number,
): readonly number[] {
  const across = top - bottom;
  const gaps = Math.max(1, Math.ceil((across - 2 * closeness) / spacing));
  const edge = Math.min(closeness, across / 4);
  const step = (across - 2 * edge) / gaps;
  return Array.from({ length: gaps + 1 }, (_, i) => bottom + edge + i * step);
}

/**
 * One bar across each inside corner, where a crack starts: square to the line that halves the corner, as far into the
 * concrete as the cover.
 */
export function cornerBars(pour: NetPour, length: number, cover: number): readonly BarLine[] {
  if (length <= 0) return [];
  const bars: BarLine[] = [];
  for (const { rings } of pour.pieces) {
    for (const { edges } of rings) {
      edges.forEach((after, i) => {
        const bar = acrossCorner(edges.at(i - 1)!, after, length, cover);
        if (bar) bars.push(bar);
      });
    }
  }
  return bars;
}

/** The pour lies left of its edges: where they turn right, its corner points inward. */
function acrossCorner(
  before: PourEdge,
  after: PourEdge,
  length: number,
  cover: number,
): BarLine | undefined {
  if (before.arc || after.arc || before === after) return undefined;
  const [ax, ay] = [before.to.x - before.from.x, before.to.y - before.from.y];
  const [bx, by] = [after.to.x - after.from.x, after.to.y - after.from.y];
  const turn = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  if (turn > -LEAST_TURN) return undefined;
  const [la, lb] = [Math.hypot(ax, ay), Math.hypot(bx, by)];
  // Along the bar: halfway between the two directions of travel. To its left is the concrete.
  const [dx, dy] = [ax / la + bx / lb, ay / la + by / lb];
  const long = Math.hypot(dx, dy);
  const [ux, uy] = long < 1e-9 ? [-ay / la, ax / la] : [dx / long, dy / long];
  const x = after.from.x - uy * cover;
  const y = after.from.y + ux * cover;
  const half = length / 2;
  return {
    way: 'corner',
    from: { x: toGrid(x - ux * half), y: toGrid(y - uy * half) },
    to: { x: toGrid(x + ux * half), y: toGrid(y + uy * half) },
    length: toGrid(length),
  };
}

/** Places at which bars of one way cross those of the other: where they are tied. */
export function crossings(
  along: readonly BarLine[],
  across: readonly BarLine[],
  angle: number,
): number {
  const [cos, sin] = directionOf(angle);
  const u = ({ x, y }: Point) => x * cos + y * sin;
  const v = ({ x, y }: Point) => y * cos - x * sin;
  // Bars one way lie at one v from u to u, those across at one u; ends on the grid may be a unit short.
  const slack = 2;
  const lines = along.map(({ from, to }) => ({ v: v(from), low: u(from), high: u(to) }));
  let count = 0;
  for (const { from, to } of across) {
    const at = u(from);
    const [low, high] = [Math.min(v(from), v(to)), Math.max(v(from), v(to))];
    for (const line of lines) {
      const meets =
        line.v >= low - slack &&
        line.v <= high + slack &&
        at >= line.low - slack &&
        at <= line.high + slack;
      if (meets) count++;
    }
  }
  return count;
}
