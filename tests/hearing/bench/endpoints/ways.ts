import { combineGrammars, wordsOfGrammar } from '../../../../core/hearing/jsgf.ts';
import { soundWords } from '../../../../core/hearing/dictionary.ts';
import { isGarbage } from '../../../../core/hearing/garbage.ts';
import {
  createNeuralDecoder,
  type NeuralDecoder,
} from '../../../../core/hearing/neural-decoder.ts';
import { recogniserGrammar } from '../../../../core/language/heard/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../../../core/language/vocabulary/pronunciations.ts';
import { openNeuralModel } from '../../../../server/hearing/neural-model.ts';
import { readDictionary } from '../../../../server/hearing/node-model.ts';
import type { Endpointing } from '../../../../server/hearing/sentences-in.ts';
import { openVoiceDetector } from '../../../../server/hearing/voice-model.ts';

/** Ways to find sentences, each with all of the one before it. */
export const WAYS = ['energy', 'detector', 'grammar'] as const;
export type Way = (typeof WAYS)[number];

/** Rejects when a model cannot be read. */
export async function openWays(modelFolder?: string): Promise<Readonly<Record<Way, Endpointing>>> {
  const detector = await openVoiceDetector();
  if (detector === null) throw new Error('The voice detector’s model cannot be read.');
  return {
    energy: { detector: null, decoder: null },
    detector: { detector, decoder: null },
    grammar: { detector, decoder: await openDecoder(modelFolder) },
  };
}

async function openDecoder(modelFolder?: string): Promise<NeuralDecoder> {
  const outcome = await openNeuralModel(modelFolder);
  if (outcome.kind === 'unavailable') throw new Error(outcome.message);
  const grammar = combineGrammars([{ text: recogniserGrammar('anything'), weight: 1 }]) ?? '';
  const words = wordsOfGrammar(grammar).filter((word) => !isGarbage(word));
  const { pronunciations } = soundWords(words, await readDictionary(), PRONUNCIATIONS);
  const decoder = createNeuralDecoder({ model: outcome.model, pronunciations });
  decoder.setGrammar(grammar);
  return decoder;
}
