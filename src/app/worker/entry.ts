import type { Searched } from '../../takeoff/searched.ts';
import { takeoff } from '../../takeoff/takeoff.ts';
import type { Answer, Ask } from './messages.ts';
import { inParts } from './parts.ts';

// No logic of its own: the same pure function that the page runs for small jobs.
self.addEventListener('message', ({ data }: MessageEvent<Ask>) => {
  for (const sent of inParts(answer(data))) self.postMessage(sent);
});

let known: Searched = {};

function answer({ id, job, searched = known }: Ask): Answer {
  known = searched;
  const start = performance.now();
  try {
    const figured = takeoff(job, searched);
    return { id, took: performance.now() - start, takeoff: figured };
  } catch (error) {
    return { id, failed: error instanceof Error ? error.message : String(error) };
  }
}
