import type { Grid } from '../units/grid.ts';

/** A place on the grid. x runs east (right), y runs north (up the page). */
export interface Point {
  readonly x: Grid;
  readonly y: Grid;
}

/** A closed chain of corners, the first not repeated at the end. Outer rings run counter-clockwise. */
export type Ring = readonly Point[];

/** One connected area: an outer ring and the holes in it (holes run clockwise). */
export interface Polygon {
  readonly outer: Ring;
  readonly holes: readonly Ring[];
}

/** The circle that an arc edge lies on. Centre and radius are floats: they are derived, never stored. */
export interface ArcOf {
  readonly cx: number;
  readonly cy: number;
  readonly radius: number;
  /** Signed angle swept from the edge's start to its end, radians, counter-clockwise positive. */
  readonly sweep: number;
}

export function samePoint(a: Point, b: Point): boolean {
  return a.x === b.x && a.y === b.y;
}
