import type { Station } from '../../takeoff/figure.ts';
import type { FigureKey } from '../../takeoff/keys.ts';

/** The figures that each station is for, the first two at a glance: named even when they can't be figured. */
export const EXPECTED: Readonly<Record<Station, readonly FigureKey[]>> = {
  ground: ['net-area', 'perimeter'],
  forms: ['form-length', 'stakes', 'nails'],
  steel: ['mesh-sheets', 'mesh-rows'],
  joints: ['joint-length', 'strip-length', 'strip-pieces'],
  mix: ['net-volume', 'bags', 'batches'],
  order: ['order-lines', 'order-money'],
};
