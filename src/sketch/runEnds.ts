import { type Point, samePoint } from '../geometry/point.ts';
import type { Job } from '../job/job.ts';
import { cornerLetter } from '../job/letters.ts';
import type { FormRun } from '../takeoff/result.ts';
import { featureName } from './featureName.ts';
import type { SketchWords } from './words/en.ts';

/** What both ends of a run are called: by the pad's corner there, where there is one. */
export function runEnds(
  job: Job,
  { edges }: FormRun,
  words: SketchWords,
): { readonly start: string; readonly end: string } {
  const [first, last] = [edges[0], edges.at(-1)];
  return {
    start: (first && cornerAt(job, first.from, words)) ?? words.stakes.start,
    end: (last && cornerAt(job, last.to, words)) ?? words.stakes.end,
  };
}

function cornerAt(job: Job, at: Point, words: SketchWords): string | null {
  const pads = job.features.filter(({ kind }) => kind === 'pad');
  for (const pad of pads) {
    if (pad.shape.form !== 'outline') continue;
    const index = pad.shape.corners.findIndex((corner) => samePoint(corner, at));
    if (index < 0) continue;
    const letter = cornerLetter(index);
    return pads.length === 1
      ? words.stakes.corner(letter)
      : words.stakes.cornerOf(featureName(job, pad, words), letter);
  }
  return null;
}
