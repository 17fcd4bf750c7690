import '../support/wasm-heap.ts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import type { Hearing } from '../../core/hearing/hearing.ts';
import { wordsOfGrammar } from '../../core/hearing/jsgf.ts';
import type { Engine } from '../../client/recogniser/engine.ts';
import { createScriptedEngine } from '../support/scripted-engine.ts';
import { createTeamEngine } from '../../client/recogniser/team/team-engine.ts';
import type { WorkerEngine } from '../../client/recogniser/worker/worker-engine.ts';
import {
  describeEngine,
  type EngineStage,
  type Sentence,
  SENTENCES,
} from '../contracts/recogniser-engine.ts';
import { createNeuralInNode } from '../support/neural-in-node.ts';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { sayPhones, tinyVoiceDetector, writeTinyEar } from '../support/tiny-ear.ts';
import { wasmHeapBytes } from '../support/wasm-heap.ts';
import { heard } from './harness.ts';

const PRONUNCIATIONS = {
  head: ['HH EH D'],
  box: ['B AA K S'],
  forty: ['F AO R T IY'],
  four: ['F AO R'],
  five: ['F AY V'],
  yes: ['Y EH S'],
};
const PHONES: Record<Sentence, string> = {
  'head forty five': 'HH EH D F AO R T IY F AY V',
  'box four': 'B AA K S F AO R',
  yes: 'Y EH S',
};

/** Every sample is the sentence's number, and each portion brings a word more of it. */
const asNumber = (sentence: Sentence): Float32Array =>
  new Float32Array(1600 * sentence.split(' ').length).fill(SENTENCES.indexOf(sentence) + 1);

function hearNumber(sound: readonly Float32Array[], jsgf: string): Hearing {
  const sentence = SENTENCES[(sound.at(-1)?.[0] ?? 0) - 1] ?? '';
  const known = new Set(wordsOfGrammar(jsgf));
  const words = sentence.split(' ').slice(0, sound.length);
  const isOurs = words.every((word) => known.has(word));
  return isOurs ? heard(words.join(' ')) : { alternatives: [], rejected: 'notForUs' };
}

function scriptedStage(): EngineStage {
  let damaged = false;
  let loads = 0;
  const engine = createScriptedEngine({
    hear: hearNumber,
    load: () => {
      if (damaged) return { kind: 'failed', message: 'damaged: reload' };
      loads += 1;
      return { kind: 'ready' };
    },
    grammar: (jsgf) =>
      jsgf.includes('zorbular') ? { kind: 'failed', message: 'zorbular' } : { kind: 'ready' },
  });
  return {
    engine,
    say: asNumber,
    damage: (now) => {
      damaged = now;
    },
    loads: () => loads,
    heapBytes: () => 0,
  };
}

let folder: Awaited<ReturnType<typeof createScratchFolder>>;
beforeAll(async () => {
  folder = await createScratchFolder();
  await writeTinyEar(folder.path);
});
afterAll(() => folder.discard());

async function neuralStage(): Promise<EngineStage & { readonly engine: WorkerEngine }> {
  const { engine, model, asked, serveModel } = await createNeuralInNode(
    folder.path,
    PRONUNCIATIONS,
    tinyVoiceDetector(),
  );
  return {
    engine,
    say: (sentence) => sayPhones(PHONES[sentence]),
    damage: (damaged) => serveModel(damaged ? model.slice(0, 300) : model),
    loads: () => asked.filter((path) => path === '/model').length,
    heapBytes: wasmHeapBytes,
  };
}

/** The second one hears nothing of use: what it adds must not get in the way. */
async function teamStage(): Promise<EngineStage> {
  const neural = await neuralStage();
  const second = scriptedStage();
  const team = createTeamEngine({
    neural: neural.engine,
    embedded: {
      ...second.engine,
      choose: () => Promise.resolve({ kind: 'chosen', opinion: null }),
    },
    wish: () => 'automatic',
    afforded: () => 'both',
    onChange: () => undefined,
    after: () => () => undefined,
  });
  const load: Engine['load'] = (onProgress) => {
    team.forgive();
    return team.load(onProgress);
  };
  const damage = (damaged: boolean): void => {
    neural.damage(damaged);
    second.damage(damaged);
  };
  return { ...neural, engine: { ...team, load }, damage };
}

describeEngine('scripted', { open: () => Promise.resolve(scriptedStage()), utterances: 200 });
describeEngine('neural', { open: neuralStage, utterances: 200 });
describeEngine('pair of engines as one', { open: teamStage, utterances: 20 });

describe('the memory watched above', () => {
  it('is the engine’s', () => {
    expect(wasmHeapBytes()).toBeGreaterThan(2 ** 20);
  });
});
