import { message, type Field } from './protobuf.ts';

/** The parts of an ONNX file. Field numbers from onnx.proto (github.com/onnx/onnx), operator set 17. */
export const FLOAT = 1;
export const INT64 = 7;

export interface OnnxGraph {
  readonly nodes: readonly Uint8Array[];
  readonly tensors: readonly Uint8Array[];
  readonly inputs: readonly Uint8Array[];
  readonly outputs: readonly Uint8Array[];
}

export function onnxFile({ nodes, tensors, inputs, outputs }: OnnxGraph): Uint8Array {
  const graph = message(
    ...nodes.map((each): Field => [1, each]),
    [2, 'tiny'],
    ...tensors.map((each): Field => [5, each]),
    ...inputs.map((each): Field => [11, each]),
    ...outputs.map((each): Field => [12, each]),
  );
  return message(
    [1, 8], // ir_version
    [7, graph],
    [8, message([1, ''], [2, 17])], // opset_import: the default domain
  );
}

export function node(
  operator: string,
  inputs: readonly string[],
  ...rest: readonly [string, Uint8Array?]
): Uint8Array {
  const [output, attributes] = rest;
  return message(
    ...inputs.map((input): Field => [1, input]),
    [2, output],
    [4, operator],
    ...(attributes ? [[5, attributes] satisfies Field] : []),
  );
}

/** An attribute that is one whole number. */
export const attribute = (name: string, value: number): Uint8Array =>
  message([1, name], [3, value], [20, 2]);

interface Raw {
  readonly type: number;
  readonly data: Uint8Array;
}

const tensor = (name: string, dims: readonly number[], { type, data }: Raw): Uint8Array =>
  message(...dims.map((dim): Field => [1, dim]), [2, type], [8, name], [9, data]);

export const floats = (
  name: string,
  dims: readonly number[],
  values: readonly number[],
): Uint8Array =>
  tensor(name, dims, { type: FLOAT, data: new Uint8Array(Float32Array.from(values).buffer) });

export const integers = (name: string, values: readonly number[]): Uint8Array =>
  tensor(name, [values.length], {
    type: INT64,
    data: new Uint8Array(BigInt64Array.from(values.map(BigInt)).buffer),
  });

/** A value's name, element type and shape; a dimension by name may be of any size. */
export function shaped(name: string, type: number, dims: readonly (number | string)[]): Uint8Array {
  const dimensions = dims.map((dim): Field => [
    1,
    typeof dim === 'number' ? message([1, dim]) : message([2, dim]),
  ]);
  return message([1, name], [2, message([1, message([1, type], [2, message(...dimensions)])])]);
}
