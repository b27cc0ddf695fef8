import type { Practices } from '../../job/job.ts';
import type { AllowancePart, MixResult, VolumeResult } from '../result.ts';
import { type BlendParts, meanYield } from './blend.ts';
import { WORST_SPREADS, wholeVolume } from './rules.ts';

interface Allowance {
  readonly parts: readonly AllowancePart[];
  /** The parts added up, cubic grid units. */
  readonly total: number;
  readonly by: MixResult['allowanceBy'];
  /** What the net may come to at worst, and what is spilled and added by hand besides. */
  readonly worst: number;
}

/**
 * What is added to the net, each part of the net alone and none of another, so that nothing is allowed for twice. Small
 * jobs take the least count of bags instead, where that is more. Whole cubic millimetres, so that they add up exactly.
 * Common practice, no source.
 * @source navedtra-14070-estimate
 */
export function allowanceOf(
  waste: Practices['waste'],
  slab: VolumeResult,
  blend: BlendParts,
): Allowance {
  const once = wholeVolume(slab.area * slab.spread);
  const named = waste.by === 'share' ? byShare(waste, slab) : byParts(waste, slab);
  const sum = total(named);
  const floor = wholeVolume(waste.minimumBags * meanYield(blend));
  const lack = Math.max(0, floor - sum);
  const parts: readonly AllowancePart[] =
    lack > 0 ? [...named, { part: 'floor', volume: lack }] : named;
  const besides = waste.by === 'share' ? 0 : total(named.filter(({ part }) => part !== 'spread'));
  const most = Math.max(WORST_SPREADS, waste.by === 'share' ? 0 : waste.spreadTimes);
  return {
    parts,
    total: sum + lack,
    by: sum + lack === 0 ? 'none' : lack > 0 ? 'minimum-bags' : waste.by,
    worst: wholeVolume(slab.net) + wholeVolume(most * once) + besides,
  };
}

function byShare(waste: Practices['waste'], { net }: VolumeResult): readonly AllowancePart[] {
  return [{ part: 'share', volume: wholeVolume(net * waste.share) }];
}

function byParts(waste: Practices['waste'], slab: VolumeResult): readonly AllowancePart[] {
  return [
    { part: 'spread', volume: wholeVolume(slab.area * slab.spread * waste.spreadTimes) },
    { part: 'spillage', volume: wholeVolume(slab.net * waste.spillage) },
    ...waste.extras.map(
      ({ name, volume }): AllowancePart => ({ part: 'extra', name, volume: wholeVolume(volume) }),
    ),
  ];
}

function total(parts: readonly AllowancePart[]): number {
  return parts.reduce((sum, { volume }) => sum + volume, 0);
}
