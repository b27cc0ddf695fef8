import type { Grid } from '../units/grid.ts';
import type { Point } from './point.ts';

/** The smallest upright rectangle round something. */
export interface Box {
  readonly minX: Grid;
  readonly minY: Grid;
  readonly maxX: Grid;
  readonly maxY: Grid;
}

/** The box round points. Of no points: a box that meets nothing (its limits are infinite). */
export function boxOf(points: readonly Point[]): Box {
  let minX = Number.POSITIVE_INFINITY;
  let minY = Number.POSITIVE_INFINITY;
  let maxX = Number.NEGATIVE_INFINITY;
  let maxY = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < points.length; i++) {
    const { x, y } = points[i]!;
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  return { minX, minY, maxX, maxY };
}

export function boxOfEdge(a: Point, b: Point): Box {
  return {
    minX: Math.min(a.x, b.x),
    minY: Math.min(a.y, b.y),
    maxX: Math.max(a.x, b.x),
    maxY: Math.max(a.y, b.y),
  };
}

export function boxAround(boxes: readonly Box[]): Box {
  return {
    minX: Math.min(...boxes.map((box) => box.minX)),
    minY: Math.min(...boxes.map((box) => box.minY)),
    maxX: Math.max(...boxes.map((box) => box.maxX)),
    maxY: Math.max(...boxes.map((box) => box.maxY)),
  };
}

/** Whether two boxes overlap, touch, or come within `reach` of each other along both axes. */
export function boxesMeet(a: Box, b: Box, reach: Grid): boolean {
  return (
    a.minX <= b.maxX + reach &&
    b.minX <= a.maxX + reach &&
    a.minY <= b.maxY + reach &&
    b.minY <= a.maxY + reach
  );
}
