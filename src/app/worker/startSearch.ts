import type { BoardPlan, BoardProblem } from '../../takeoff/boards/plan.ts';
import type { StartSearchWorker } from './search.ts';
import type { SearchSent } from './searchMessages.ts';

/** A worker apart from the takeoff's: a long search never keeps the figures waiting. */
export const startBoardSearch: StartSearchWorker<BoardProblem, BoardPlan> = (onSent, onBroken) => {
  const worker = new Worker(new URL('./searchEntry.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<SearchSent<BoardPlan>>) =>
    onSent(data),
  );
  worker.addEventListener('error', ({ message }) => onBroken(message));
  return { ask: (ask) => worker.postMessage(ask), terminate: () => worker.terminate() };
};
