import type { Point, Ring } from '../../geometry/point.ts';

/** A way of looking at a pour: `along` is the way that strips run, `across` the way from one to the next. Floats. */
export interface Frame {
  readonly origin: Point;
  readonly cos: number;
  readonly sin: number;
}

/** A place in a frame. */
export interface Spot {
  readonly along: number;
  readonly across: number;
}

/** @param way Direction that strips run in, radians. */
export function frameOf(origin: Point, way: number): Frame {
  return { origin, cos: Math.cos(way), sin: Math.sin(way) };
}

export function toFrame({ origin, cos, sin }: Frame, { x, y }: Point): Spot {
  const dx = x - origin.x;
  const dy = y - origin.y;
  return { along: dx * cos + dy * sin, across: dy * cos - dx * sin };
}

export function fromFrame({ origin, cos, sin }: Frame, { along, across }: Spot): Point {
  return {
    x: Math.round(origin.x + along * cos - across * sin),
    y: Math.round(origin.y + along * sin + across * cos),
  };
}

export function ringIn(frame: Frame, ring: Ring): readonly Spot[] {
  return ring.map((place) => toFrame(frame, place));
}

type Axis = keyof Spot;

/**
 * What of a closed ring lies on the low side of a line across an axis. A ring that is cut into several comes back as one, its
 * parts joined along the line: its area is right all the same.
 */
export function below(ring: readonly Spot[], axis: Axis, limit: number): readonly Spot[] {
  return cutAt(ring, axis, limit, 1);
}

/** The same of the high side. */
export function above(ring: readonly Spot[], axis: Axis, limit: number): readonly Spot[] {
  return cutAt(ring, axis, limit, -1);
}

function cutAt(ring: readonly Spot[], axis: Axis, limit: number, side: 1 | -1): readonly Spot[] {
  const kept: Spot[] = [];
  let from = ring.at(-1);
  for (const to of ring) {
    if (!from) break;
    const a = side * (from[axis] - limit);
    const b = side * (to[axis] - limit);
    if ((a < 0 && b > 0) || (a > 0 && b < 0)) kept.push(between(from, to, a / (a - b)));
    if (b <= 0) kept.push(to);
    from = to;
  }
  return kept;
}

function between(a: Spot, b: Spot, share: number): Spot {
  return {
    along: a.along + (b.along - a.along) * share,
    across: a.across + (b.across - a.across) * share,
  };
}

/** Signed: counter-clockwise rings are positive. */
export function areaOf(ring: readonly Spot[]): number {
  let sum = 0;
  let a = ring.at(-1);
  for (const b of ring) {
    if (a) sum += a.along * b.across - b.along * a.across;
    a = b;
  }
  return sum / 2;
}

/** A stretch along. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Where a line along lies within rings (outer and holes together), by stretches in order. */
export function stretchesAt(
  rings: readonly (readonly Spot[])[],
  across: number,
): readonly Stretch[] {
  const met: number[] = [];
  for (const ring of rings) {
    let a = ring.at(-1);
    for (const b of ring) {
      if (a && a.across > across !== b.across > across) {
        const share = (across - a.across) / (b.across - a.across);
        met.push(a.along + (b.along - a.along) * share);
      }
      a = b;
    }
  }
  met.sort((a, b) => a - b);
  return Array.from({ length: Math.floor(met.length / 2) }, (_, i) => ({
    from: met[2 * i]!,
    to: met[2 * i + 1]!,
  }));
}

/** What two lists of stretches have in common. */
export function shared(one: readonly Stretch[], other: readonly Stretch[]): readonly Stretch[] {
  return one.flatMap((a) =>
    other.flatMap((b): readonly Stretch[] => {
      const from = Math.max(a.from, b.from);
      const to = Math.min(a.to, b.to);
      return from < to ? [{ from, to }] : [];
    }),
  );
}
