import type { GroundSaid, Practices } from '../../job/job.ts';
import { formDepth } from '../forms/rules.ts';
import { type Figured, tradeNote, withheld } from '../notes.ts';
import type { NetPour } from '../outline/pour.ts';
import { count, length } from '../quantity.ts';
import type { GroundDepth, VolumeResult } from '../result.ts';
import { LEAST_READINGS } from './rules.ts';
import { thickenedEdge } from './thickenedEdge.ts';
import { volumeNotes } from './volumeNotes.ts';

/**
 * Net volume: area × thickness, and what the thickened edge takes below that, when there is one. Nothing else added,
 * nothing taken off. Cubic grid units. The thickness is a setting of its own, or the mean of the taped depths where the job
 * says so; what the form board would give is told beside it, never put in its place.
 * @param ground The mean of the taped depths, when there are enough.
 * @source farmers-bulletin-1279
 */
export function slabVolume(
  practices: Practices,
  pour: NetPour,
  said: GroundSaid['depthBy'],
  ground: GroundDepth | undefined,
): Figured<VolumeResult> {
  if (!(practices.thickness > 0)) return withheld(tradeNote('mix', 'stop', 'thickness-zero'));
  if (said === 'readings' && !ground) {
    const facts = { least: count(LEAST_READINGS, 'reading') };
    return withheld(tradeNote('mix', 'stop', 'readings-too-few', { facts }));
  }
  const thickness = said === 'readings' ? Math.round(ground!.mean) : practices.thickness;
  const { formBoard, gapUnderForm } = practices;
  const depth = formDepth(formBoard, gapUnderForm);
  if (!(depth > 0)) return withheld(tradeNote('mix', 'stop', 'form-depth-zero'));
  const { use, depth: edgeDepth, width } = practices.thickenedEdge;
  const edge = use && pour.lengthByKind.free > 0;
  if (edge && !(edgeDepth > thickness && width > 0)) {
    const facts = { depth: length(edgeDepth), thickness: length(thickness) };
    return withheld(tradeNote('mix', 'stop', 'thickened-not-deeper', { facts }));
  }
  const thickened = edge ? thickenedEdge(practices, pour, thickness) : undefined;
  const slab = pour.area * thickness;
  const figured: VolumeResult = {
    thickness,
    depthBy: said,
    area: pour.area,
    spread: ground ? ground.error : practices.waste.depthSpread,
    ...(ground ? { ground } : {}),
    formDepth: depth,
    slab,
    ...(thickened ? { thickened } : {}),
    net: slab + (thickened?.volume ?? 0),
    // The trench goes as deep from the finish down, whatever the form gives.
    atFormDepth:
      pour.area * depth + (thickened ? Math.max(0, edgeDepth - depth) * thickened.meanArea : 0),
  };
  return { figured, notes: volumeNotes(practices, figured) };
}
