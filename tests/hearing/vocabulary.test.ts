import { describe, expect, it } from 'vitest';

import { parseDictionary, soundWords } from '../../core/hearing/dictionary.ts';
import { PHONES } from '../../core/hearing/garbage.ts';
import { wordsOfGrammar } from '../../core/hearing/jsgf.ts';
import type { Expectation } from '../../core/language/context.ts';
import { recogniserGrammar, vocabulary } from '../../core/language/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import { readDictionary } from '../../server/hearing/node-model.ts';

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
