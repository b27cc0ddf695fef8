import type { Practices } from '../../job/job.ts';
import { METRE } from '../../units/grid.ts';

const GRAVITY = 9.80665;

/** What the subgrade-drag formula is reckoned with. */
export interface DragInputs {
  readonly friction: number;
  /** Between joints, m. */
  readonly length: number;
  /** Weight of the slab, N/m². */
  readonly weight: number;
  /** Stress that the steel may bear, Pa. */
  readonly stress: number;
}

/**
 * Steel that holds a crack in the middle tight while half the slab is dragged over the ground: As = F · L · w ÷ (2 · fs),
 * each way, mm² in a metre's width.
 * @source subgrade-drag-note
 */
export function dragArea({ friction, length, weight, stress }: DragInputs): number {
  return ((friction * length * weight) / (2 * stress)) * 1e6;
}

export function dragInputs({ thickness, bending, steel }: Practices): DragInputs {
  const { friction, jointLength, stress } = steel.drag;
  return {
    friction,
    length: jointLength / METRE,
    weight: (thickness / METRE) * bending.freshWeight * GRAVITY,
    stress,
  };
}
