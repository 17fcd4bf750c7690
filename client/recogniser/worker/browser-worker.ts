import type { FromEngine } from './protocol.ts';
import type { EngineWorker } from './worker-engine.ts';

/** A browser's worker as an engine uses it. */
export function asEngineWorker<Files>(worker: Worker): EngineWorker<Files> {
  return {
    post: (message, transfer = []) => worker.postMessage(message, transfer),
    listen: (onMessage, onCrash) => {
      worker.addEventListener('message', ({ data }: MessageEvent<FromEngine>) => onMessage(data));
      worker.addEventListener('error', onCrash);
      worker.addEventListener('messageerror', onCrash);
    },
    terminate: () => worker.terminate(),
  };
}
