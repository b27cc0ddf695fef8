import type { Point } from '../../geometry/point.ts';
import type { Feature } from '../../job/job.ts';
import type { NetPour, PourRing } from '../../takeoff/outline/pour.ts';
import type { Measured } from '../marks.ts';
import { type Side, sidesOf } from '../paths.ts';

/** An edge to be measured. What is measured lies to its left. */
export interface MeasuredSide extends Side {
  readonly length: number;
  /** What is written for it, where it carries the rounding of its chain. */
  readonly text?: string;
  /** Set where it is an edge of a feature from corner to corner, so that its length can be typed anew. */
  readonly measures?: Measured;
  /** False where it lies against what stands there already, so that nobody has to set it out. */
  readonly laidOut: boolean;
}

/** A closed walk (or an open line) whose edges are measured. */
export interface Loop {
  readonly sides: readonly MeasuredSide[];
  readonly closed: boolean;
  readonly hole: boolean;
  /** The block-out that a hole is of, when it is of one alone. */
  readonly blockOut?: string;
}

function keyOf(a: Point, b: Point): string {
  return `${a.x} ${a.y} ${b.x} ${b.y}`;
}

/** Every loop of the pour. Edges that are a pad's or patch's own from corner to corner can be typed anew. */
export function pourLoops(pour: NetPour, features: readonly Feature[]): readonly Loop[] {
  const drawn = new Map<string, Measured>();
  for (const { id, kind, shape } of features) {
    if ((kind !== 'pad' && kind !== 'patch') || shape.form !== 'outline') continue;
    sidesOf(shape).forEach(({ from, to }, index) => {
      const measures = { feature: id, corner: shape.corners[index]!.id };
      drawn.set(keyOf(from, to), measures);
      drawn.set(keyOf(to, from), measures);
    });
  }
  return pour.pieces.flatMap(({ rings }) => rings.map((ring) => loopOf(ring, drawn)));
}

function loopOf({ edges, hole }: PourRing, drawn: ReadonlyMap<string, Measured>): Loop {
  const first = edges[0]!;
  const isBlockOut =
    hole && edges.every(({ kind, feature }) => kind === 'block-out' && feature === first.feature);
  return {
    closed: true,
    hole,
    sides: edges.map(({ from, to, arc, length, kind }) => {
      const measures = drawn.get(keyOf(from, to));
      return {
        from,
        to,
        length,
        laidOut: kind === 'free' || kind === 'wall-formed',
        ...(arc ? { arc } : {}),
        ...(measures ? { measures } : {}),
      };
    }),
    ...(isBlockOut ? { blockOut: first.feature } : {}),
  };
}

/** A feature's own outline, so that each of its lengths can be typed anew; nothing for a round one. */
export function featureLoop({ id, shape }: Feature): Loop | undefined {
  if (shape.form !== 'outline' || shape.corners.length < 2) return undefined;
  const sides = sidesOf(shape).map(
    (side, index): MeasuredSide => ({
      ...side,
      length: Math.hypot(side.to.x - side.from.x, side.to.y - side.from.y),
      measures: { feature: id, corner: shape.corners[index]!.id },
      laidOut: true,
    }),
  );
  const clockwise = shape.closed && turning(sides) < 0;
  return {
    closed: shape.closed,
    hole: false,
    sides: clockwise ? sides.map(turned).reverse() : sides,
  };
}

function turning(sides: readonly MeasuredSide[]): number {
  const at = sides[0]!.from;
  return sides.reduce(
    (sum, { from, to }) => sum + (from.x - at.x) * (to.y - at.y) - (from.y - at.y) * (to.x - at.x),
    0,
  );
}

function turned(side: MeasuredSide): MeasuredSide {
  const { from, to, arc } = side;
  const back = arc && { ...arc, sweep: -arc.sweep };
  return { ...side, from: to, to: from, ...(back ? { arc: back } : {}) };
}

/** The edge without its direction, to know it again. */
export function sideKey({ from, to }: Side): string {
  const forward = from.x < to.x || (from.x === to.x && from.y < to.y);
  return forward ? keyOf(from, to) : keyOf(to, from);
}
