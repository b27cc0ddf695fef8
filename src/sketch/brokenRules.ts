import type { Job } from '../job/job.ts';
import type { Takeoff } from '../takeoff/result.ts';
import { formatLength } from '../units/length.ts';
import type { SketchWords } from './words/en.ts';

/** Which rules the stake set by hand leaves broken, in words. */
export function saidBroken(
  takeoff: Takeoff,
  hand: string | null,
  { units }: Pick<Job, 'units'>,
  words: SketchWords,
): readonly string[] {
  if (hand === null) return [];
  const broken = takeoff.stakes?.broken.filter((one) => one.hand === hand) ?? [];
  const said = broken.map(({ rule, found, allowed }) =>
    words.stakes.broken[rule](formatLength(found, units), formatLength(allowed, units)),
  );
  return [...new Set(said)];
}
