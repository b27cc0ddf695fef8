import type { UnitStyle } from '../../job/job.ts';
import type { Grid } from '../../units/grid.ts';
import { between, cornerAfter, type LaidCorner, type LaidPad } from './corners.ts';
import { SQUARE_WITHIN, TRIANGLE_FEET, TRIANGLE_METRIC } from './rules.ts';

/** The largest 3-4-5 triangle that fits the two sides at a square corner. Grid units, exact. */
export interface Square {
  readonly corner: LaidCorner;
  /** Along the side that leads to the next corner, and along the one that comes from the corner before. */
  readonly next: Grid;
  readonly before: Grid;
  readonly across: Grid;
}

/**
 * A 3-4-5 for every corner of the form that is square and has two straight sides: whole feet (3-4-5, 6-8-10…), or 9-12-15
 * in where the sides are shorter; in metric multiples of 300-400-500 mm.
 * @source navedtra-14043-diagonal
 */
export function squares({ pad, corners }: LaidPad, units: UnitStyle): readonly Square[] {
  const { shape } = pad;
  const count = shape.corners.length;
  const steps = units === 'metric' ? TRIANGLE_METRIC : TRIANGLE_FEET;
  return corners.flatMap((corner): Square[] => {
    const here = shape.corners[corner.index]!;
    const before = shape.corners[(corner.index + count - 1) % count]!;
    const next = cornerAfter(shape, corner.index);
    if (here.rise !== 0 || before.rise !== 0) return [];
    const [a, b] = [between(here, next), between(here, before)];
    const dot = (next.x - here.x) * (before.x - here.x) + (next.y - here.y) * (before.y - here.y);
    if (a === 0 || b === 0 || Math.abs(dot) > SQUARE_WITHIN * Math.max(a, b)) return [];
    const found = largest(a, b, steps);
    return found ? [{ corner, ...found }] : [];
  });
}

/** The largest that fits, its longer leg along the longer side where both ways give the same. */
export function largest(
  next: number,
  before: number,
  steps: readonly Grid[],
): Omit<Square, 'corner'> | undefined {
  for (const step of steps) {
    const fits = (a: number, b: number) =>
      Math.floor(Math.min(next / (a * step), before / (b * step)));
    const [three, four] = [fits(3, 4), fits(4, 3)];
    const times = Math.max(three, four);
    if (times === 0) continue;
    const fourAlongNext = four > three || (four === three && next >= before);
    const [a, b] = fourAlongNext ? [4, 3] : [3, 4];
    return { next: a * times * step, before: b * times * step, across: 5 * times * step };
  }
  return undefined;
}
