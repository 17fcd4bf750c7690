import createModule from 'soundswallower';

import type { DecoderPort } from '../../core/hearing/decoder-port.ts';
import { soundWords } from '../../core/hearing/dictionary.ts';
import { createEmbeddedDecoder } from '../../core/hearing/embedded-decoder.ts';
import { isGarbage } from '../../core/hearing/garbage.ts';
import { combineGrammars, wordsOfGrammar } from '../../core/hearing/jsgf.ts';
import { recogniserGrammar } from '../../core/language/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import { NODE_MODEL_FILES, readDictionary } from '../../server/hearing/node-model.ts';

export interface OpenedDecoder {
  readonly decoder: DecoderPort;
  /** From nothing to a decoder that knows the vocabulary. */
  readonly startUpMs: number;
  /** The whole grammar compiled. */
  readonly grammarLoadMs: number;
}

/** The embedded engine with the whole grammar, as the page has it. */
export async function openDecoder(): Promise<OpenedDecoder> {
  const grammar = combineGrammars([{ text: recogniserGrammar('anything'), weight: 1 }]) ?? '';
  const words = wordsOfGrammar(grammar).filter((word) => !isGarbage(word));
  const { pronunciations } = soundWords(words, await readDictionary(), PRONUNCIATIONS);
  const begin = performance.now();
  const settings = { files: NODE_MODEL_FILES, pronunciations };
  const decoder = await createEmbeddedDecoder(await createModule(), settings);
  const opened = performance.now();
  decoder.setGrammar(grammar);
  return { decoder, startUpMs: opened - begin, grammarLoadMs: performance.now() - opened };
}
