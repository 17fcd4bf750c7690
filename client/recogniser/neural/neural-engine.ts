import type { Pronunciations } from '../../../core/hearing/dictionary.ts';
import { afterDelay } from '../browser/after-delay.ts';
import { asEngineWorker } from '../worker/browser-worker.ts';
import { createWorkerEngine, type WorkerEngine } from '../worker/worker-engine.ts';

export interface NeuralFiles {
  /** Whole address of the list of what to load (manifest.ts). */
  readonly manifestUrl: string;
  /** Words that its dictionary lacks. */
  readonly pronunciations: Pronunciations;
}

/** The engine trained for these words beside a fan, in a browser. */
export function createNeuralEngine(files: NeuralFiles): WorkerEngine {
  const createWorker = () =>
    asEngineWorker<NeuralFiles>(
      new Worker(new URL('./neural.worker.ts', import.meta.url), { type: 'module' }),
    );
  return createWorkerEngine({ createWorker, files, after: afterDelay });
}
