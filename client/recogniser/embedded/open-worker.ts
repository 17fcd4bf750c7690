import type { EngineWorker } from './embedded-engine.ts';
import type { FromEngine } from './protocol.ts';

/** Starts the engine's worker in a browser. */
export function openEngineWorker(): EngineWorker {
  const worker = new Worker(new URL('./embedded.worker.ts', import.meta.url), { type: 'module' });
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
