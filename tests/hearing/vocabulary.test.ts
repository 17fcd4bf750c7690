import { describe, expect, it } from 'vitest';

import { parseDictionary, soundWords } from '../../core/hearing/dictionary.ts';
import { PHONES } from '../../core/hearing/garbage.ts';
import { wordsOfGrammar } from '../../core/hearing/jsgf.ts';
import { phoneGraph } from '../../core/hearing/phone-graph.ts';
import { parseJsgf } from '../../core/hearing/parse-jsgf.ts';
import type { Expectation } from '../../core/language/context.ts';
import { recogniserGrammar, vocabulary } from '../../core/language/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import { invariant } from '../../core/unreachable.ts';
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

  it.each([
    ['anything', 7700],
    ['number', 1300],
    ['yesOrNo', 1020],
  ] as const)(
    'make a grammar of few enough sounds to be heard apart and loaded fast, expecting %s: at most %i',
    async (expectation, most) => {
      const text = recogniserGrammar(expectation);
      const { pronunciations } = soundWords(
        wordsOfGrammar(text),
        await readDictionary(),
        PRONUNCIATIONS,
      );
      const parsed = parseJsgf(text);
      invariant(parsed.kind === 'read', 'the printed grammar is JSGF');
      const built = phoneGraph(parsed, { pronunciations, phones: ['', ...PHONES] });
      invariant(built.kind === 'graph', 'every word of it has a sound');
      expect(built.graph.arcCount).toBeLessThan(most);
      expect(built.graph.arcCount).toBeGreaterThan(0.9 * most);
    },
  );

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
