import createModule from 'soundswallower';

import { soundWords } from '../../core/hearing/dictionary.ts';
import { createEmbeddedDecoder } from '../../core/hearing/embedded-decoder.ts';
import { isGarbage } from '../../core/hearing/garbage.ts';
import { combineGrammars, wordsOfGrammar } from '../../core/hearing/jsgf.ts';
import { hearSamples } from '../../core/hearing/to-hearing.ts';
import { recogniserGrammar } from '../../core/language/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import { NODE_MODEL_FILES, readDictionary } from '../../server/hearing/node-model.ts';
import { RATE_HZ, speak } from '../hearing/signals.ts';

export interface HearingBench {
  /** Processor time by sound time, with the whole grammar, one thread. */
  readonly realTimeFactor: number;
  /** From nothing to a decoder that knows the vocabulary. */
  readonly startUpMs: number;
  /** The whole grammar compiled. */
  readonly grammarLoadMs: number;
}

const SENTENCES = ['head one ninety two', 'what should head be', 'suction fourteen', 'finish'];

/** Measures the embedded engine on sentences by a voice made from a recorded person. */
export async function benchHearing(): Promise<HearingBench> {
  const grammar = combineGrammars([{ text: recogniserGrammar('anything'), weight: 1 }]) ?? '';
  const dictionary = await readDictionary();
  const words = wordsOfGrammar(grammar).filter((word) => !isGarbage(word));
  const { pronunciations } = soundWords(words, dictionary, PRONUNCIATIONS);
  const sounds = SENTENCES.map((sentence) => speak(sentence, 'rms'));

  const begin = performance.now();
  const decoder = await createEmbeddedDecoder(await createModule(), {
    files: NODE_MODEL_FILES,
    pronunciations,
  });
  const opened = performance.now();
  decoder.setGrammar(grammar);
  const compiled = performance.now();
  const before = process.cpuUsage();
  for (const sound of sounds) hearSamples(decoder, sound);
  const { user } = process.cpuUsage(before);
  decoder.dispose();
  const seconds = sounds.reduce((sum, sound) => sum + sound.length / RATE_HZ, 0);
  return {
    realTimeFactor: user / 1e6 / seconds,
    startUpMs: opened - begin,
    grammarLoadMs: compiled - opened,
  };
}
