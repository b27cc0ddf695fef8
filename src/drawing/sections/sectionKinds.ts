import type { EdgeKind } from '../../takeoff/outline/pour.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { SECTION_KINDS, type SectionKind } from './cut.ts';

/**
 * The sections that a job has: one a kind of edge that is there, and one through a control joint when there is one. None
 * without a thickness, or where nothing can be poured.
 */
export function sectionKinds({ pour, volume, joints }: Takeoff): readonly SectionKind[] {
  if (!pour || !volume) return [];
  const has = (kind: EdgeKind) => pour.lengthByKind[kind] > 0;
  const isThere: Readonly<Record<SectionKind, boolean>> = {
    free: has('free') && !volume.thickened,
    thickened: volume.thickened !== undefined,
    'existing-slab': has('existing-slab'),
    wall: has('wall'),
    'wall-formed': has('wall-formed'),
    steps: has('steps'),
    'block-out': has('block-out'),
    'control-joint': joints?.layout?.joints.some(({ kind }) => kind === 'control') === true,
  };
  return SECTION_KINDS.filter((kind) => isThere[kind]);
}
