import type { Pronunciations } from '../../../core/hearing/dictionary.ts';
import { afterDelay } from '../browser/after-delay.ts';
import { asEngineWorker } from '../worker/browser-worker.ts';
import { createWorkerEngine, type WorkerEngine } from '../worker/worker-engine.ts';

export interface EmbeddedFiles {
  /** Folder of the model files, without a slash at its end. */
  readonly modelUrl: string;
  /** Words that the model's dictionary lacks. */
  readonly pronunciations: Pronunciations;
}

/** The embedded finite-state engine in a browser. */
export function createEmbeddedEngine(files: EmbeddedFiles): WorkerEngine {
  const createWorker = () =>
    asEngineWorker<EmbeddedFiles>(
      new Worker(new URL('./embedded.worker.ts', import.meta.url), { type: 'module' }),
    );
  return createWorkerEngine({ createWorker, files, after: afterDelay });
}
