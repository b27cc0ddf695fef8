import type { Point, Polygon } from '../../geometry/point.ts';
import { toGrid } from '../../geometry/round.ts';
import { insidePieces, rowBands } from './bands.ts';
import type { MeshPlan } from './plan.ts';
import { directionOf, inside, sidesBetween, turned } from './rows.ts';

/** More chairs than this are a spacing typed wrong. Our own limit. */
const MOST_CHAIRS = 20_000;

/** Where chairs stand under a grid of bars: in lines across the whole shape, spaced as under mesh. */
export function chairsUnderGrid(
  polygons: readonly Polygon[],
  angle: number,
  spacing: number,
): readonly Point[] | undefined {
  const [cos, sin] = directionOf(angle);
  const chairs: Point[] = [];
  for (const polygon of polygons) {
    const { ends, bottom, top } = turned(polygon, angle);
    const lines = Math.max(1, Math.ceil((top - bottom) / spacing));
    for (let line = 0; line < lines; line++) {
      const v = bottom + ((line + 0.5) * (top - bottom)) / lines;
      for (const [from, to] of inside(ends, v)) {
        const count = Math.ceil((to - from) / spacing);
        if (chairs.length + count > MOST_CHAIRS) return undefined;
        for (let k = 0; k < count; k++) {
          const u = from + ((k + 0.5) * (to - from)) / count;
          chairs.push({ x: toGrid(u * cos - v * sin), y: toGrid(u * sin + v * cos) });
        }
      }
    }
  }
  return chairs;
}

/**
 * Where chairs stand under mesh: in lines along each row, no line farther from the next than the spacing nor from the
 * row's edge than half of it, and along each line the same. Only where there is concrete to pour. What rows share is held
 * by one row's chairs. Nothing when there would be too many.
 * @param polygons What the mesh covers.
 */
export function chairsUnder(
  polygons: readonly Polygon[],
  plan: MeshPlan,
  spacing: number,
): readonly Point[] | undefined {
  const [cos, sin] = directionOf(plan.angle);
  const shapes = polygons.map((one) => turned(one, plan.angle));
  const chairs: Point[] = [];
  const bands = rowBands(plan);
  for (let i = 0; i < bands.length; i++) {
    const { strips } = bands[i]!;
    const before = bands[i - 1];
    for (const strip of strips) {
      const under = (before?.strips ?? []).filter(
        (one) => insidePieces(one, strip) && one.from < strip.to && one.to > strip.from,
      );
      const low = Math.min(strip.top, Math.max(strip.bottom, ...under.map(({ top }) => top)));
      const lines = Math.max(1, Math.ceil((strip.top - low) / spacing));
      const near = shapes.map((shape) => sidesBetween(shape, low, strip.top));
      for (let line = 0; line < lines; line++) {
        const v = low + ((line + 0.5) * (strip.top - low)) / lines;
        for (const ends of near) {
          for (const [a, b] of inside(ends, v)) {
            const [from, to] = [Math.max(a, strip.from), Math.min(b, strip.to)];
            const count = Math.ceil((to - from) / spacing);
            if (chairs.length + count > MOST_CHAIRS) return undefined;
            for (let k = 0; k < count; k++) {
              const u = from + ((k + 0.5) * (to - from)) / count;
              chairs.push({ x: toGrid(u * cos - v * sin), y: toGrid(u * sin + v * cos) });
            }
          }
        }
      }
    }
  }
  return chairs;
}
