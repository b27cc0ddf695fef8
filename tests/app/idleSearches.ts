import { createSearch } from '../../src/app/worker/search.ts';
import type { Searches } from '../../src/app/worker/searches.ts';

/** Searches that never find anything, for what isn't about them. */
export function idleSearches(): Searches {
  const start = () => ({ ask: () => {}, terminate: () => {} });
  const times = { pause: 400, seconds: 20, grace: 5000 };
  return {
    boards: createSearch({ start, ...times }),
    bars: createSearch({ start, ...times }),
    mesh: createSearch({ start, ...times }),
    joints: createSearch({ start, ...times }),
  };
}
