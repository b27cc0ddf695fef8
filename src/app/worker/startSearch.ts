import type { BoardPlan, BoardProblem } from '../../takeoff/boards/plan.ts';
import type { JointPlan, JointProblem } from '../../takeoff/joints/layout.ts';
import type { MeshPlan, MeshProblem } from '../../takeoff/steel/plan.ts';
import type { StartSearchWorker } from './search.ts';
import type { SearchSent } from './searchMessages.ts';

// Workers apart from the takeoff's: a long search never keeps the figures waiting.
export const startBoardSearch: StartSearchWorker<BoardProblem, BoardPlan> = tiedTo(
  () => new Worker(new URL('./searchEntry.ts', import.meta.url), { type: 'module' }),
);

export const startMeshSearch: StartSearchWorker<MeshProblem, MeshPlan> = tiedTo(
  () => new Worker(new URL('./meshSearchEntry.ts', import.meta.url), { type: 'module' }),
);

export const startJointSearch: StartSearchWorker<readonly JointProblem[], readonly JointPlan[]> =
  tiedTo(() => new Worker(new URL('./jointSearchEntry.ts', import.meta.url), { type: 'module' }));

function tiedTo<Question, Answer>(start: () => Worker): StartSearchWorker<Question, Answer> {
  return (onSent, onBroken) => {
    const worker = start();
    worker.addEventListener('message', ({ data }: MessageEvent<SearchSent<Answer>>) =>
      onSent(data),
    );
    worker.addEventListener('error', ({ message }) => onBroken(message));
    return { ask: (ask) => worker.postMessage(ask), terminate: () => worker.terminate() };
  };
}
