import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { parseDictionary, soundWords } from '../../core/hearing/dictionary.ts';
import { PHONES } from '../../core/hearing/garbage.ts';
import { wordsOfGrammar } from '../../core/hearing/jsgf.ts';
import type { Expectation } from '../../core/language/context.ts';
import { recogniserGrammar, vocabulary } from '../../core/language/recogniser-grammar.ts';
import { tokenise } from '../../core/language/tokenise.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import { createNodeHearing, type NodeHearing } from '../../server/hearing/node-hearing.ts';
import { readDictionary } from '../../server/hearing/node-model.ts';
import { speak } from './signals.ts';

const EXPECTATIONS: readonly Expectation[] = ['anything', 'number', 'yesOrNo'];

describe('the words of the language', () => {
  it('all have a sound', async () => {
    const dictionary = await readDictionary();
    expect(vocabulary().length).toBeGreaterThan(200);
    expect(soundWords(vocabulary(), dictionary, PRONUNCIATIONS).missing).toEqual([]);
  });

  it.each(EXPECTATIONS)('are those of the grammar when it expects %s', (expectation) => {
    const words = new Set(vocabulary());
    const heard = wordsOfGrammar(recogniserGrammar(expectation));
    expect(heard.filter((word) => !words.has(word))).toEqual([]);
  });

  it('keep to the phones of the model', () => {
    const phones = Object.values(PRONUNCIATIONS).flatMap((sounds) => sounds.join(' ').split(' '));
    const known = new Set<string>(PHONES);
    expect(phones.filter((phone) => !known.has(phone))).toEqual([]);
  });

  it('repeat the dictionary only to give a word more sounds than it has there', async () => {
    const inDictionary = parseDictionary(
      await readDictionary(),
      new Set(Object.keys(PRONUNCIATIONS)),
    );
    for (const [word, sounds] of Object.entries(inDictionary)) {
      expect([word, PRONUNCIATIONS[word]?.filter((sound) => !sounds.includes(sound))]).not.toEqual([
        word,
        [],
      ]);
    }
  });
});

/** At least this many of ten, by a voice made from a recorded person, with the whole grammar. */
const AT_LEAST = 8;
const LINES = [
  'head one ninety two',
  'suction fourteen',
  'box forty four',
  'ambient eighty eight',
  'what should head be',
  'how far off am i',
  "condenser's plugged",
  'i brushed the condenser',
  'mark this as after',
  'read me the note',
];
const PATIENCE_MS = 120_000;

describe('the whole grammar', { timeout: PATIENCE_MS }, () => {
  let hearing: NodeHearing;
  beforeAll(async () => {
    hearing = await createNodeHearing({
      grammar: recogniserGrammar('anything'),
      pronunciations: PRONUNCIATIONS,
    });
  }, PATIENCE_MS);
  afterAll(() => hearing.dispose());

  /** What a text says, however its contractions are written. */
  const said = (text: string): string => JSON.stringify(tokenise(text).map((token) => token.text));

  it.each(['rms', 'slt'] as const)('hears eight of ten typical lines by %s', (voice) => {
    const missed = LINES.filter((line) => {
      const heard = hearing.hear(speak(line, voice));
      const words = heard.rejected === undefined ? heard.alternatives[0]?.words : undefined;
      return said(words ?? '') !== said(line);
    });
    expect(missed.length).toBeLessThanOrEqual(LINES.length - AT_LEAST);
  });

  it('takes no stray sentence for one of ours', () => {
    const stray = ['my uncle went fishing on saturday', 'the game last night was terrible'];
    expect(stray.map((line) => hearing.hear(speak(line, 'slt')).rejected)).not.toContain(undefined);
  });
});
