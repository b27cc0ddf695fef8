import type { JointPlan, JointProblem } from '../../takeoff/joints/layout.ts';
import { searchAll } from '../../takeoff/joints/searchAll.ts';
import type { SearchAsk, SearchSent } from './searchMessages.ts';

// The worker of the joint layout: no logic of its own.

/** Seconds. */
const clock = () => performance.now() / 1000;

self.addEventListener('message', ({ data }: MessageEvent<SearchAsk<readonly JointProblem[]>>) => {
  const { id, question, seconds } = data;
  try {
    const onBetter = (better: readonly JointPlan[]) => send({ id, better });
    send({ id, done: searchAll(question, { seconds, clock, onBetter }) });
  } catch (error) {
    send({ id, failed: error instanceof Error ? error.message : String(error) });
  }
});

function send(sent: SearchSent<readonly JointPlan[]>): void {
  self.postMessage(sent);
}
