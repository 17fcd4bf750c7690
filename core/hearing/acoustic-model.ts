import { isRecord, parsed } from './json-record.ts';

/** As much of an ONNX Runtime module as is used: the hosts load it, core never does. */
export interface OnnxModule {
  readonly Tensor: {
    new (type: 'float32', data: Float32Array, dimensions: readonly number[]): OnnxTensor;
    new (type: 'int64', data: BigInt64Array, dimensions: readonly number[]): OnnxTensor;
  };
}

export interface OnnxTensor {
  readonly data: unknown;
}

export interface OnnxSession {
  run(inputs: Readonly<Record<string, OnnxTensor>>): Promise<Readonly<Record<string, OnnxTensor>>>;
}

/** What the file beside an acoustic model says of what goes in and comes out. */
export interface AcousticDescription {
  /** Another for every other model; '' where nothing can be taught to it. */
  readonly edition: string;
  /** How many values its last inner layer puts out beside the log posteriors of each frame; 0 where it keeps them. */
  readonly innerSize: number;
  /** By index, the blank first. */
  readonly phones: readonly string[];
  /** Samples come in multiples of this, 16,000 a second. */
  readonly samplesPerStep: number;
  /** Samples that one frame of log posteriors speaks for. */
  readonly frameSamples: number;
  /** How far what comes out lags behind what went in. */
  readonly delaySamples: number;
  /** Shape of each tensor that one call hands to the next. */
  readonly state: Readonly<Record<string, readonly number[]>>;
}

export type DescriptionOutcome =
  | { readonly kind: 'read'; readonly description: AcousticDescription }
  | { readonly kind: 'unreadable'; readonly message: string };

const BLANK = '';
const COUNTS = ['samplesPerStep', 'frameSamples', 'delaySamples'] as const;

/** Reads the description's JSON text. */
export function readAcousticDescription(text: string): DescriptionOutcome {
  const value = parsed(text);
  if (!isRecord(value)) return unreadable('it is no JSON object');
  const { phones, state } = value;
  if (!isListOf(phones, isText)) return unreadable('phones must be a list of names');
  if (!isRecord(state)) return unreadable('state must name the shape of each tensor');
  const shapes: Record<string, readonly number[]> = {};
  for (const [name, shape] of Object.entries(state)) {
    if (!isListOf(shape, isCount)) return unreadable(`state.${name} must be a list of sizes`);
    shapes[name] = shape;
  }
  const { edition = '', innerSize = 0 } = value;
  if (!isText(edition)) return unreadable('edition must be a name');
  if (innerSize !== 0 && !isCount(innerSize)) return unreadable('innerSize must be a count');
  const counts = { samplesPerStep: 0, frameSamples: 0, delaySamples: 0 };
  for (const name of COUNTS) {
    const count = value[name];
    if (!isCount(count)) return unreadable(`${name} must be a count of samples`);
    counts[name] = count;
  }
  return {
    kind: 'read',
    description: { edition, innerSize, phones: [BLANK, ...phones], ...counts, state: shapes },
  };
}

const unreadable = (what: string): DescriptionOutcome => ({
  kind: 'unreadable',
  message: `The description of the acoustic model cannot be used: ${what}.`,
});

const isText = (value: unknown): value is string => typeof value === 'string';
const isCount = (value: unknown): value is number =>
  typeof value === 'number' && Number.isInteger(value) && value > 0;

function isListOf<Item>(
  value: unknown,
  isItem: (item: unknown) => item is Item,
): value is readonly Item[] {
  return Array.isArray(value) && value.every(isItem);
}
