import type { MeshPlan, MeshProblem } from '../../takeoff/steel/plan.ts';
import { searchMesh } from '../../takeoff/steel/searchMesh.ts';
import type { SearchAsk, SearchSent } from './searchMessages.ts';

// The worker of the mesh layout: no logic of its own.

/** Seconds. */
const clock = () => performance.now() / 1000;

self.addEventListener('message', ({ data }: MessageEvent<SearchAsk<MeshProblem>>) => {
  const { id, question, seconds } = data;
  try {
    const onBetter = (better: MeshPlan) => send({ id, better });
    const done = searchMesh(question, { seconds, clock, onBetter });
    send(done ? { id, done } : { id, failed: 'not-enough' });
  } catch (error) {
    send({ id, failed: error instanceof Error ? error.message : String(error) });
  }
});

function send(sent: SearchSent<MeshPlan>): void {
  self.postMessage(sent);
}
