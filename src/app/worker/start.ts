import type { StartWorker } from './client.ts';
import type { Answer } from './messages.ts';

export const startTakeoffWorker: StartWorker = (onAnswer, onBroken) => {
  const worker = new Worker(new URL('./entry.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => onAnswer(data));
  worker.addEventListener('error', ({ message }) => onBroken(message));
  return { ask: (ask) => worker.postMessage(ask), terminate: () => worker.terminate() };
};
