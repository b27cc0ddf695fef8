import type { Box } from '../../geometry/box.ts';
import { isInsideAny } from '../../geometry/inside.ts';
import { distanceToEdge, locate } from '../../geometry/locate.ts';
import type { Point, Polygon } from '../../geometry/point.ts';
import type { Feature, FeatureKind, Job } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import { traceOf } from '../outline/shapes.ts';
import { HALF_STAKE } from './rules.ts';

/** Ground where nothing can be driven: a ring and all inside it, or a line; and all that is too near to it. */
export interface Obstacle {
  readonly feature: string;
  readonly kind: FeatureKind;
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly box: Box;
  /** The middle of a stake is no nearer to it than this. */
  readonly reach: Grid;
}

/**
 * No-stake zones, and all that stands in the ground already: existing slabs, buildings, steps and block-outs; and buried
 * lines, with their tolerance on either side.
 */
export function obstacles({ features, practices }: Job): readonly Obstacle[] {
  return features.flatMap((feature): Obstacle[] => {
    const { kind, id } = feature;
    if (kind === 'pad' || kind === 'patch') return [];
    const { chain, fault } = traceOf(feature);
    if (fault || chain.closed === isLine(feature)) return [];
    const { points, box, closed } = chain;
    const reach = HALF_STAKE + (isLine(feature) ? practices.utilityTolerance : 0);
    return [{ feature: id, kind, points, closed, box, reach }];
  });
}

function isLine({ kind }: Feature): boolean {
  return kind === 'utility-line';
}

/** The first obstacle that a stake with its middle at `place` would be driven into, or too near to. */
export function obstacleAt(place: Point, all: readonly Obstacle[]): Obstacle | undefined {
  return all.find((one) => isNear(place, one) && distanceTo(place, one) < one.reach);
}

function isNear({ x, y }: Point, { box, reach }: Obstacle): boolean {
  return (
    x >= box.minX - reach && x <= box.maxX + reach && y >= box.minY - reach && y <= box.maxY + reach
  );
}

/** From a place to what is in the way, grid units, a float; 0 inside of it. */
export function distanceTo(place: Point, { points, closed }: Obstacle): number {
  if (closed && locate(place, points) !== 'outside') return 0;
  let least = Number.POSITIVE_INFINITY;
  for (let i = closed ? 0 : 1; i < points.length; i++) {
    const distance = distanceToEdge(
      place,
      points[i === 0 ? points.length - 1 : i - 1]!,
      points[i]!,
    );
    if (distance < least) least = distance;
  }
  return least;
}

/** Whether a stake at `place` would stand in the pour itself, across a slot too narrow for it. */
export function inPour(place: Point, polygons: readonly Polygon[]): boolean {
  return isInsideAny(place, polygons);
}
