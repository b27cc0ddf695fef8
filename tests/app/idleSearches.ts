import { createSearch } from '../../src/app/worker/search.ts';
import type { Searches } from '../../src/app/worker/searches.ts';

/** Searches that never find anything, for what isn't about them. */
export function idleSearches(): Searches {
  const start = () => ({ ask: () => {}, terminate: () => {} });
  return { boards: createSearch({ start, pause: 400, seconds: 20, grace: 5000 }) };
}
