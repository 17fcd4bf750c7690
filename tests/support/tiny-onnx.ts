import { message, type Field } from './protobuf.ts';

/**
 * A causal language model of one table: after each token the one that `follows` names, whatever came before.
 * Its inputs and outputs are those of a one-layer Llama with one head of size 1; the cache it keeps is zeros,
 * one more a token, as the library counts the length of what it has seen by it.
 * Field numbers from onnx.proto (github.com/onnx/onnx), operator set 17.
 */
export function tinyOnnx(follows: readonly number[]): Uint8Array {
  return message(
    [1, 8], // ir_version
    [7, graph(follows)],
    [8, message([1, ''], [2, 17])], // opset_import: the default domain
  );
}

const FLOAT = 1;
const INT64 = 7;
const CACHES = ['key', 'value'] as const;

function graph(follows: readonly number[]): Uint8Array {
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
    tensor('axes', [2], { type: INT64, data: new Uint8Array(BigInt64Array.from([1n, 3n]).buffer) }),
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
  return message(
    ...nodes.map((each): Field => [1, each]),
    [2, 'tiny'],
    ...tensors.map((each): Field => [5, each]),
    ...inputs.map((each): Field => [11, each]),
    ...outputs.map((each): Field => [12, each]),
  );
}

const oneHot = (hot: number, size: number): readonly number[] =>
  Array.from({ length: size }, (_, index) => (index === hot ? 1 : 0));

function node(
  operator: string,
  inputs: readonly string[],
  ...rest: readonly [string, Uint8Array?]
) {
  const [output, attributes] = rest;
  return message(
    ...inputs.map((input): Field => [1, input]),
    [2, output],
    [4, operator],
    ...(attributes ? [[5, attributes] satisfies Field] : []),
  );
}

/** An attribute that is one whole number. */
const attribute = (name: string, value: number) => message([1, name], [3, value], [20, 2]);

interface Raw {
  readonly type: number;
  readonly data: Uint8Array;
}

const tensor = (name: string, dims: readonly number[], { type, data }: Raw) =>
  message(...dims.map((dim): Field => [1, dim]), [2, type], [8, name], [9, data]);

const floats = (name: string, dims: readonly number[], values: readonly number[]) =>
  tensor(name, dims, { type: FLOAT, data: new Uint8Array(Float32Array.from(values).buffer) });

/** A value's name, element type and shape; a dimension by name may be of any size. */
function shaped(name: string, type: number, dims: readonly (number | string)[]): Uint8Array {
  const dimensions = dims.map((dim): Field => [
    1,
    typeof dim === 'number' ? message([1, dim]) : message([2, dim]),
  ]);
  return message([1, name], [2, message([1, message([1, type], [2, message(...dimensions)])])]);
}
