import { type Pronunciations, soundWords } from '../../core/hearing/dictionary.ts';
import type { Hearing } from '../../core/hearing/hearing.ts';
import { combineGrammars, wordsOfGrammar } from '../../core/hearing/jsgf.ts';
import { isGarbage } from '../../core/hearing/garbage.ts';
import type { AcousticModel } from '../../core/hearing/listener.ts';
import { createNeuralDecoder, type Ranking } from '../../core/hearing/neural-decoder.ts';
import { neuralHearing } from '../../core/hearing/neural-hearing.ts';
import type { Opinion } from '../../core/hearing/second-opinion.ts';
import type { VoiceProfile } from '../../core/hearing/voice/voice-profile.ts';
import type { NodeHearingOptions } from './node-hearing.ts';
import { readDictionary } from './node-model.ts';
import type { Follower } from './sentences-in.ts';

export interface NeuralHearing {
  /** One utterance, mono samples at 16 kHz in −1..1, and who chooses among the wordings found. */
  readonly hear: (samples: Float32Array, opine?: Opine) => Promise<Hearing>;
  /** The same, before anything is judged, and the judgement: for measurements, which repeat the second alone. */
  readonly rank: (samples: Float32Array, opine?: Opine) => Promise<Ranking>;
  readonly judge: (ranking: Ranking) => Hearing;
  /** Hears by what was learnt of a voice, or by none; false where another model learnt it. */
  readonly suit: (voice: VoiceProfile | null) => boolean;
  /** The engine itself, its grammar set, to tell what may follow while a sentence is being said. */
  readonly follower: Follower;
  /** Of every word of the grammar. */
  readonly pronunciations: Pronunciations;
}

type Opine = (samples: Float32Array, wordings: readonly string[]) => Opinion | null;

/** The neural engine in Node. Rejects when the grammar cannot be heard, saying why. */
export async function createNeuralHearing(
  model: AcousticModel,
  options: NodeHearingOptions,
): Promise<NeuralHearing> {
  const grammar = combineGrammars(options.grammars);
  if (grammar === null) throw new Error('The grammar has no public rule.');
  const words = wordsOfGrammar(grammar).filter((word) => !isGarbage(word));
  const { pronunciations } = soundWords(words, await readDictionary(), options.pronunciations);
  const decoder = createNeuralDecoder({ model, pronunciations });
  const set = decoder.setGrammar(grammar);
  if (set.kind === 'malformed') throw new Error(set.message);
  if (set.kind === 'unknownWords') {
    throw new Error(`No pronunciation is known for: ${set.words.join(', ')}.`);
  }
  /** A recording's loudness is known before its first word; no recording hears of the one before. */
  const take = async (samples: Float32Array): Promise<void> => {
    await decoder.attune(samples);
    decoder.start();
    await decoder.accept(samples);
  };
  const opinionOf = async (samples: Float32Array, opine?: Opine) =>
    opine?.(samples, await decoder.close());
  return {
    hear: async (samples, opine) => {
      await take(samples);
      return decoder.finish(await opinionOf(samples, opine));
    },
    rank: async (samples, opine) => {
      await take(samples);
      return decoder.rank(await opinionOf(samples, opine));
    },
    suit: decoder.suit,
    follower: decoder,
    judge: (ranking) => neuralHearing(ranking, pronunciations),
    pronunciations,
  };
}
