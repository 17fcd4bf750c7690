import type { FromPhraser } from './protocol.ts';
import type { PhraserWorker } from './worker-phraser.ts';

/** Starts the phrasing model's worker in a browser. */
export function openPhraserWorker(): PhraserWorker {
  const worker = new Worker(new URL('./phraser.worker.ts', import.meta.url), { type: 'module' });
  return {
    post: (message) => worker.postMessage(message),
    listen: (onMessage, onCrash) => {
      worker.addEventListener('message', ({ data }: MessageEvent<FromPhraser>) => onMessage(data));
      worker.addEventListener('error', onCrash);
      worker.addEventListener('messageerror', onCrash);
    },
    terminate: () => worker.terminate(),
  };
}
