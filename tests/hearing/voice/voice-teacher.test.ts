import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { combineGrammars } from '../../../core/hearing/jsgf.ts';
import type { AcousticModel } from '../../../core/hearing/listener.ts';
import { createNeuralDecoder, type NeuralDecoder } from '../../../core/hearing/neural-decoder.ts';
import { openNeuralModel } from '../../../server/hearing/neural-model.ts';
import { createScratchFolder } from '../../support/scratch-folder.ts';
import {
  ACCENT,
  ACCENTED_GRAMMAR,
  ACCENTED_LESSONS,
  ACCENTED_WORDS,
  sayAccented,
} from '../../support/accented.ts';
import { writeTinyEar } from '../../support/tiny-ear.ts';

const GRAMMAR = combineGrammars([{ text: ACCENTED_GRAMMAR, weight: 1 }]);

let folder: Awaited<ReturnType<typeof createScratchFolder>>;
let model: AcousticModel;
beforeAll(async () => {
  folder = await createScratchFolder();
  await writeTinyEar(folder.path);
  const opened = await openNeuralModel(folder.path);
  if (opened.kind === 'unavailable') throw new Error(opened.message);
  model = opened.model;
});
afterAll(() => folder.discard());

const decoderOf = (): NeuralDecoder => {
  const decoder = createNeuralDecoder({ model, pronunciations: ACCENTED_WORDS });
  decoder.setGrammar(GRAMMAR ?? '');
  return decoder;
};

async function lessons(decoder: NeuralDecoder, accent: Readonly<Record<string, string>>) {
  const teacher = decoder.teacher();
  for (const sentence of ACCENTED_LESSONS) {
    expect(await teacher.learn(sentence, sayAccented(sentence, accent))).toBe('learnt');
  }
  return teacher.conclude();
}

async function heard(decoder: NeuralDecoder, sound: Float32Array) {
  decoder.start();
  await decoder.accept(sound);
  const { alternatives, rejected } = await decoder.finish();
  return { words: alternatives[0]?.words, confidence: alternatives[0]?.confidence ?? 0, rejected };
}

describe('a voice that is learnt', { timeout: 60_000 }, () => {
  it('is heard right where it was not, and hears nothing worse that was right', async () => {
    const decoder = decoderOf();
    const three = sayAccented('box three', ACCENT);
    expect((await heard(decoder, three)).rejected).toBe('notForUs');
    const conclusion = await lessons(decoder, ACCENT);
    if (conclusion.kind !== 'better') throw new Error(conclusion.kind);
    expect(conclusion.gain.after).toBeLessThan(conclusion.gain.before / 2);
    expect(decoder.suit(conclusion.profile)).toBe(true);
    expect(await heard(decoder, three)).toMatchObject({ words: 'box three', rejected: undefined });
    expect((await heard(decoder, sayAccented('head forty two'))).words).toBe('head forty two');
    decoder.suit(null);
    expect((await heard(decoder, three)).rejected).toBe('notForUs');
  });

  it('is left as it is where it was heard well already', async () => {
    const conclusion = await lessons(decoderOf(), {});
    expect(conclusion.kind).toBe('noBetter');
  });

  it('is not learnt from something else, from silence, or from a word without a sound', async () => {
    const teacher = decoderOf().teacher();
    expect(await teacher.learn('head forty two', sayAccented('box five'))).toBe('unlike');
    expect(await teacher.learn('head forty two', new Float32Array(16_000))).toBe('unlike');
    expect(await teacher.learn('head forty two', new Float32Array(0))).toBe('unlike');
    expect(await teacher.learn('head zorbular', sayAccented('head two'))).toBe('unteachable');
    expect(teacher.learnt()).toBe(0);
    expect(teacher.conclude()).toEqual({ kind: 'tooFew', least: 10 });
  });

  it('is for the model that it was taught to alone', async () => {
    const decoder = decoderOf();
    const conclusion = await lessons(decoder, ACCENT);
    if (conclusion.kind !== 'better') throw new Error(conclusion.kind);
    const { profile } = conclusion;
    expect(decoder.suit({ ...profile, edition: 'another' })).toBe(false);
    expect(decoder.suit({ ...profile, correction: profile.correction.slice(1) })).toBe(false);
    expect((await heard(decoder, sayAccented('box three', ACCENT))).rejected).toBe('notForUs');
  });
});
