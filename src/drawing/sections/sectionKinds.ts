import type { Job } from '../../job/job.ts';
import type { EdgeKind } from '../../takeoff/outline/pour.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import { SECTION_KINDS, type SectionKind } from './cut.ts';

/**
 * The sections that a job has: one a kind of edge that is there, and one through a joint when joints are drawn. None without
 * a thickness, or where nothing can be poured.
 */
export function sectionKinds(job: Job, { pour, volume }: Takeoff): readonly SectionKind[] {
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
    'control-joint': job.features.some(
      (feature) => feature.kind === 'joint' && feature.joint === 'control',
    ),
  };
  return SECTION_KINDS.filter((kind) => isThere[kind]);
}
