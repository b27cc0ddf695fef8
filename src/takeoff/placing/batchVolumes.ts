import type { MixResult } from '../result.ts';

/** What each batch makes, in order, cubic grid units: together all that is mixed. Nothing where batches can't be counted. */
export function batchVolumes({ batching }: MixResult): readonly number[] | undefined {
  if (!batching || batching.batches < 1) return undefined;
  const { batches, fullVolume, lastVolume } = batching;
  return Array.from({ length: batches }, (_, i) => (i < batches - 1 ? fullVolume : lastVolume));
}
