import type { BagMix } from '../../job/job.ts';
import type { BagsOf } from '../../job/pourLog.ts';
import type { MixResult } from '../result.ts';

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

/** Water that a batch takes, cubic grid units; nothing unless it stands on every bag that goes in. */
export function batchWater(
  bags: readonly BagsOf[],
  mixes: readonly BagMix[],
): { readonly least: number; readonly most: number } | undefined {
  let [least, most] = [0, 0];
  for (const { mix, bags: each } of bags) {
    const water = mixes.find(({ id }) => id === mix)?.water;
    if (!water) return undefined;
    least += each * water.least;
    most += each * water.most;
  }
  return most > 0 ? { least, most } : undefined;
}
