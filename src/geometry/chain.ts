import type { Grid } from '../units/grid.ts';
import { flattenArc, flattenCircle } from './arc.ts';
import { doubledArea } from './area.ts';
import { type Box, boxOf } from './box.ts';
import type { Point } from './point.ts';

/** A corner of an outline and the rise of the edge that leaves it (see geometry/arc.ts). */
export interface RisingPoint extends Point {
  readonly rise: Grid;
}

/**
 * A shape made straight: its arcs as short chords, closed ones counter-clockwise. `tags[i]` is the number of the edge
 * of the shape that the chord from `points[i]` came from (edge k leaves the shape's corner k; a circle has edge 0 alone).
 */
export interface Chain {
  readonly points: readonly Point[];
  readonly tags: readonly number[];
  readonly closed: boolean;
  readonly box: Box;
}

/** How many chords a chain has. */
export function edgeCount(chain: Chain): number {
  return chain.closed ? chain.points.length : Math.max(0, chain.points.length - 1);
}

/** Corners and rises as a chain; arcs leave their chords by no more than `tolerance`, grid units. */
export function chainOf(corners: readonly RisingPoint[], closed: boolean, tolerance: Grid): Chain {
  const points: Point[] = [];
  const tags: number[] = [];
  for (let i = 0; i < corners.length; i++) {
    const corner = corners[i]!;
    points.push({ x: corner.x, y: corner.y });
    tags.push(i);
    const next = corners[i + 1] ?? corners[0]!;
    if (corner.rise === 0 || (!closed && i === corners.length - 1)) continue;
    for (const point of flattenArc(corner, next, corner.rise, tolerance)) {
      points.push(point);
      tags.push(i);
    }
  }
  if (closed && doubledArea(points) < 0) {
    points.reverse();
    // The edge that left a corner now arrives at it.
    tags.reverse();
    tags.push(tags.shift()!);
  }
  return { points, tags, closed, box: boxOf(points) };
}

/** A circle as a chain. */
export function circleChain(center: Point, diameter: Grid, tolerance: Grid): Chain {
  const points = flattenCircle(center, diameter, tolerance);
  return { points, tags: points.map(() => 0), closed: true, box: boxOf(points) };
}
