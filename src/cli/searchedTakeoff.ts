import type { Job } from '../job/job.ts';
import { filled } from '../sheet/words/filled.ts';
import type { Words } from '../sheet/words/words.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { takeoff } from '../takeoff/takeoff.ts';
import { whyNot } from './whyNot.ts';

/** A search that fails leaves the first answers standing, and says so. */
export async function searchedTakeoff(
  words: Words,
  job: Job,
  seconds: number,
  say: (lines: readonly string[]) => void,
): Promise<Takeoff> {
  const first = takeoff(job);
  if (seconds === 0) return first;
  try {
    const { search } = await import('./search.ts');
    const searched = await search(first, seconds);
    return Object.keys(searched).length > 0 ? takeoff(job, searched) : first;
  } catch (error) {
    say([filled(words.cli.searchFailed, { why: whyNot(words, error) })]);
    return first;
  }
}
