import { createSession, type Session } from '../../src/app/session.ts';
import { openState } from '../../src/app/state.ts';
import { createLiveTakeoffs } from '../../src/app/worker/live.ts';
import type { Job } from '../../src/job/job.ts';
import { idleSearches } from './idleSearches.ts';

/** A session that figures and keeps nothing, for what only speaks and shows. */
export function idleSession(job: Job): Session {
  return createSession({
    first: openState('one', job, {}, 'light'),
    untried: false,
    searches: idleSearches(),
    takeoffs: createLiveTakeoffs({
      figure: () => ({ notes: [] }),
      startWorker: () => ({ ask: () => {}, terminate: () => {} }),
      clock: () => 0,
      slowAfter: 8,
      manyCorners: 1000,
      patience: 1000,
    }),
    saver: { save: () => {}, soon: () => {} },
    keepTheme: () => {},
  });
}
