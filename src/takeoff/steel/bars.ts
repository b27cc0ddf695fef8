import type { BarSize } from '../../job/job.ts';
import { FOOT, type Grid, INCH, METRE, POUND_KG } from '../../units/grid.ts';

/** One size of reinforcing bar. */
export interface Bar {
  readonly diameter: Grid;
  /** mm². */
  readonly area: number;
  /** kg per metre. */
  readonly weight: number;
}

/**
 * Inches, square inches, pounds per foot.
 * @source rebar-sizes
 */
const SIZES: Readonly<Record<BarSize, readonly [number, number, number]>> = {
  '#3': [0.375, 0.11, 0.376],
  '#4': [0.5, 0.2, 0.668],
  '#5': [0.625, 0.31, 1.043],
  '#6': [0.75, 0.44, 1.502],
  '#7': [0.875, 0.6, 2.044],
  '#8': [1, 0.79, 2.67],
};

export const BAR_SIZES = Object.keys(SIZES) as readonly BarSize[];

export function barOf(size: BarSize): Bar {
  const [inches, squareInches, pounds] = SIZES[size];
  return {
    diameter: inches * INCH,
    area: squareInches * 25.4 ** 2,
    weight: (pounds * POUND_KG * METRE) / FOOT,
  };
}
