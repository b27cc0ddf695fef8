import type { StartWorker } from './client.ts';
import type { Sent } from './messages.ts';
import { gatherParts } from './parts.ts';

export const startTakeoffWorker: StartWorker = (onAnswer, onBroken) => {
  const worker = new Worker(new URL('./entry.ts', import.meta.url), { type: 'module' });
  const take = gatherParts(onAnswer);
  worker.addEventListener('message', ({ data }: MessageEvent<Sent>) => take(data));
  worker.addEventListener('error', ({ message }) => onBroken(message));
  return { ask: (ask) => worker.postMessage(ask), terminate: () => worker.terminate() };
};
