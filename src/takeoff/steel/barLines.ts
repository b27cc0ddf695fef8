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

/** Bars one way across one piece of the pour: how many rows of them, how far apart, and the outermost two. */
export interface BarRange {
  readonly way: BarLine['way'];
  readonly rows: number;
  /** From one row to the next; nothing where there is but one. */
  readonly apart: Grid;
  readonly first: Pick<BarLine, 'from' | 'to'>;
  readonly last: Pick<BarLine, 'from' | 'to'>;
}

/** How bars one way are spaced, a piece of the pour each: see barsOneWay. */
export function barRanges(
  polygons: readonly Polygon[],
  ...[angle, spacing, closeness, shortest, way]: Tail<Parameters<typeof barsOneWay>>
): readonly BarRange[] {
  return polygons.flatMap((polygon): readonly BarRange[] => {
    const lines = barsOneWay([polygon], angle, spacing, closeness, shortest, way);
    const [first, last] = [lines[0], lines.at(-1)];
    if (!first || !last) return [];
    const [cos, sin] = directionOf(angle);
    const height = ({ from: { x, y } }: Pick<BarLine, 'from'>) => y * cos - x * sin;
    const rows = lines.filter(
      (line, i) => i === 0 || height(line) - height(lines[i - 1]!) > closeness,
    );
    const across = height(last) - height(first);
    const rowOf = (one: BarLine) =>
      lines.filter((line) => Math.abs(height(line) - height(one)) <= closeness);
    const whole = (one: BarLine) => ({ from: rowOf(one)[0]!.from, to: rowOf(one).at(-1)!.to });
    return [
      {
        way,
        rows: rows.length,
        apart: rows.length > 1 ? Math.round(across / (rows.length - 1)) : 0,
        first: whole(first),
        last: whole(last),
      },
    ];
  });
}

type Tail<T extends readonly unknown[]> = T extends readonly [unknown, ...infer Rest]
  ? Rest
  : never;

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

/** What bars at inside corners are laid by. */
interface CornerRule {
  readonly length: number;
  readonly cover: number;
  /** One that is cut shorter than this by other edges is left out. */
  readonly shortest: number;
  readonly closeness: number;
}

/**
 * One bar across each inside corner, where a crack starts: square to the line that halves the corner, with the cover to
 * both its edges, and no longer than fits between the others.
 * @param inset The pour moved in by the cover.
 */
export function cornerBars(
  pour: NetPour,
  inset: readonly Polygon[],
  rule: CornerRule,
): readonly BarLine[] {
  if (rule.length <= 0) return [];
  const bars: BarLine[] = [];
  for (const { rings } of pour.pieces) {
    for (const { edges } of rings) {
      edges.forEach((after, i) => {
        const bar = acrossCorner(edges.at(i - 1)!, after, inset, rule);
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
  inset: readonly Polygon[],
  { length, cover, shortest, closeness }: CornerRule,
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
  // Past the corner that the cover makes of it.
  const deep = cover / Math.max(Math.cos(turn / 2), 1 / 4) + closeness;
  const [x, y] = [after.from.x - uy * deep, after.from.y + ux * deep];
  const [at, v] = [x * ux + y * uy, y * ux - x * uy];
  for (const polygon of inset) {
    for (const [low, high] of inside(turned(polygon, Math.atan2(uy, ux)).ends, v)) {
      if (at < low - closeness || at > high + closeness) continue;
      const [from, to] = [Math.max(low, at - length / 2), Math.min(high, at + length / 2)];
      if (to - from < shortest) return undefined;
      const place = (u: number): Point => ({
        x: toGrid(u * ux - v * uy),
        y: toGrid(u * uy + v * ux),
      });
      return { way: 'corner', from: place(from), to: place(to), length: toGrid(to - from) };
    }
  }
  return undefined;
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
