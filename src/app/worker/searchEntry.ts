import wasmUrl from 'highs/runtime?url';
import type { BoardPlan, BoardProblem } from '../../takeoff/boards/plan.ts';
import { searchPlan } from '../../takeoff/boards/searchPlan.ts';
import { loadSolver } from '../../takeoff/solver/highs.ts';
import type { SearchAsk, SearchSent } from './searchMessages.ts';

// The worker of the board plan: no logic of its own. The solver comes down with its first question.
let solver: ReturnType<typeof loadSolver> | undefined;
/** Seconds. */
const clock = () => performance.now() / 1000;

self.addEventListener('message', async ({ data }: MessageEvent<SearchAsk<BoardProblem>>) => {
  const { id, question, seconds } = data;
  try {
    solver ??= loadSolver({ locateFile: () => wasmUrl });
    const onBetter = (better: BoardPlan) => send({ id, better });
    const found = searchPlan(question, await solver, { seconds, clock, onBetter });
    send('plan' in found ? { id, done: found.plan } : { id, failed: found.none.is });
  } catch (error) {
    send({ id, failed: error instanceof Error ? error.message : String(error) });
  }
});

function send(sent: SearchSent<BoardPlan>): void {
  self.postMessage(sent);
}
