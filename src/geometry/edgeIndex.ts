import type { Grid } from '../units/grid.ts';
import { type Box, boxOf } from './box.ts';
import type { Point } from './point.ts';

/** Edges sorted into square cells, so that those near a place are found without walking them all. */
export interface EdgeIndex {
  readonly box: Box;
  readonly cell: number;
  readonly across: number;
  readonly up: number;
  /** Cell k holds the edges items[starts[k]] … items[starts[k + 1] − 1]. */
  readonly starts: Int32Array;
  readonly items: Int32Array;
  /** Box of edge i: limits[4 i] … : least x, least y, most x, most y. */
  readonly limits: Float64Array;
}

/** No more cells than this for each edge, and never smaller than the middling edge. */
const CELLS_PER_EDGE = 8;

/**
 * @param points Corners in order; edge i runs from points[i] to the next.
 * @param closed Whether the last corner is joined to the first.
 */
export function indexEdges(points: readonly Point[], closed: boolean): EdgeIndex {
  const count = closed ? points.length : Math.max(0, points.length - 1);
  const limits = new Float64Array(4 * count);
  let extent = 0;
  for (let i = 0; i < count; i++) {
    const a = points[i]!;
    const b = points[i + 1 === points.length ? 0 : i + 1]!;
    const minX = Math.min(a.x, b.x);
    const minY = Math.min(a.y, b.y);
    const maxX = Math.max(a.x, b.x);
    const maxY = Math.max(a.y, b.y);
    limits[4 * i] = minX;
    limits[4 * i + 1] = minY;
    limits[4 * i + 2] = maxX;
    limits[4 * i + 3] = maxY;
    extent += Math.max(maxX - minX, maxY - minY);
  }
  const box = boxOf(points);
  const width = Math.max(1, box.maxX - box.minX);
  const height = Math.max(1, box.maxY - box.minY);
  const most = CELLS_PER_EDGE * count;
  const cell = Math.max(
    1,
    extent / count,
    Math.sqrt((width * height) / most),
    width / most,
    height / most,
  );
  const across = Math.floor(width / cell) + 1;
  const up = Math.floor(height / cell) + 1;
  const starts = new Int32Array(across * up + 1);
  // First how many each cell holds, then where each begins, then the edges themselves.
  for (let i = 0; i < count; i++) {
    const left = Math.floor((limits[4 * i]! - box.minX) / cell);
    const low = Math.floor((limits[4 * i + 1]! - box.minY) / cell);
    const right = Math.floor((limits[4 * i + 2]! - box.minX) / cell);
    const high = Math.floor((limits[4 * i + 3]! - box.minY) / cell);
    for (let row = low; row <= high; row++) {
      for (let at = row * across + left; at <= row * across + right; at++) starts[at + 1]!++;
    }
  }
  for (let at = 1; at < starts.length; at++) starts[at]! += starts[at - 1]!;
  const fill = starts.slice();
  const items = new Int32Array(starts[starts.length - 1]!);
  for (let i = 0; i < count; i++) {
    const left = Math.floor((limits[4 * i]! - box.minX) / cell);
    const low = Math.floor((limits[4 * i + 1]! - box.minY) / cell);
    const right = Math.floor((limits[4 * i + 2]! - box.minX) / cell);
    const high = Math.floor((limits[4 * i + 3]! - box.minY) / cell);
    for (let row = low; row <= high; row++) {
      for (let at = row * across + left; at <= row * across + right; at++) items[fill[at]!++] = i;
    }
  }
  return { box, cell, across, up, starts, items, limits };
}

/** Calls `visit` with every edge whose box comes within `reach` of a box, once each. */
export function edgesNear(
  index: EdgeIndex,
  near: Box,
  reach: Grid,
  visit: (edge: number) => void,
): void {
  const { box, cell, across, up, starts, items, limits } = index;
  const minX = near.minX - reach;
  const minY = near.minY - reach;
  const maxX = near.maxX + reach;
  const maxY = near.maxY + reach;
  if (minX > box.maxX || maxX < box.minX || minY > box.maxY || maxY < box.minY) return;
  const left = Math.max(0, Math.floor((minX - box.minX) / cell));
  const low = Math.max(0, Math.floor((minY - box.minY) / cell));
  const right = Math.min(across - 1, Math.floor((maxX - box.minX) / cell));
  const high = Math.min(up - 1, Math.floor((maxY - box.minY) / cell));
  for (let row = low; row <= high; row++) {
    for (let column = left; column <= right; column++) {
      const at = row * across + column;
      for (let k = starts[at]!; k < starts[at + 1]!; k++) {
        const i = items[k]!;
        const edgeX = limits[4 * i]!;
        const edgeY = limits[4 * i + 1]!;
        if (edgeX > maxX || limits[4 * i + 2]! < minX) continue;
        if (edgeY > maxY || limits[4 * i + 3]! < minY) continue;
        // Found in the first of its cells that the search covers, and passed over in the others.
        const firstColumn = Math.max(left, Math.floor((edgeX - box.minX) / cell));
        const firstRow = Math.max(low, Math.floor((edgeY - box.minY) / cell));
        if (firstColumn === column && firstRow === row) visit(i);
      }
    }
  }
}
