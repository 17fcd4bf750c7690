import { env, LogLevel, pipeline, type ProgressInfo } from '@huggingface/transformers';

import type { Transcribe } from '../../../core/hearing/free-text.ts';
import type { LoadProgress } from '../engine.ts';
import type { ToEngine } from '../worker/protocol.ts';
import { type FreeTextFiles, serveFreeText } from './serve-free-text.ts';

/** The thread of a model that writes whatever is said. */
const answer = serveFreeText({ send: (message) => postMessage(message), load });

addEventListener('message', ({ data }: MessageEvent<ToEngine<FreeTextFiles>>) => void answer(data));

/** The model comes from the hub once and is kept by the library; its runtime comes from our own server. */
async function load(
  { model, runtimeUrl }: FreeTextFiles,
  onProgress: (progress: LoadProgress) => void,
): Promise<Transcribe> {
  env.allowLocalModels = false;
  env.allowRemoteModels = true;
  env.useBrowserCache = true;
  env.useWasmCache = false;
  env.logLevel = LogLevel.ERROR;
  const { wasm } = env.backends.onnx;
  if (wasm) {
    wasm.wasmPaths = {
      mjs: `${runtimeUrl}/ort-wasm-simd-threaded.mjs`,
      wasm: `${runtimeUrl}/ort-wasm-simd-threaded.wasm`,
    };
    wasm.numThreads = 1;
    wasm.proxy = false;
  }
  const recognise = await pipeline('automatic-speech-recognition', model, {
    dtype: 'q8',
    device: 'wasm',
    progress_callback: (info: ProgressInfo) => {
      if (info.status !== 'progress_total') return;
      onProgress({ loadedBytes: info.loaded, totalBytes: info.total });
    },
  });
  return async (samples, mostTokens) => {
    const { text } = await recognise(samples, { max_new_tokens: mostTokens });
    return text;
  };
}
