/** One field of a protobuf message: its number and its value. Enough of the encoding to write a model. */
export type Field =
  | readonly [number: number, value: number]
  | readonly [number: number, value: string]
  | readonly [number: number, value: Uint8Array];

/** Whole numbers as varints, text and nested messages by length: protobuf.dev/programming-guides/encoding. */
export function message(...fields: readonly Field[]): Uint8Array {
  return joined(fields.map(([number, value]) => field(number, value)));
}

const VARINT = 0;
const BY_LENGTH = 2;

function field(number: number, value: number | string | Uint8Array): Uint8Array {
  if (typeof value === 'number') return joined([varint(number * 8 + VARINT), varint(value)]);
  const bytes = typeof value === 'string' ? new TextEncoder().encode(value) : value;
  return joined([varint(number * 8 + BY_LENGTH), varint(bytes.length), bytes]);
}

function varint(value: number): Uint8Array {
  const bytes: number[] = [];
  let rest = value;
  while (rest >= 128) {
    bytes.push((rest % 128) + 128);
    rest = Math.floor(rest / 128);
  }
  return Uint8Array.from([...bytes, rest]);
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  return Uint8Array.from(pieces.flatMap((piece) => Array.from(piece)));
}
