import type { Box } from '../../geometry/box.ts';
import { isInsideAny } from '../../geometry/inside.ts';
import { distanceToRing, locate } from '../../geometry/locate.ts';
import type { Point, Polygon, Ring } from '../../geometry/point.ts';
import type { FeatureKind, Job } from '../../job/job.ts';
import { traceOf } from '../outline/shapes.ts';
import { HALF_STAKE } from './rules.ts';

/** Ground where nothing can be driven. */
export interface Obstacle {
  readonly feature: string;
  readonly kind: FeatureKind;
  readonly ring: Ring;
  readonly box: Box;
}

/** No-stake zones, and all that stands in the ground already: existing slabs, buildings, steps and block-outs. */
export function obstacles(job: Job): readonly Obstacle[] {
  return job.features.flatMap((feature) => {
    if (feature.kind === 'pad' || feature.kind === 'patch') return [];
    const { chain, fault } = traceOf(feature);
    if (fault || !chain.closed) return [];
    return [{ feature: feature.id, kind: feature.kind, ring: chain.points, box: chain.box }];
  });
}

/** The first obstacle that a stake with its middle at `place` would be driven into, if only with its side. */
export function obstacleAt(place: Point, all: readonly Obstacle[]): Obstacle | undefined {
  return all.find(
    ({ box, ring }) =>
      place.x >= box.minX - HALF_STAKE &&
      place.x <= box.maxX + HALF_STAKE &&
      place.y >= box.minY - HALF_STAKE &&
      place.y <= box.maxY + HALF_STAKE &&
      (locate(place, ring) !== 'outside' || distanceToRing(place, ring) < HALF_STAKE),
  );
}

/** Whether a stake at `place` would stand in the pour itself, across a slot too narrow for it. */
export function inPour(place: Point, polygons: readonly Polygon[]): boolean {
  return isInsideAny(place, polygons);
}
