import type { ProgressInfo } from '@huggingface/transformers';
import { hearFreeText, type Transcribe } from '../../core/hearing/free-text.ts';
import type { HearerOutcome } from './open-hearer.ts';
import { findSpeechModel, MODEL_CACHE, type SpeechModel } from './speech-model.ts';

export interface DownloadOptions {
  /** A line now and then while a model comes. */
  readonly onProgress: (line: string) => void;
  /** Where what came is kept. */
  readonly cacheFolder?: string;
}

/**
 * Any model of the library's automatic speech recognition, Moonshine or Whisper, from a folder or from the hub by
 * name. Nothing tells it what may be said, so that it hears any word, and numbers worse than ours beside a fan.
 */
export async function openTransformersHearer(
  given: string | undefined,
  options: DownloadOptions,
): Promise<HearerOutcome> {
  if (given === undefined) {
    return unavailable(
      '--engine transformers needs --model: a folder, or a name on the hub as org/name',
    );
  }
  const model = await findSpeechModel(given);
  if (model.kind === 'unusable') return unavailable(model.message);
  try {
    const transcribe = await load(model, options);
    return {
      kind: 'opened',
      hearer: {
        hear: (samples) => hearFreeText(samples, transcribe),
        follower: null,
        dispose: () => undefined,
      },
    };
  } catch (fault) {
    return unavailable(whyNot(model, fault));
  }
}

type Usable = Exclude<SpeechModel, { kind: 'unusable' }>;

/** The library takes half a second to load: only whoever asks for such a model pays it. */
async function load(
  model: Usable,
  { onProgress, cacheFolder = MODEL_CACHE }: DownloadOptions,
): Promise<Transcribe> {
  const { env, LogLevel, pipeline } = await import('@huggingface/transformers');
  const isHub = model.kind === 'hub';
  env.logLevel = LogLevel.ERROR;
  env.allowRemoteModels = isHub;
  env.useFSCache = isHub;
  env.cacheDir = cacheFolder;
  env.useWasmCache = false;
  const recognise = await pipeline(
    'automatic-speech-recognition',
    isHub ? model.name : model.path,
    {
      dtype: model.dtype,
      device: 'cpu',
      local_files_only: !isHub,
      ...(isHub ? { progress_callback: createTold(onProgress) } : {}),
    },
  );
  return async (samples, mostTokens) => {
    const { text } = await recognise(samples, { max_new_tokens: mostTokens });
    return text;
  };
}

/** A line at every tenth of the whole. */
function createTold(onProgress: (line: string) => void): (info: ProgressInfo) => void {
  let told = 0;
  return (info) => {
    if (info.status !== 'progress_total') return;
    const tenths = Math.floor(info.progress / 10);
    if (tenths <= told) return;
    told = tenths;
    onProgress(`the speech model is coming: ${tenths * 10} %`);
  };
}

const unavailable = (message: string): HearerOutcome => ({ kind: 'unavailable', message });

function whyNot(model: Usable, fault: unknown): string {
  const [line = ''] = (fault instanceof Error ? fault.message : String(fault)).split('\n');
  return model.kind === 'hub'
    ? `the model ${model.name} did not come from the hub (${line}): check its name and the connection, or give a folder`
    : `the model in ${model.path} cannot be loaded (${line}): one of its files is damaged or of a kind that this program cannot run; copy the folder again`;
}
