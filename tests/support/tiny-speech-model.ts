import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

import { attribute, FLOAT, floats, INT64, integers, node, onnxFile, shaped } from './onnx-parts.ts';
import { SPECIAL, tinyTokenizer } from './tiny-model.ts';

/**
 * A Moonshine of a few kilobytes in the layout that the transformers library reads: it writes one sentence of sound
 * whose mean is above nought and another of the rest, so that what it writes comes from what it was given.
 */
export interface TinySpeechModel {
  readonly above: string;
  readonly below: string;
}

const START = '[START]';
const [, , END] = [0, 1, 2];
const CACHES = ['decoder.key', 'decoder.value', 'encoder.key', 'encoder.value'] as const;

export async function writeTinySpeechModel(folder: string, model: TinySpeechModel): Promise<void> {
  const above = model.above.split(' ');
  const below = model.below.split(' ');
  const words = [...SPECIAL, START, ...above, ...below];
  if (new Set(words).size < words.length) throw new Error('no word twice');
  await mkdir(join(folder, 'onnx'), { recursive: true });
  await writeFile(join(folder, 'onnx', 'encoder_model.onnx'), encoder());
  await writeFile(join(folder, 'onnx', 'decoder_model_merged.onnx'), decoder(words, above.length));
  const files = {
    'config.json': config(words.length),
    'generation_config.json': {
      decoder_start_token_id: words.indexOf(START),
      eos_token_id: END,
      pad_token_id: 0,
    },
    'preprocessor_config.json': {
      feature_extractor_type: 'MoonshineFeatureExtractor',
      sampling_rate: 16_000,
    },
    'tokenizer.json': tinyTokenizer(words),
    'tokenizer_config.json': {
      tokenizer_class: 'PreTrainedTokenizerFast',
      unk_token: '[UNK]',
      pad_token: '[PAD]',
      eos_token: '[END]',
      clean_up_tokenization_spaces: false,
    },
  };
  for (const [name, content] of Object.entries(files)) {
    await writeFile(join(folder, name), JSON.stringify(content));
  }
}

/** The mean of the sound as a hidden state of one step and size one. */
const encoder = (): Uint8Array =>
  onnxFile({
    nodes: [
      node('Unsqueeze', ['input_values', 'axis'], 'one_channel'),
      node('GlobalAveragePool', ['one_channel'], 'last_hidden_state'),
    ],
    tensors: [integers('axis', [1])],
    inputs: [shaped('input_values', FLOAT, ['batch', 'samples'])],
    outputs: [shaped('last_hidden_state', FLOAT, ['batch', 1, 1])],
  });

/** After the start, the mean decides: its sign tips the first word; after any other word comes the next. */
function decoder(words: readonly string[], above: number): Uint8Array {
  const size = words.length;
  const first = SPECIAL.length + 1;
  const second = first + above;
  const start = first - 1;
  const next = (index: number): number =>
    index < first || index === second - 1 || index === size - 1 ? END : index + 1;
  const rows = (score: (row: number, column: number) => number): number[] =>
    Array.from({ length: size * size }, (_, at) => score(Math.floor(at / size), at % size));
  const follows = rows((row, column) => (row !== start && column === next(row) ? 1 : 0));
  const tips = rows((row, column) =>
    row !== start ? 0 : column === first ? 1 : column === second ? -1 : 0,
  );
  const cached = (name: string): string => `past_key_values.0.${name}`;
  return onnxFile({
    nodes: [
      node('Gather', ['follows', 'input_ids'], 'following'),
      node('Gather', ['tips', 'input_ids'], 'tipping'),
      node('Mul', ['tipping', 'encoder_hidden_states'], 'tipped'),
      node('Add', ['following', 'tipped'], 'logits'),
      node('Cast', ['input_ids'], 'ids', attribute('to', FLOAT)),
      node('Mul', ['ids', 'nought'], 'noughts'),
      node('Unsqueeze', ['noughts', 'axes'], 'newest'),
      ...CACHES.map((name) =>
        node('Concat', [cached(name), 'newest'], `present.0.${name}`, attribute('axis', 2)),
      ),
    ],
    tensors: [
      floats('follows', [size, size], follows),
      floats('tips', [size, size], tips),
      floats('nought', [1], [0]),
      integers('axes', [1, 3]),
    ],
    inputs: [
      shaped('input_ids', INT64, ['batch', 'ids']),
      shaped('encoder_hidden_states', FLOAT, ['batch', 'steps', 1]),
      ...CACHES.map((name) => shaped(cached(name), FLOAT, ['batch_size', 1, `past_${name}`, 1])),
    ],
    outputs: [
      shaped('logits', FLOAT, ['batch', 'ids', size]),
      ...CACHES.map((name) => shaped(`present.0.${name}`, FLOAT, ['batch', 1, 'present', 1])),
    ],
  });
}

const config = (vocabulary: number) => ({
  architectures: ['MoonshineForConditionalGeneration'],
  model_type: 'moonshine',
  is_encoder_decoder: true,
  vocab_size: vocabulary,
  hidden_size: 1,
  encoder_num_hidden_layers: 1,
  decoder_num_hidden_layers: 1,
  encoder_num_attention_heads: 1,
  decoder_num_attention_heads: 1,
  encoder_num_key_value_heads: 1,
  decoder_num_key_value_heads: 1,
  decoder_start_token_id: SPECIAL.length,
  bos_token_id: SPECIAL.length,
  eos_token_id: END,
  pad_token_id: 0,
});
