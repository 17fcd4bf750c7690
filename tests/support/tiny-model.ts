import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { tinyOnnx } from './tiny-onnx.ts';

interface TinyModel {
  /** What it always writes: words apart by spaces, punctuation as "##.", no word twice. */
  readonly writes: string;
  /** Whether it takes a conversation, as an instruct model does, or a text to go on with. */
  readonly converses?: boolean;
  readonly weights?: string;
}

export const SPECIAL = ['[PAD]', '[UNK]', '[END]'] as const;
const END = 2;

/** Writes a model of a few kilobytes, in the layout of a Llama that the transformers library reads. */
export async function writeTinyModel(folder: string, model: TinyModel): Promise<void> {
  const { writes, converses = false, weights = 'model.onnx' } = model;
  const words = [...SPECIAL, converses ? 'assistant:' : 'Said:', ...writes.split(' ')];
  const follows = words.map((_, index) => (index < SPECIAL.length ? END : next(index, words)));
  await mkdir(join(folder, 'onnx'), { recursive: true });
  await writeFile(join(folder, 'onnx', weights), tinyOnnx(follows));
  const files = {
    'config.json': config(words.length),
    'generation_config.json': { eos_token_id: END, pad_token_id: 0 },
    'tokenizer.json': tinyTokenizer(words),
    'tokenizer_config.json': tokenizerConfig(converses),
  };
  for (const [name, content] of Object.entries(files)) {
    await writeFile(join(folder, name), JSON.stringify(content));
  }
}

const next = (index: number, words: readonly string[]): number =>
  index + 1 < words.length ? index + 1 : END;

const config = (vocabulary: number) => ({
  architectures: ['LlamaForCausalLM'],
  model_type: 'llama',
  vocab_size: vocabulary,
  hidden_size: 1,
  intermediate_size: 1,
  num_hidden_layers: 1,
  num_attention_heads: 1,
  num_key_value_heads: 1,
  head_dim: 1,
  max_position_embeddings: 4096,
  rms_norm_eps: 1e-6,
  rope_theta: 10_000,
  hidden_act: 'silu',
  tie_word_embeddings: true,
  eos_token_id: END,
  pad_token_id: 0,
});

export const tinyTokenizer = (words: readonly string[]) => ({
  version: '1.0',
  truncation: null,
  padding: null,
  added_tokens: SPECIAL.map((content, id) => ({
    id,
    content,
    single_word: false,
    lstrip: false,
    rstrip: false,
    normalized: false,
    special: true,
  })),
  normalizer: null,
  pre_tokenizer: { type: 'WhitespaceSplit' },
  post_processor: null,
  decoder: { type: 'WordPiece', prefix: '##', cleanup: false },
  model: {
    type: 'WordPiece',
    unk_token: '[UNK]',
    continuing_subword_prefix: '##',
    max_input_chars_per_word: 100,
    vocab: Object.fromEntries(words.map((word, id) => [word, id])),
  },
});

const CONVERSATION = '{% for m in messages %}{{ m.role }}: {{ m.content }}\n{% endfor %}assistant:';

const tokenizerConfig = (converses: boolean) => ({
  tokenizer_class: 'PreTrainedTokenizerFast',
  unk_token: '[UNK]',
  pad_token: '[PAD]',
  eos_token: '[END]',
  model_max_length: 4096,
  clean_up_tokenization_spaces: false,
  ...(converses ? { chat_template: CONVERSATION } : {}),
});
