import { readFile } from 'node:fs/promises';
import type { InferenceSession } from 'onnxruntime-common';

import {
  type AcousticDescription,
  type OnnxModule,
  readAcousticDescription,
} from '../../../core/hearing/acoustic-model.ts';
import type { AcousticModel } from '../../../core/hearing/listener.ts';

const MODEL = new URL('../../../client/recogniser/neural/model/', import.meta.url);
const REFERENCE = new URL('./reference/', import.meta.url);

/** What both of onnxruntime's packages give. */
interface Runtime {
  readonly InferenceSession: {
    readonly create: (
      model: Uint8Array,
      options: InferenceSession.SessionOptions,
    ) => Promise<AcousticModel['session']>;
  };
  readonly Tensor: OnnxModule['Tensor'];
}

export const readModel = (): Promise<Buffer> => readFile(new URL('model.onnx', MODEL));

export async function readDescription(): Promise<AcousticDescription> {
  const outcome = readAcousticDescription(await readFile(new URL('model.json', MODEL), 'utf8'));
  if (outcome.kind === 'unreadable') throw new Error(outcome.message);
  return outcome.description;
}

/** One thread, as in the page; and only the changes to the graph that leave its sums as they are. */
export async function openModel(
  onnx: Runtime,
  executionProvider: 'wasm' | 'cpu',
): Promise<AcousticModel> {
  const session = await onnx.InferenceSession.create(await readModel(), {
    executionProviders: [executionProvider],
    graphOptimizationLevel: 'basic',
    intraOpNumThreads: 1,
  });
  return { onnx, session, description: await readDescription() };
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
