import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import * as onnx from 'onnxruntime-web';

import { printDictionary, type Pronunciations } from '../../core/hearing/dictionary.ts';
import type { NeuralFiles } from '../../client/recogniser/neural/neural-engine.ts';
import { VOICE_MODEL_FILE } from '../../server/hearing/voice-model.ts';
import { serveNeural } from '../../client/recogniser/neural/serve-neural.ts';
import {
  createWorkerEngine,
  type WorkerEngine,
} from '../../client/recogniser/worker/worker-engine.ts';
import { createInProcessWorker } from './in-process-worker.ts';

export interface NeuralInNode {
  readonly engine: WorkerEngine;
  /** What the server answers for the model, from now on. */
  readonly serveModel: (bytes: Uint8Array<ArrayBuffer>) => void;
  readonly model: Uint8Array<ArrayBuffer>;
  /** The same for the voice detector's. */
  readonly serveDetector: (bytes: Uint8Array<ArrayBuffer>) => void;
  /** Addresses asked for, in order. */
  readonly asked: readonly string[];
}

const MANIFEST = 'http://page.test/model/neural/files.json';

/** The page's neural engine and its WebAssembly, but for the thread and the network. */
export async function createNeuralInNode(
  folder: string,
  pronunciations: Pronunciations,
  detector?: Uint8Array<ArrayBuffer>,
): Promise<NeuralInNode> {
  const bytesOf = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text);
  const model = new Uint8Array(await readFile(join(folder, 'model.onnx')));
  const files = {
    model,
    description: new Uint8Array(await readFile(join(folder, 'model.json'))),
    dictionary: bytesOf(printDictionary(pronunciations)),
    // The package brings its own to Node.
    runtime: bytesOf('runtime'),
    detector: detector ?? new Uint8Array(await readFile(VOICE_MODEL_FILE)),
    glue: bytesOf('glue'),
  };
  const served = new Map<string, Uint8Array<ArrayBuffer>>();
  const listed = Object.entries(files).map(([role, bytes]) => {
    served.set(`/${role}`, bytes);
    const sha256 = createHash('sha256').update(bytes).digest('hex');
    return [role, { url: `/${role}`, bytes: bytes.length, sha256 }] as const;
  });
  served.set(new URL(MANIFEST).pathname, bytesOf(JSON.stringify(Object.fromEntries(listed))));
  const asked: string[] = [];
  const fetchServed = (address: string): Promise<Response> => {
    const { pathname, search } = new URL(address);
    asked.push(pathname + search);
    const bytes = served.get(pathname);
    return Promise.resolve(bytes ? new Response(bytes) : new Response(null, { status: 404 }));
  };
  onnx.env.wasm.numThreads = 1;
  const engine = createWorkerEngine<NeuralFiles>({
    files: { manifestUrl: MANIFEST, pronunciations: {} },
    after: () => () => undefined,
    createWorker: () =>
      createInProcessWorker((send) =>
        serveNeural({
          send,
          fetch: (asking) =>
            fetchServed(asking instanceof Request ? asking.url : asking.toString()),
          start: () => onnx,
        }),
      ),
  });
  return {
    engine,
    model,
    asked,
    serveModel: (bytes) => void served.set('/model', bytes),
    serveDetector: (bytes) => void served.set('/detector', bytes),
  };
}
