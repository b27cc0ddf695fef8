import { demoJob } from '../../job/demo.ts';
import type { Job, Lumber } from '../../job/job.ts';
import { takingOver } from '../../job/takeOver.ts';

/** What a new job starts with: what the open job has, or what nobody has changed yet. */
export type StartsFrom = 'open-job' | 'defaults';

/** The user's own go along. The sample's don't, as long as nobody has made them their own. */
export function startsFrom({ lumber }: Job): StartsFrom {
  return same(lumber, demoJob().lumber) ? 'defaults' : 'open-job';
}

/** Whether there is a board or a price among them that the sample made up. */
export function hasMadeUpBoards({ lumber }: Job): boolean {
  const madeUp = boardsOf(demoJob().lumber);
  return boardsOf(lumber).some((row) => madeUp.some((one) => same(row, one)));
}

export function startedFrom(fresh: Job, open: Job, from: StartsFrom): Job {
  return from === 'open-job' ? takingOver(fresh, open) : fresh;
}

/** What is somebody's own: boards on a truck, and prices. */
function boardsOf({ truck, yard }: Lumber): readonly unknown[] {
  return [...truck, ...yard.filter(({ price }) => price !== undefined)];
}

function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
