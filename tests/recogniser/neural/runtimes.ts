import { readFile } from 'node:fs/promises';
import type { InferenceSession, Tensor } from 'onnxruntime-common';
import { z } from 'zod';

import type {
  AcousticDescription,
  NamedValues,
  RunModel,
} from '../../../core/hearing/acoustic-stream.ts';

const MODEL = new URL('../../../client/recogniser/neural/model/', import.meta.url);
const REFERENCE = new URL('./reference/', import.meta.url);

/** What both of onnxruntime's packages give. */
interface Runtime {
  readonly InferenceSession: {
    readonly create: (
      model: Uint8Array,
      options: InferenceSession.SessionOptions,
    ) => Promise<InferenceSession>;
  };
  readonly Tensor: new (type: 'float32', data: Float32Array, dims: readonly number[]) => Tensor;
}

export const readModel = (): Promise<Buffer> => readFile(new URL('model.onnx', MODEL));

const DESCRIPTION = z.object({
  phones: z.array(z.string()),
  sampleRate: z.number(),
  samplesPerStep: z.number(),
  frameSamples: z.number(),
  delaySamples: z.number(),
  windowSamples: z.number(),
  state: z.record(z.string(), z.array(z.number())),
});

export async function readDescription(): Promise<AcousticDescription> {
  return DESCRIPTION.parse(JSON.parse(await readFile(new URL('model.json', MODEL), 'utf8')));
}

/** One thread, as in the page; and only the changes to the graph that leave its sums as they are. */
export async function openModel(
  { InferenceSession: sessions, Tensor: Values }: Runtime,
  executionProvider: 'wasm' | 'cpu',
): Promise<RunModel> {
  const session = await sessions.create(await readModel(), {
    executionProviders: [executionProvider],
    graphOptimizationLevel: 'basic',
    intraOpNumThreads: 1,
  });
  return async (inputs) => {
    const made = await session.run(
      Object.fromEntries(
        Object.entries(inputs).map(([name, { data, dims }]) => [
          name,
          new Values('float32', data, dims),
        ]),
      ),
    );
    return Object.fromEntries(Object.entries(made).map(([name, value]) => [name, asValues(value)]));
  };
}

function asValues({ data, dims }: Tensor): NamedValues[string] {
  if (!(data instanceof Float32Array)) throw new Error('the model gives numbers of another kind');
  return { data, dims };
}

/** A held-out voice, and what the trained network made of it before its weights were rounded. */
export async function readReference(): Promise<{
  readonly sound: Float32Array;
  readonly rows: Float32Array;
  readonly phones: readonly string[];
}> {
  const read = (file: string): Promise<Buffer> => readFile(new URL(file, REFERENCE));
  const [sound, rows] = [await read('sound.i16'), await read('log-probabilities.f32')];
  return {
    sound: Float32Array.from(
      { length: sound.length / 2 },
      (_, at) => sound.readInt16LE(2 * at) / 32_768,
    ),
    rows: Float32Array.from({ length: rows.length / 4 }, (_, at) => rows.readFloatLE(4 * at)),
    phones: (await read('said.txt')).toString('utf8').trim().split(' '),
  };
}
