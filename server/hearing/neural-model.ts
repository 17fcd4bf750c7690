import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

import * as onnx from 'onnxruntime-node';

import { readAcousticDescription } from '../../core/hearing/acoustic-model.ts';
import type { AcousticModel } from '../../core/hearing/listener.ts';

/** Where the neural engine keeps its model, as the page's build finds it. */
export const NEURAL_MODEL_FOLDER = fileURLToPath(
  new URL('../../client/recogniser/neural/model/', import.meta.url),
);

/**
 * One thread: the page has no more, and a second costs more than it brings at this size. Past 'basic' the
 * runtime rounds the sums of 8-bit weights as well: a probability is then off by 0.03 instead of 0.014.
 */
const SESSION = {
  intraOpNumThreads: 1,
  interOpNumThreads: 1,
  graphOptimizationLevel: 'basic',
} as const;

export type NeuralModelOutcome =
  | { readonly kind: 'opened'; readonly model: AcousticModel }
  | { readonly kind: 'unavailable'; readonly message: string };

/** Reads `model.json` and `model.onnx` of a folder; what is missing or damaged is told. */
export async function openNeuralModel(folder = NEURAL_MODEL_FOLDER): Promise<NeuralModelOutcome> {
  try {
    const outcome = readAcousticDescription(await readFile(join(folder, 'model.json'), 'utf8'));
    if (outcome.kind === 'unreadable') return unavailable(folder, outcome.message);
    const session = await onnx.InferenceSession.create(join(folder, 'model.onnx'), SESSION);
    return { kind: 'opened', model: { onnx, session, description: outcome.description } };
  } catch (fault) {
    return unavailable(folder, fault instanceof Error ? fault.message : String(fault));
  }
}

const unavailable = (folder: string, why: string): NeuralModelOutcome => ({
  kind: 'unavailable',
  message: `the neural engine cannot be loaded from ${folder} (${why})`,
});
