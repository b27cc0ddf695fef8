import type { Box } from '../../geometry/box.ts';
import { isInsideAny } from '../../geometry/inside.ts';
import { locate } from '../../geometry/locate.ts';
import type { Point, Polygon, Ring } from '../../geometry/point.ts';
import type { Job } from '../../job/job.ts';
import { traceOf } from '../outline/shapes.ts';

/** Ground where nothing can be driven. */
export interface Obstacle {
  readonly feature: string;
  readonly ring: Ring;
  readonly box: Box;
}

/** No-stake zones, and all that stands in the ground already: existing slabs, buildings, steps and block-outs. */
export function obstacles(job: Job): readonly Obstacle[] {
  return job.features.flatMap((feature) => {
    if (feature.kind === 'pad' || feature.kind === 'patch') return [];
    const { chain, fault } = traceOf(feature);
    if (fault || !chain.closed) return [];
    return [{ feature: feature.id, ring: chain.points, box: chain.box }];
  });
}

/** The first obstacle that a stake at `place` would be driven into; its edge is part of it. */
export function obstacleAt(place: Point, all: readonly Obstacle[]): Obstacle | undefined {
  return all.find(
    ({ box, ring }) =>
      place.x >= box.minX &&
      place.x <= box.maxX &&
      place.y >= box.minY &&
      place.y <= box.maxY &&
      locate(place, ring) !== 'outside',
  );
}

/** Whether a stake at `place` would stand in the pour itself, across a slot too narrow for it. */
export function inPour(place: Point, polygons: readonly Polygon[]): boolean {
  return isInsideAny(place, polygons);
}
