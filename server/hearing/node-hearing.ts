import createModule from 'soundswallower';

import { soundWords, type Pronunciations } from '../../core/hearing/dictionary.ts';
import { createEmbeddedDecoder } from '../../core/hearing/embedded-decoder.ts';
import { isGarbage } from '../../core/hearing/garbage.ts';
import type { Hearing } from '../../core/hearing/hearing.ts';
import { combineGrammars, type WeightedGrammar, wordsOfGrammar } from '../../core/hearing/jsgf.ts';
import { type Opinion, opinionOn } from '../../core/hearing/second-opinion.ts';
import { hearSamples } from '../../core/hearing/to-hearing.ts';
import { NODE_MODEL_FILES, readDictionary } from './node-model.ts';

export interface NodeHearingOptions {
  /** JSGF texts, one at least with a public rule. The embedded engine leaves out what weighs little. */
  readonly grammars: readonly WeightedGrammar[];
  /** Words that the model's dictionary lacks. */
  readonly pronunciations: Pronunciations;
}

export interface NodeHearing {
  /** One utterance: mono samples at 16 kHz in −1..1. */
  readonly hear: (samples: Float32Array) => Hearing;
  /** Which of these wordings it is likeliest to be; null where it is none of them. */
  readonly choose: (samples: Float32Array, wordings: readonly string[]) => Opinion | null;
  readonly dispose: () => void;
}

/** The embedded engine in Node. Rejects when the grammar holds a word without a pronunciation. */
export async function createNodeHearing(options: NodeHearingOptions): Promise<NodeHearing> {
  const grammar = combineGrammars(options.grammars);
  if (grammar === null) throw new Error('The grammar has no public rule.');
  const [module, dictionary] = await Promise.all([createModule(), readDictionary()]);
  const words = wordsOfGrammar(grammar).filter((word) => !isGarbage(word));
  const { pronunciations, missing } = soundWords(words, dictionary, options.pronunciations);
  if (missing.length > 0) throw new Error(`No pronunciation is known for: ${missing.join(', ')}.`);
  const create = () => createEmbeddedDecoder(module, { files: NODE_MODEL_FILES, pronunciations });
  const [decoder, chooser] = [await create(), await create()];
  decoder.setGrammar(grammar);
  return {
    hear: (samples) => hearSamples(decoder, samples),
    choose: (samples, wordings) => opinionOn(chooser, samples, wordings),
    dispose: () => {
      decoder.dispose();
      chooser.dispose();
    },
  };
}
