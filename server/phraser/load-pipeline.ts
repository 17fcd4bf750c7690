import type { TextGenerationPipeline } from '@huggingface/transformers';
import type { Dtype } from './model-folder.ts';

/** The library takes half a second to load: only whoever asks for a model pays it. */
export async function loadPipeline(path: string, dtype: Dtype): Promise<TextGenerationPipeline> {
  const { env, LogLevel, pipeline } = await import('@huggingface/transformers');
  env.allowRemoteModels = false;
  env.useFSCache = false;
  env.useWasmCache = false;
  env.logLevel = LogLevel.ERROR;
  env.fetch = () => Promise.reject(new Error('a phrasing model is read from its folder alone'));
  return pipeline('text-generation', path, {
    dtype,
    device: 'cpu',
    local_files_only: true,
    session_options: ONE_THREAD,
  });
}

/** The recogniser runs beside it; in a trial in Chromium, small models were slower on two threads than on one. */
const ONE_THREAD = { intraOpNumThreads: 1, interOpNumThreads: 1 };
