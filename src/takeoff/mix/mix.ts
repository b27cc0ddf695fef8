import type { Practices } from '../../job/job.ts';
import { type Figured, tradeNote, withheld } from '../notes.ts';
import { count } from '../quantity.ts';
import type { BagCount, Batching, MixResult, VolumeResult } from '../result.ts';
import { allowanceOf } from './allowance.ts';
import { type Loads, loads } from './batches.ts';
import { fewestBags, madeBy, meanYield, type Step } from './blend.ts';
import { mixNotes } from './mixNotes.ts';
import { type MixParts, mixParts } from './parts.ts';
import { MOST_BAGS, wholeVolume } from './rules.ts';
import { waterFor } from './water.ts';

/**
 * Bags for a pour: the net volume, an allowance on lines of its own, the fewest bags in the blend's parts that make both,
 * what fills up the last batch, and the whole bags that are opened for it. net + allowance + roundings = made, exactly.
 * @source navedtra-14070-estimate
 * @source bag-yields
 */
export function mix(practices: Practices, slab: VolumeResult): Figured<MixResult> {
  const { waste } = practices;
  if (
    ![
      waste.share,
      waste.minimumBags,
      waste.depthSpread,
      waste.spreadTimes,
      waste.spillage,
      ...waste.extras.map(({ volume }) => volume),
    ].every((each) => each >= 0)
  ) {
    return withheld(tradeNote('mix', 'stop', 'waste-below-zero'));
  }
  const blend = mixParts(practices);
  if ('code' in blend) return withheld(blend);
  const { batchVolume, halfBags } = practices.mix;
  const net = wholeVolume(slab.net);
  const allowance = allowanceOf(waste, slab, blend);
  const needed = net + allowance.total;
  if (!(needed / meanYield(blend) <= MOST_BAGS)) {
    return withheld(
      tradeNote('mix', 'stop', 'bags-too-many', { facts: { most: count(MOST_BAGS, 'bag') } }),
    );
  }
  const step: Step = halfBags ? 0.5 : 1;
  const blended = fewestBags(needed, blend, step);
  const through = batchVolume > 0 ? loads(blended, blend, batchVolume, step) : undefined;
  const mixed = through?.mixed ?? blended;
  const opened = mixed.map(Math.ceil);
  const [byBlend, byBatch, made] = [blended, mixed, opened].map((bags) => madeBy(bags, blend)) as [
    number,
    number,
    number,
  ];
  const figured: MixResult = {
    net,
    allowance: allowance.total,
    allowanceBy: allowance.by,
    allowanceParts: allowance.parts,
    needed,
    bags: bagCounts(opened, blend),
    totalBags: totalOf(opened),
    mixed: bagCounts(mixed, blend),
    expectedBags: totalOf(fewestBags(net, blend, step)),
    worst: allowance.worst,
    made,
    rounding: made - needed,
    blendRounding: byBlend - needed,
    batchRounding: byBatch - byBlend,
    openRounding: made - byBatch,
    weight: blend.reduce((sum, part, i) => sum + opened[i]! * part.mix.weight, 0),
    water: waterFor(blend.map((part, i) => ({ mix: part.mix, bags: mixed[i]! }))),
    ...(through ? { batching: batchingOf(through, blend) } : {}),
  };
  return { figured, notes: mixNotes(practices, blend, figured) };
}

function totalOf(bags: readonly number[]): number {
  return bags.reduce((sum, each) => sum + each, 0);
}

function bagCounts(bags: readonly number[], blend: MixParts): readonly BagCount[] {
  return blend.map((part, i) => ({ mix: part.mix.id, parts: part.parts, bags: bags[i]! }));
}

function batchingOf(through: Loads, blend: MixParts): Batching {
  return {
    batches: through.batches,
    full: bagCounts(through.full, blend),
    last: bagCounts(through.last, blend),
    fullVolume: madeBy(through.full, blend),
    lastVolume: madeBy(through.last, blend),
  };
}
