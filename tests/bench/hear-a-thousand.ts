// `npx tsx tests/bench/hear-a-thousand.ts`: a thousand utterances to each of the page's engines, and its memory.
import '../support/wasm-heap.ts';

import { soundWords } from '../../core/hearing/dictionary.ts';
import type { Engine } from '../../client/recogniser/engine.ts';
import { readDictionary } from '../../server/hearing/node-model.ts';
import { NEURAL_MODEL_FOLDER } from '../../server/hearing/neural-model.ts';
import { YES } from '../contracts/small-grammars.ts';
import { speak } from '../hearing/signals.ts';
import { createEmbeddedInNode } from '../support/embedded-in-node.ts';
import { createNeuralInNode } from '../support/neural-in-node.ts';
import { wasmHeapBytes } from '../support/wasm-heap.ts';

const UTTERANCES = 1000;
const MB = 2 ** 20;

async function hear(name: string, engine: Engine): Promise<void> {
  const sound = speak('yes', 'rms');
  const before = wasmHeapBytes();
  await engine.load();
  await engine.setGrammar(YES);
  const { user } = process.cpuUsage();
  let right = 0;
  const heaps: string[] = [];
  for (let done = 1; done <= UTTERANCES; done += 1) {
    engine.accept(sound);
    const finished = await engine.finish();
    if (finished.kind === 'heard' && finished.hearing.alternatives[0]?.words === 'yes') right += 1;
    if ([10, 100, UTTERANCES].includes(done)) {
      heaps.push(`${((wasmHeapBytes() - before) / MB).toFixed(1)} MB after ${done}`);
    }
  }
  const seconds = (process.cpuUsage().user - user) / 1e6;
  console.log(
    `${name}: ${right} of ${UTTERANCES} heard; ${heaps.join(', ')}; ${seconds.toFixed(0)} s`,
  );
  engine.dispose();
}

const { pronunciations } = soundWords(['yes'], await readDictionary(), {});
await hear('neural', (await createNeuralInNode(NEURAL_MODEL_FOLDER, pronunciations)).engine);
await hear('embedded', (await createEmbeddedInNode(['yes'])).engine);
