import '../support/wasm-heap.ts';
import { beforeAll } from 'vitest';

import { soundWords } from '../../core/hearing/dictionary.ts';
import { readDictionary } from '../../server/hearing/node-model.ts';
import { NEURAL_MODEL_FOLDER } from '../../server/hearing/neural-model.ts';
import {
  describeEngine,
  type EngineStage,
  type Sentence,
  SENTENCES,
} from '../contracts/recogniser-engine.ts';
import { speak } from '../hearing/signals.ts';
import { createEmbeddedInNode } from '../support/embedded-in-node.ts';
import { createNeuralInNode } from '../support/neural-in-node.ts';
import { wasmHeapBytes } from '../support/wasm-heap.ts';

const WORDS = SENTENCES.flatMap((sentence) => sentence.split(' '));
const sounds = new Map<Sentence, Float32Array>();
const say = (sentence: Sentence): Float32Array => sounds.get(sentence) ?? new Float32Array(0);

beforeAll(() => {
  for (const sentence of SENTENCES) sounds.set(sentence, speak(sentence, 'rms'));
});

/** A heap that grows with use had grown by this many: a thousand are heard by `tests/bench/hear-a-thousand.ts`. */
const UTTERANCES = 200;

async function embeddedStage(): Promise<EngineStage> {
  const embedded = await createEmbeddedInNode(WORDS);
  return { ...embedded, say, heapBytes: wasmHeapBytes };
}

async function neuralStage(): Promise<EngineStage> {
  const { pronunciations } = soundWords(WORDS, await readDictionary(), {});
  const { engine, model, asked, serveModel } = await createNeuralInNode(
    NEURAL_MODEL_FOLDER,
    pronunciations,
  );
  return {
    engine,
    say,
    damage: (damaged) => serveModel(damaged ? model.slice(0, 300) : model),
    loads: () => asked.filter((path) => path === '/model').length,
    heapBytes: wasmHeapBytes,
  };
}

describeEngine('embedded, on its own model,', { open: embeddedStage, utterances: UTTERANCES });
describeEngine('neural, on its own model,', { open: neuralStage, utterances: UTTERANCES });
