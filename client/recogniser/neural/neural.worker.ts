import * as onnx from 'onnxruntime-web/wasm';

import type { FromEngine, ToEngine } from '../worker/protocol.ts';
import { fetchNeural } from './model-store.ts';
import { NeuralDesk } from './neural-desk.ts';
import type { NeuralFiles } from './neural-engine.ts';
import { openNeural } from './open-neural.ts';

/** The neural engine's own thread. */
const send = (message: FromEngine): void => postMessage(message);

let desk: NeuralDesk | null = null;

addEventListener('message', ({ data }: MessageEvent<ToEngine<NeuralFiles>>) => {
  if (data.kind === 'load') void load(data.files);
  else void desk?.answer(data);
});

async function load({ manifestUrl, pronunciations }: NeuralFiles): Promise<void> {
  try {
    const onProgress = (progress: { loadedBytes: number; totalBytes: number }): void =>
      send({ kind: 'progress', ...progress });
    const { runtime, glueUrl, ...contents } = await fetchNeural(manifestUrl, { fetch, onProgress });
    // One thread: a second brings nothing at this size, and a phone has the page and the other engine to run.
    onnx.env.wasm.numThreads = 1;
    onnx.env.wasm.wasmPaths = { mjs: glueUrl };
    onnx.env.wasm.wasmBinary = runtime;
    const { decoder, pace } = await openNeural(onnx, { contents, pronunciations });
    // 14 MB that nobody needs any more.
    delete onnx.env.wasm.wasmBinary;
    desk = new NeuralDesk(decoder, send);
    send({ kind: 'loaded', pace });
  } catch (error) {
    send({ kind: 'loadFailed', message: error instanceof Error ? error.message : String(error) });
  }
}
