import type { Grid } from '../units/grid.ts';
import { type Box, boxOf } from './box.ts';
import type { Point } from './point.ts';

/**
 * Edges sorted into square cells, so that those near a place are found without walking them all. Edge i runs from
 * `points[i]` to the next point (the last one back to the first).
 */
export interface EdgeIndex {
  readonly box: Box;
  readonly cell: number;
  readonly across: number;
  readonly up: number;
  /** Cell k holds the edges items[starts[k]] … items[starts[k + 1] − 1]. */
  readonly starts: Int32Array;
  readonly items: Int32Array;
}

/** About this many cells for each edge. */
const CELLS_PER_EDGE = 1;

/** @param starts,ends The edges: number i runs from starts[i] to ends[i]. */
export function indexEdges(starts: readonly Point[], ends: readonly Point[]): EdgeIndex {
  const count = starts.length;
  const box = boxOf(starts);
  const width = Math.max(1, box.maxX - box.minX);
  const height = Math.max(1, box.maxY - box.minY);
  const cell = Math.max(
    1,
    Math.sqrt((width * height) / (count * CELLS_PER_EDGE)),
    width / 512,
    height / 512,
  );
  const across = Math.floor(width / cell) + 1;
  const up = Math.floor(height / cell) + 1;
  const counts = new Int32Array(across * up + 1);

  const walk = (visit: (cellAt: number, edge: number) => void): void => {
    for (let i = 0; i < count; i++) {
      const a = starts[i]!;
      const b = ends[i]!;
      const left = clampCell(Math.min(a.x, b.x) - box.minX, cell, across);
      const right = clampCell(Math.max(a.x, b.x) - box.minX, cell, across);
      const low = clampCell(Math.min(a.y, b.y) - box.minY, cell, up);
      const high = clampCell(Math.max(a.y, b.y) - box.minY, cell, up);
      for (let row = low; row <= high; row++) {
        for (let column = left; column <= right; column++) visit(row * across + column, i);
      }
    }
  };

  walk((at) => {
    counts[at + 1]!++;
  });
  for (let i = 1; i < counts.length; i++) counts[i]! += counts[i - 1]!;
  const fill = counts.slice();
  const items = new Int32Array(counts[counts.length - 1]!);
  walk((at, edge) => {
    items[fill[at]!++] = edge;
  });
  return { box, cell, across, up, starts: counts, items };
}

function clampCell(offset: number, cell: number, count: number): number {
  const at = Math.floor(offset / cell);
  return at < 0 ? 0 : at >= count ? count - 1 : at;
}

/**
 * Calls `visit` with every edge that may come within `reach` of a box. An edge that lies in several cells may come
 * more than once.
 */
export function edgesNear(
  index: EdgeIndex,
  minX: number,
  minY: number,
  maxX: number,
  maxY: number,
  reach: Grid,
  visit: (edge: number) => void,
): void {
  const { box, cell, across, up } = index;
  if (minX - reach > box.maxX || maxX + reach < box.minX) return;
  if (minY - reach > box.maxY || maxY + reach < box.minY) return;
  const left = clampCell(minX - reach - box.minX, cell, across);
  const right = clampCell(maxX + reach - box.minX, cell, across);
  const low = clampCell(minY - reach - box.minY, cell, up);
  const high = clampCell(maxY + reach - box.minY, cell, up);
  for (let row = low; row <= high; row++) {
    for (let column = left; column <= right; column++) {
      const at = row * across + column;
      for (let k = index.starts[at]!; k < index.starts[at + 1]!; k++) visit(index.items[k]!);
    }
  }
}
