import { readdir, stat } from 'node:fs/promises';
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';

/** Where a model that writes whatever is said comes from: a folder here, or the hub by its name. */
export type SpeechModel =
  | { readonly kind: 'folder'; readonly path: string; readonly dtype: Dtype }
  | { readonly kind: 'hub'; readonly name: string; readonly dtype: Dtype }
  | { readonly kind: 'unusable'; readonly message: string };

/** Downloads are kept here: the second time needs no network. */
export const MODEL_CACHE = join(homedir(), '.cache', 'gloveside', 'speech-models');

/** The library's name for each ending of the weights' files. On a CPU, whole bytes first. */
const ENDINGS = { _quantized: 'q8', _int8: 'int8', '': 'fp32', _fp16: 'fp16', _q4: 'q4' } as const;
export type Dtype = (typeof ENDINGS)[keyof typeof ENDINGS];

const NEEDED = [
  'config.json',
  'generation_config.json',
  'preprocessor_config.json',
  'tokenizer.json',
  'tokenizer_config.json',
] as const;

const LAYOUT = `a speech model's folder holds ${NEEDED.join(', ')} and onnx/`;
const HUB_NAME = /^[\w.-]+\/[\w.-]+$/;

/** A folder that is there is meant before a name on the hub. */
export async function findSpeechModel(given: string): Promise<SpeechModel> {
  const path = resolve(given);
  const held = await names(path);
  if (held === null) {
    return HUB_NAME.test(given)
      ? { kind: 'hub', name: given, dtype: 'q8' }
      : unusable(`there is no folder ${path}: ${LAYOUT}`);
  }
  const lacking = NEEDED.filter((file) => !held.includes(file));
  if (lacking.length > 0) {
    return unusable(`${path} lacks ${lacking.join(' and ')}: ${LAYOUT}, copy it whole`);
  }
  const dtype = dtypeOf((await names(join(path, 'onnx'))) ?? []);
  return dtype === null
    ? unusable(`${path} lacks its weights: onnx/ holds an encoder_model and a decoder_model_merged`)
    : { kind: 'folder', path, dtype };
}

function dtypeOf(held: readonly string[]): Dtype | null {
  for (const [ending, dtype] of Object.entries(ENDINGS)) {
    const files = [`encoder_model${ending}.onnx`, `decoder_model_merged${ending}.onnx`];
    if (files.every((file) => held.includes(file))) return dtype;
  }
  return null;
}

const unusable = (message: string): SpeechModel => ({ kind: 'unusable', message });

async function names(path: string): Promise<readonly string[] | null> {
  const isFolder = await stat(path).then(
    (found) => found.isDirectory(),
    () => false,
  );
  return isFolder ? readdir(path) : null;
}
