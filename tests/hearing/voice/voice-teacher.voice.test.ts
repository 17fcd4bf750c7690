import { describe, expect, it } from 'vitest';

import { soundWords } from '../../../core/hearing/dictionary.ts';
import { createNeuralDecoder } from '../../../core/hearing/neural-decoder.ts';
import { createResampler } from '../../../core/hearing/resample.ts';
import { VOICE_PROMPTS } from '../../../core/language/heard/voice-prompts.ts';
import { PRONUNCIATIONS } from '../../../core/language/vocabulary/pronunciations.ts';
import { openNeuralModel } from '../../../server/hearing/neural-model.ts';
import { readDictionary } from '../../../server/hearing/node-model.ts';
import { RATE_HZ, speak } from '../signals.ts';

/** A speaker the training never heard, played slower: lower, with a longer throat. */
const deepVoice = (sentence: string): Float32Array =>
  createResampler(RATE_HZ * 0.85)(speak(sentence, 'kal16'));

/** Not one of them was read for the lessons. */
const OTHERS = [
  'head one ninety two',
  'suction fourteen',
  'box forty four',
  'low side is twenty three',
  'discharge line two oh six',
];
const FEW = 12;

describe('a made-up deep voice that is learnt', { timeout: 240_000 }, () => {
  it('is heard with a better fit in sentences that were not read, which were not learnt from', async () => {
    const opened = await openNeuralModel();
    if (opened.kind === 'unavailable') throw new Error(opened.message);
    const read = VOICE_PROMPTS.slice(0, FEW);
    const words = [...new Set([...read, ...OTHERS].flatMap((sentence) => sentence.split(' ')))];
    const { pronunciations } = soundWords(words, await readDictionary(), PRONUNCIATIONS);
    const decoder = createNeuralDecoder({ model: opened.model, pronunciations });
    const grammar = `#JSGF V1.0; grammar g; public <g> = ${OTHERS.join(' | ')} ;`;
    expect(decoder.setGrammar(grammar)).toEqual({ kind: 'set' });
    /** Nats by which sounds of any kind fit better than what was said, all sentences together. */
    const missed = async (): Promise<number> => {
      let sum = 0;
      for (const sentence of OTHERS) {
        const sound = deepVoice(sentence);
        await decoder.attune(sound);
        decoder.start();
        await decoder.accept(sound);
        const [best] = (await decoder.rank()).hypotheses;
        expect(best?.words.map(({ word }) => word).join(' ')).toBe(sentence);
        sum -= best?.acoustic ?? -Infinity;
      }
      return sum;
    };
    const before = await missed();
    const teacher = decoder.teacher();
    for (const prompt of read) {
      expect(await teacher.learn(prompt, deepVoice(prompt))).toBe('learnt');
    }
    const conclusion = teacher.conclude();
    if (conclusion.kind !== 'better') throw new Error(conclusion.kind);
    decoder.suit(conclusion.profile);
    expect(await missed()).toBeLessThan(0.8 * before);
  });
});
