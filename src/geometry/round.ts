/**
 * The nearest whole number, halves away from zero. A value that float error has left just short of a half counts as
 * the half, so that turning a job by a quarter turn doesn't move a corner to the other side of it.
 */
export function toGrid(value: number): number {
  return value < 0 ? -Math.floor(0.5 - value + HALF_MARGIN) : Math.floor(value + 0.5 + HALF_MARGIN);
}

const HALF_MARGIN = 2 ** -20;
