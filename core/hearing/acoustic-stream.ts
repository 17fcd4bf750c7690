/**
 * The neural engine's acoustic model, whatever runs it: sound in pieces of any length becomes log
 * probabilities of phones, one row each 20 ms. The model remembers nothing itself; what it must know of the
 * sound before goes in and comes out with every run, and zeros are the state before the first sound.
 */
export interface AcousticDescription {
  /** What the columns after the first mean; the first is "no new phone" (CTC's blank). */
  readonly phones: readonly string[];
  readonly sampleRate: number;
  /** A run takes a multiple of this many samples: 40 ms. */
  readonly samplesPerStep: number;
  /** From one row to the next. */
  readonly frameSamples: number;
  /** How much later than its sound a row comes out, its window of `windowSamples` apart. */
  readonly delaySamples: number;
  readonly windowSamples: number;
  /** The state's parts, by name, and their dimensions; `NAME_after` comes out to go in as `NAME`. */
  readonly state: Readonly<Record<string, readonly number[]>>;
}

export interface Values {
  readonly data: Float32Array;
  readonly dims: readonly number[];
}

export type NamedValues = Readonly<Record<string, Values>>;

/** One run of the model, by onnxruntime in the page or in Node. */
export type RunModel = (inputs: NamedValues) => Promise<NamedValues>;

/** One utterance at a time. The calls of one stream must not overlap: await each before the next. */
export interface AcousticStream {
  /**
   * Mono samples in −1..1 at the description's rate, in any portions. Gives the rows that are known by
   * now, end to end: `phones.length + 1` natural logarithms each. Row r speaks of sample r · frameSamples.
   */
  readonly accept: (samples: Float32Array) => Promise<Float32Array>;
  /** The rest of the rows. What is accepted afterwards begins the next utterance. */
  readonly finish: () => Promise<Float32Array>;
  /** Forgets the utterance. */
  readonly reset: () => void;
}

const NO_ROWS = new Float32Array();

export function createAcousticStream(
  run: RunModel,
  description: AcousticDescription,
): AcousticStream {
  const { samplesPerStep, delaySamples, frameSamples } = description;
  const columns = description.phones.length + 1;
  let state = freshState(description);
  let waiting: Float32Array = NO_ROWS;
  /** Values that speak of the time before the first sound. */
  let ahead = (delaySamples / frameSamples) * columns;

  const reset = (): void => {
    state = freshState(description);
    waiting = NO_ROWS;
    ahead = (delaySamples / frameSamples) * columns;
  };
  const hear = async (samples: Float32Array): Promise<Float32Array> => {
    if (samples.length === 0) return NO_ROWS;
    const sound = { data: samples, dims: [1, samples.length] };
    const made = await run({ samples: sound, ...state });
    state = stateAfter(made, description);
    const rows = valuesOf(made, 'log_probabilities').data;
    const known = rows.subarray(Math.min(ahead, rows.length));
    ahead -= rows.length - known.length;
    return known;
  };
  return {
    reset,
    accept: (samples) => {
      const sound = join(waiting, samples);
      const whole = sound.length - (sound.length % samplesPerStep);
      waiting = sound.slice(whole);
      return hear(sound.subarray(0, whole));
    },
    finish: async () => {
      const steps = Math.ceil(waiting.length / samplesPerStep);
      const silence = new Float32Array(steps * samplesPerStep - waiting.length + delaySamples);
      const rows = await hear(join(waiting, silence));
      reset();
      return rows;
    },
  };
}

function freshState({ state }: AcousticDescription): NamedValues {
  const parts = Object.entries(state).map(([name, dims]) => {
    const size = dims.reduce((product, length) => product * length, 1);
    return [name, { data: new Float32Array(size), dims }] as const;
  });
  return Object.fromEntries(parts);
}

function stateAfter(made: NamedValues, { state }: AcousticDescription): NamedValues {
  return Object.fromEntries(
    Object.keys(state).map((name) => [name, valuesOf(made, `${name}_after`)]),
  );
}

function valuesOf(made: NamedValues, name: string): Values {
  const values = made[name];
  if (values === undefined) throw new Error(`the acoustic model gives no ${name}`);
  return values;
}

function join(left: Float32Array, right: Float32Array): Float32Array {
  const both = new Float32Array(left.length + right.length);
  both.set(left);
  both.set(right, left.length);
  return both;
}
