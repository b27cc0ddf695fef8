import type { BagMix } from '../../job/job.ts';
import type { WaterNeed } from '../result.ts';
import { WATER_SEEN } from './rules.ts';

interface Poured {
  readonly mix: BagMix;
  readonly bags: number;
}

/** Water for so many bags of each mix. A bag whose water nobody has typed is taken as commonly seen, and that is said. */
export function waterFor(poured: readonly Poured[]): WaterNeed {
  const sum = (of: 'least' | 'most') =>
    poured.reduce(
      (all, { mix, bags }) => all + bags * (mix.water?.[of] ?? mix.weight * WATER_SEEN[of]),
      0,
    );
  const read = poured.every(({ mix }) => mix.water);
  return { least: sum('least'), most: sum('most'), from: read ? 'bag' : 'common-practice' };
}
