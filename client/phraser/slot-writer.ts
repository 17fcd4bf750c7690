import {
  env,
  LogitsProcessor,
  LogitsProcessorList,
  LogLevel,
  pipeline,
  type Tensor,
} from '@huggingface/transformers';
import { constrainedStep } from '../../prompts/decode/constrained-step.ts';
import { LONGEST } from '../../prompts/decode/constraint.ts';
import type { Writer } from '../../prompts/decode/phrase-in-tries.ts';

/** Where the build puts the network runtime, which the recogniser runs on too. */
const RUNTIME = {
  mjs: '/runtime/ort-wasm-simd-threaded.mjs',
  wasm: '/runtime/ort-wasm-simd-threaded.wasm',
};

class Constrained extends LogitsProcessor {
  readonly #step: ReturnType<typeof constrainedStep>;

  constructor(step: ReturnType<typeof constrainedStep>) {
    super();
    this.#step = step;
  }

  override _call(rows: bigint[][], logits: Tensor): Tensor {
    this.#step(rows, logits.data);
    return logits;
  }
}

/**
 * The model behind the library, with every file from our own server: left alone, the library would take its
 * runtime from elsewhere and keep caches of its own beside the service worker's.
 */
export async function loadSlotWriter(folder: string): Promise<Writer> {
  env.allowRemoteModels = false;
  env.allowLocalModels = true;
  env.localModelPath = '/';
  env.useBrowserCache = false;
  env.useWasmCache = false;
  env.logLevel = LogLevel.ERROR;
  const { wasm } = env.backends.onnx;
  if (wasm) {
    wasm.wasmPaths = RUNTIME;
    wasm.numThreads = 1;
    wasm.proxy = false;
  }
  const generate = await pipeline('text-generation', folder, {
    dtype: 'fp32',
    device: 'wasm',
    local_files_only: true,
  });
  return async (prompt, constraint) => {
    const processors = new LogitsProcessorList();
    processors.push(new Constrained(constrainedStep(constraint)));
    const [answer] = await generate(prompt, { ...HOW, logits_processor: processors });
    return answer?.generated_text.trim() ?? '';
  };
}

const HOW = { do_sample: false, max_new_tokens: LONGEST, return_full_text: false } as const;
