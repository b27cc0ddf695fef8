import type { BagMix } from '../../job/job.ts';
import type { BagsOf } from '../../job/pourLog.ts';
import { waterFor } from '../mix/water.ts';
import type { MixResult, WaterNeed } from '../result.ts';

/**
 * What goes into the next batch as the ticket has it: a full one, and for the last of them what is left. Where the mixer is
 * too small for any batch, one bag a part.
 */
export function nextBatch({ batching, bags }: MixResult, before: number): readonly BagsOf[] {
  const loaded = batching
    ? before === batching.batches - 1
      ? batching.last
      : batching.full
    : bags.map(({ mix, parts }) => ({ mix, bags: parts }));
  return loaded.filter((one) => one.bags > 0).map(({ mix, bags: each }) => ({ mix, bags: each }));
}

/** Water for a batch: see waterFor. Nothing for a mix that the job no longer lists. */
export function batchWater(
  bags: readonly BagsOf[],
  mixes: readonly BagMix[],
): WaterNeed | undefined {
  const poured = bags.flatMap(({ mix: id, bags: each }) => {
    const mix = mixes.find((one) => one.id === id);
    return mix ? [{ mix, bags: each }] : [];
  });
  return poured.length === bags.length ? waterFor(poured) : undefined;
}
