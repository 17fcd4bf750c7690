import '../support/wasm-heap.ts';

import { soundWords } from '../../core/hearing/dictionary.ts';
import { combineGrammars } from '../../core/hearing/jsgf.ts';
import type { Expectation } from '../../core/language/context.ts';
import { recogniserGrammar, vocabulary } from '../../core/language/heard/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import { readDictionary } from '../../server/hearing/node-model.ts';
import { NEURAL_MODEL_FOLDER } from '../../server/hearing/neural-model.ts';
import { RATE_HZ, speak } from '../hearing/signals.ts';
import { createNeuralInNode } from '../support/neural-in-node.ts';
import { wasmHeapBytes } from '../support/wasm-heap.ts';

export interface PageHearingBench {
  /** Processor time by sound time: the network in WebAssembly and the search, the whole grammar, one thread. */
  readonly realTimeFactor: number;
  readonly startUpMs: number;
  /** From the whole grammar to the one for a number and back, both built before; the mean. */
  readonly switchMs: number;
  /** Processor time from the last sample to the words. */
  readonly endToWordsMs: number;
  readonly heapBytes: number;
}

const SENTENCES = ['head one ninety two', 'what should head be', 'suction fourteen', 'finish'];
/** As the page hands sound over: 100 ms. */
const PORTION = RATE_HZ / 10;

const heardAs = (expectation: Expectation): string =>
  combineGrammars([{ text: recogniserGrammar(expectation), weight: 1 }]) ?? '';

async function userMs(work: () => Promise<unknown>): Promise<number> {
  const before = process.cpuUsage();
  await work();
  return process.cpuUsage(before).user / 1000;
}

const total = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0);

/** Measures the neural engine as the page runs it, thread and network apart. */
export async function benchPageHearing(): Promise<PageHearingBench> {
  const sounds = SENTENCES.map((sentence) => speak(sentence, 'rms'));
  const { pronunciations } = soundWords(vocabulary(), await readDictionary(), PRONUNCIATIONS);
  const { engine } = await createNeuralInNode(NEURAL_MODEL_FOLDER, pronunciations);
  const startUpMs = await userMs(() => engine.load());
  const [whole, number] = [heardAs('anything'), heardAs('number')];
  await engine.setGrammar(number);
  await engine.setGrammar(whole);
  const switchMs = (await userMs(() => switchGrammars(engine, [number, whole]))) / 2;
  const endings: number[] = [];
  const hearingMs = await userMs(async () => {
    for (const sound of sounds) endings.push(await hear(engine, sound));
  });
  engine.dispose();
  const seconds = total(sounds.map((sound) => sound.length)) / RATE_HZ;
  return {
    realTimeFactor: hearingMs / 1000 / seconds,
    startUpMs,
    switchMs,
    endToWordsMs: total(endings) / endings.length,
    heapBytes: wasmHeapBytes(),
  };
}

type PageEngine = Awaited<ReturnType<typeof createNeuralInNode>>['engine'];

async function switchGrammars(engine: PageEngine, grammars: readonly string[]): Promise<void> {
  for (const grammar of grammars) await engine.setGrammar(grammar);
}

/** What is left to do when the sound is over, in ms; everything before it is done as the sound comes. */
async function hear(engine: PageEngine, sound: Float32Array): Promise<number> {
  for (let at = 0; at < sound.length; at += PORTION) {
    engine.accept(sound.slice(at, at + PORTION));
    for (let turn = 0; turn < 20; turn += 1) await new Promise((resolve) => setImmediate(resolve));
  }
  return userMs(() => engine.finish());
}
