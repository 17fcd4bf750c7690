import { readdir, readFile, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { type Lexicon, parseLexicon } from '../../prompts/decode/lexicon.ts';

/** A folder laid out as the transformers library reads it, or one line on what it lacks. */
export type ModelFolder =
  | {
      readonly kind: 'model';
      readonly path: string;
      readonly dtype: Dtype;
      /** Which words a model that writes slots may use; null for any other model. */
      readonly lexicon: Lexicon | null;
    }
  | { readonly kind: 'unusable'; readonly message: string };

/** The library's name for each file of weights. The first that is there is used: on a CPU, whole bytes first. */
const WEIGHTS = {
  'model_quantized.onnx': 'q8',
  'model_int8.onnx': 'int8',
  'model_uint8.onnx': 'uint8',
  'model.onnx': 'fp32',
  'model_q4.onnx': 'q4',
  'model_fp16.onnx': 'fp16',
} as const satisfies Record<string, string>;
type Weights = keyof typeof WEIGHTS;
export type Dtype = (typeof WEIGHTS)[Weights];

/** Without tokenizer_config.json the library loads no tokenizer at all and fails at the first sentence. */
const NEEDED = ['config.json', 'tokenizer.json', 'tokenizer_config.json'] as const;

const LEXICON = 'lexicon.json';
const text = (file: string): Promise<string> => readFile(file, 'utf8');

const LAYOUT = `a model's folder holds ${NEEDED.join(', ')} and onnx/`;

export async function readModelFolder(folder: string): Promise<ModelFolder> {
  const path = resolve(folder);
  const held = await names(path);
  if (held === null) return unusable(`there is no folder ${path}: ${LAYOUT}`);
  const lacking = NEEDED.filter((file) => !held.includes(file));
  if (lacking.length > 0) {
    return unusable(`${path} lacks ${lacking.join(' and ')}: ${LAYOUT}, copy it whole`);
  }
  const weights = await weightsIn(join(path, 'onnx'));
  if (weights === null) {
    const wanted = Object.keys(WEIGHTS).join(', ');
    return unusable(`${path} lacks its weights: put one of these in its onnx/: ${wanted}`);
  }
  const lexicon = held.includes(LEXICON) ? parseLexicon(await text(join(path, LEXICON))) : null;
  if (held.includes(LEXICON) && lexicon === null) {
    return unusable(`${join(path, LEXICON)} is damaged: copy the folder again`);
  }
  return { kind: 'model', path, dtype: WEIGHTS[weights], lexicon };
}

const unusable = (message: string): ModelFolder => ({ kind: 'unusable', message });

async function names(path: string): Promise<readonly string[] | null> {
  const isFolder = await stat(path).then(
    (found) => found.isDirectory(),
    () => false,
  );
  return isFolder ? readdir(path) : null;
}

async function weightsIn(path: string): Promise<Weights | null> {
  const held = await names(path);
  return (
    Object.keys(WEIGHTS)
      .filter(isWeights)
      .find((file) => held?.includes(file)) ?? null
  );
}

const isWeights = (file: string): file is Weights => file in WEIGHTS;
