import { attribute, FLOAT, floats, INT64, integers, node, onnxFile, shaped } from './onnx-parts.ts';

const CACHES = ['key', 'value'] as const;

/**
 * A causal language model of one table: after each token the one that `follows` names, whatever came before.
 * Its inputs and outputs are those of a one-layer Llama with one head of size 1; the cache it keeps is zeros,
 * one more a token, as the library counts the length of what it has seen by it.
 */
export function tinyOnnx(follows: readonly number[]): Uint8Array {
  const nodes = [
    node('Gather', ['table', 'input_ids'], 'logits'),
    node('Cast', ['input_ids'], 'ids', attribute('to', FLOAT)),
    node('Mul', ['ids', 'nought'], 'noughts'),
    node('Unsqueeze', ['noughts', 'axes'], 'newest'),
    ...CACHES.map((cache) =>
      node(
        'Concat',
        [`past_key_values.0.${cache}`, 'newest'],
        `present.0.${cache}`,
        attribute('axis', 2),
      ),
    ),
  ];
  const tensors = [
    floats(
      'table',
      [follows.length, follows.length],
      follows.flatMap((next) => oneHot(next, follows.length)),
    ),
    floats('nought', [1], [0]),
    integers('axes', [1, 3]),
  ];
  const inputs = [
    ...['input_ids', 'attention_mask', 'position_ids'].map((name) =>
      shaped(name, INT64, ['batch', name]),
    ),
    ...CACHES.map((cache) => shaped(`past_key_values.0.${cache}`, FLOAT, ['batch', 1, 'past', 1])),
  ];
  const outputs = [
    shaped('logits', FLOAT, ['batch', 'input_ids', follows.length]),
    ...CACHES.map((cache) => shaped(`present.0.${cache}`, FLOAT, ['batch', 1, 'present', 1])),
  ];
  return onnxFile({ nodes, tensors, inputs, outputs });
}

const oneHot = (hot: number, size: number): readonly number[] =>
  Array.from({ length: size }, (_, index) => (index === hot ? 1 : 0));
