import type { Engine } from '../engine.ts';
import { afterDelay } from '../browser/after-delay.ts';
import { asEngineWorker } from '../worker/browser-worker.ts';
import { createWorkerEngine } from '../worker/worker-engine.ts';
import type { FreeTextFiles } from './serve-free-text.ts';

/** Any speech model of the transformers library that the hub has, in a browser. */
export function createFreeTextEngine(files: FreeTextFiles): Engine {
  const createWorker = () =>
    asEngineWorker<FreeTextFiles>(
      new Worker(new URL('./free-text.worker.ts', import.meta.url), { type: 'module' }),
    );
  return { ...createWorkerEngine({ createWorker, files, after: afterDelay }), hasOneWording: true };
}
