import type { InferenceSession } from 'onnxruntime-common';

import {
  type OnnxModule,
  type OnnxSession,
  readAcousticDescription,
} from '../../../core/hearing/acoustic-model.ts';
import { parseDictionary, type Pronunciations } from '../../../core/hearing/dictionary.ts';
import { type AcousticModel, createListener } from '../../../core/hearing/listener.ts';
import { createNeuralDecoder, type NeuralDecoder } from '../../../core/hearing/neural-decoder.ts';
import type { StoredNeural } from './model-store.ts';
import { PORTION_SAMPLES, SAMPLES_A_MS } from './neural-desk.ts';

/** As much of ONNX Runtime as is used. */
export interface Runtime extends OnnxModule {
  readonly InferenceSession: {
    readonly create: (
      model: Uint8Array,
      options: InferenceSession.SessionOptions,
    ) => Promise<OnnxSession>;
  };
}

export interface OpenedNeural {
  readonly decoder: NeuralDecoder;
  /** Time to hear by time heard. */
  readonly pace: number;
}

export type NeuralContents = Pick<StoredNeural, 'model' | 'description' | 'dictionary'>;

export interface NeuralOpening {
  readonly contents: NeuralContents;
  /** Words that the dictionary lacks. */
  readonly pronunciations: Pronunciations;
}

/** Rejects when the model cannot be run. */
export async function openNeural(runtime: Runtime, opening: NeuralOpening): Promise<OpenedNeural> {
  const { model: file, description: text, dictionary } = opening.contents;
  const outcome = readAcousticDescription(text);
  if (outcome.kind === 'unreadable') throw new Error(outcome.message);
  const session = await createSession(runtime, file, 'basic');
  const model = { onnx: runtime, session, description: outcome.description };
  const pronunciations = { ...parseDictionary(dictionary), ...opening.pronunciations };
  return { decoder: createNeuralDecoder({ model, pronunciations }), pace: await measure(model) };
}

export function createSession(
  runtime: Runtime,
  model: Uint8Array,
  graphOptimizationLevel: 'basic' | 'all',
): Promise<OnnxSession> {
  return runtime.InferenceSession.create(model, {
    executionProviders: ['wasm'],
    graphOptimizationLevel,
  });
}

/** The first two take five times as long as the rest: the runtime packs its weights and finds its code cold. */
const TRIES = 5;

/** The fastest of a few steps. */
async function measure(model: AcousticModel): Promise<number> {
  const listener = createListener(model);
  let fastestMs = Infinity;
  for (let done = 0; done < TRIES; done += 1) {
    const begin = performance.now();
    await listener.accept(new Float32Array(PORTION_SAMPLES));
    fastestMs = Math.min(fastestMs, performance.now() - begin);
  }
  return (fastestMs * SAMPLES_A_MS) / PORTION_SAMPLES;
}
