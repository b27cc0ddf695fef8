import { bidProblems } from '../bidProblems.ts';
import type { Job } from '../job.ts';
import type { Bid } from '../order.ts';
import type { Outcome } from '../refusal.ts';

export interface SetBid {
  readonly do: 'set-bid';
  readonly bid: Bid;
}

/** All of the bid at once. A refusal's `where` is the field (`extras[0].price`). */
export function setBid(job: Job, { bid }: SetBid): Outcome {
  const [problem] = bidProblems(bid, '');
  return problem ? { ok: false, problems: problem } : { ok: true, value: { ...job, bid } };
}
