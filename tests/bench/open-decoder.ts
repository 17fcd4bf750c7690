import createModule from 'soundswallower';

import type { DecoderPort } from '../../core/hearing/decoder-port.ts';
import { soundWords } from '../../core/hearing/dictionary.ts';
import { createEmbeddedDecoder } from '../../core/hearing/embedded-decoder.ts';
import { combineGrammars } from '../../core/hearing/jsgf.ts';
import type { Expectation } from '../../core/language/context.ts';
import { recogniserGrammar, vocabulary } from '../../core/language/heard/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import { NODE_MODEL_FILES, readDictionary } from '../../server/hearing/node-model.ts';

export interface OpenedDecoder {
  readonly decoder: DecoderPort;
  /** From nothing to a decoder that knows the vocabulary. */
  readonly startUpMs: number;
  /** Processor time to compile each grammar, the median of a few; the whole one is compiled last and stays. */
  readonly grammarLoadMs: Readonly<Record<Expectation, number>>;
}

const LOADS = 3;

const heardAs = (expectation: Expectation): string =>
  combineGrammars([{ text: recogniserGrammar(expectation), weight: 1 }]) ?? '';

/** The embedded engine with the whole grammar, as the page has it. */
export async function openDecoder(): Promise<OpenedDecoder> {
  const { pronunciations } = soundWords(vocabulary(), await readDictionary(), PRONUNCIATIONS);
  const begin = performance.now();
  const settings = { files: NODE_MODEL_FILES, pronunciations };
  const decoder = await createEmbeddedDecoder(await createModule(), settings);
  const opened = performance.now();
  const load = (expectation: Expectation): number => {
    const grammar = heardAs(expectation);
    const times = Array.from({ length: LOADS }, () => {
      const before = process.cpuUsage();
      decoder.setGrammar(grammar);
      return process.cpuUsage(before).user / 1000;
    });
    return times.sort((one, other) => one - other)[Math.floor(LOADS / 2)] ?? NaN;
  };
  const [yesOrNo, number, anything] = [load('yesOrNo'), load('number'), load('anything')];
  return { decoder, startUpMs: opened - begin, grammarLoadMs: { anything, number, yesOrNo } };
}
