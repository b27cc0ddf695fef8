import type { MeshPlan } from './plan.ts';
import { directionOf } from './rows.ts';

/** Pieces of a row that lap on each other, in the rows' frame. */
export interface LaidStrip {
  readonly from: number;
  readonly to: number;
  readonly bottom: number;
  readonly top: number;
  /** Width of the strip at each lap within it. */
  readonly joins: readonly number[];
}

/** One row as it lies. */
export interface RowBand {
  readonly row: number;
  readonly low: number;
  readonly high: number;
  readonly strips: readonly LaidStrip[];
}

/** The rows of a plan, bottom up in the order that they were laid. */
export function rowBands({ angle, pieces }: MeshPlan): readonly RowBand[] {
  const [cos, sin] = directionOf(angle);
  const bands = new Map<number, LaidStrip[]>();
  for (const { row, corner, length, width } of pieces) {
    const from = corner.x * cos + corner.y * sin;
    const bottom = corner.y * cos - corner.x * sin;
    const piece = { from, to: from + length, bottom, top: bottom + width, joins: [] };
    const strips = bands.get(row) ?? [];
    bands.set(row, strips);
    const last = strips[strips.length - 1];
    // Pieces stand in order along the row; grid rounding moves them by one at most.
    const goesOn = last && from < last.to && Math.abs(last.bottom - bottom) < 2;
    if (last && goesOn) {
      const joins = [...last.joins, width];
      strips[strips.length - 1] = { ...last, to: Math.max(last.to, piece.to), joins };
    } else strips.push(piece);
  }
  return [...bands.entries()].map(([row, strips]) => ({
    row,
    low: Math.min(...strips.map(({ bottom }) => bottom)),
    high: Math.max(...strips.map(({ top }) => top)),
    strips,
  }));
}

/** Whether two strips lie over each other across. */
export function insidePieces(below: LaidStrip, above: LaidStrip): boolean {
  return above.bottom < below.top && above.top > below.bottom;
}
