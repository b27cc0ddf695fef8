import type { Job, Pad } from '../../job/job.ts';
import { layoutOf } from '../../takeoff/layout/layout.ts';
import type { Takeoff } from '../../takeoff/result.ts';
import type { SheetOptions } from '../sheetOptions.ts';
import type { PadLayout } from './layoutPages.ts';

/**
 * The setting out of every pad. What somebody chose is for one pad; the others are set out by rule. What the tape said is
 * no part of the sheet: that is for building from.
 */
export function padLayouts(
  job: Job,
  { pour }: Takeoff,
  { setOut = {} }: Pick<SheetOptions, 'setOut'>,
): readonly PadLayout[] {
  const pads = job.features.filter((feature): feature is Pad => feature.kind === 'pad');
  const { tape: _, fit: __, ...chosen } = setOut;
  const meant = chosen.pad ?? pads[0]?.id;
  return pads.map((pad) => ({
    pad,
    meant: pad.id === meant,
    layout: layoutOf(job, pour, { ...(pad.id === meant ? chosen : {}), pad: pad.id }),
  }));
}
