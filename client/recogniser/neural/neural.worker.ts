import * as onnx from 'onnxruntime-web/wasm';

import type { ToEngine } from '../worker/protocol.ts';
import type { NeuralFiles } from './neural-engine.ts';
import { serveNeural } from './serve-neural.ts';

/** The neural engine's own thread. */
const answer = serveNeural({
  send: (message) => postMessage(message),
  fetch,
  start: ({ runtime, glueUrl }) => {
    // One thread: a second brings nothing at this size, and a phone has the page and the other engine to run.
    onnx.env.wasm.numThreads = 1;
    onnx.env.wasm.wasmPaths = { mjs: glueUrl };
    onnx.env.wasm.wasmBinary = runtime;
    return onnx;
  },
});

addEventListener('message', ({ data }: MessageEvent<ToEngine<NeuralFiles>>) => void answer(data));
