import type { Practices } from '../../job/job.ts';
import { panelMark } from '../joints/marks.ts';
import type { NetPour } from '../outline/pour.ts';
import type { JointLayout, MixResult, VolumeResult } from '../result.ts';
import { thickenedEdge } from '../volume/thickenedEdge.ts';

/** How far the pour should have got when so many bags are gone. */
export interface Checkpoint {
  /** A panel by its mark, or a share of the area where there are no panels. */
  readonly placed: { readonly panel: string } | { readonly share: number };
  /** Square grid units of this stretch. */
  readonly area: number;
  /** In half bags, of the blend: for this stretch, and with all before it. */
  readonly bags: number;
  readonly bagsSoFar: number;
  /** Batches gone by then, whole and part. */
  readonly batchesSoFar?: number;
}

/** Looked at on the way where there are no panels. Common practice, no source. */
const STRETCHES = [0.25, 0.5, 0.75, 1];

/**
 * What the net takes, panel by panel in the order of their marks, a panel's share of the thickened edge with it. Of the net
 * alone: an allowance that goes into the ground is what a checkpoint is there to show.
 */
export function checkpoints(
  practices: Practices,
  pour: NetPour,
  volume: VolumeResult,
  mix: MixResult,
  layout: JointLayout | undefined,
): readonly Checkpoint[] {
  const panels = layout && layout.panels.length > 1 ? layout.panels : [];
  const stretches =
    panels.length > 0
      ? panels.map(({ polygon, area }, i) => ({
          placed: { panel: panelMark(i) },
          area,
          volume:
            area * volume.thickness +
            (volume.thickened
              ? thickenedEdge(practices, pour, volume.thickness, [polygon]).volume
              : 0),
        }))
      : STRETCHES.map((share, i) => {
          const part = share - (STRETCHES[i - 1] ?? 0);
          return { placed: { share }, area: part * pour.area, volume: part * volume.net };
        });
  // Panels have arcs as chords: all of them together are the whole.
  const whole = stretches.reduce((sum, each) => sum + each.volume, 0);
  const full = mix.batching?.fullVolume;
  let [volumeSoFar, bagsBefore] = [0, 0];
  return stretches.map(({ placed, area, volume: takes }) => {
    volumeSoFar += takes;
    const share = volumeSoFar / whole;
    const bagsSoFar = Math.round(2 * share * mix.expectedBags) / 2;
    const bags = bagsSoFar - bagsBefore;
    bagsBefore = bagsSoFar;
    return {
      placed,
      area,
      bags,
      bagsSoFar,
      ...(full ? { batchesSoFar: (share * mix.net) / full } : {}),
    };
  });
}
