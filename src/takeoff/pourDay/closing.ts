import type { Job } from '../../job/job.ts';
import type { CloseOut } from '../../job/pourLog.ts';
import type { Takeoff } from '../result.ts';
import { progressOf } from './progress.ts';

/**
 * The close-out as the log has it, to be set right by hand: bags used and left by mix, with what a bag makes and what the
 * net was on that day. Nothing while pour or bags can't be figured.
 * @param at Whole milliseconds since 1970.
 */
export function closing(job: Job, { pour, mix }: Takeoff, at: number): CloseOut | undefined {
  if (!pour || !mix || !(mix.net > 0)) return undefined;
  const { mixes } = job.practices.mix;
  const { bags } = progressOf(job.pourLog ?? { checked: [], entries: [] }, mix, mixes);
  return {
    at,
    net: mix.net,
    area: pour.area,
    bags: bags.flatMap(({ mix: id, used, left }) => {
      const bag = mixes.find((one) => one.id === id);
      return bag ? [{ mix: id, name: bag.name, yield: bag.yield, used, left, returned: 0 }] : [];
    }),
    hours: [],
    wrong: [],
    says: '',
  };
}
