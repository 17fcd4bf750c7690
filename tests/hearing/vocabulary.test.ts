import { describe, expect, it } from 'vitest';

import { parseDictionary, soundWords } from '../../core/hearing/dictionary.ts';
import { GARBAGE_RULE, PHONES } from '../../core/hearing/garbage.ts';
import { combineGrammars, withoutRare, wordsOfGrammar } from '../../core/hearing/jsgf.ts';
import { type Expansion, parseJsgf } from '../../core/hearing/parse-jsgf.ts';
import { wordNet } from '../../core/hearing/word-net.ts';
import type { Expectation } from '../../core/language/context.ts';
import {
  heardGrammars,
  rareGrammar,
  recogniserGrammar,
  vocabulary,
} from '../../core/language/heard/recogniser-grammar.ts';
import { tokenise } from '../../core/language/words/tokenise.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import { invariant } from '../../core/unreachable.ts';
import { readDictionary } from '../../server/hearing/node-model.ts';

const EXPECTATIONS: readonly Expectation[] = ['anything', 'number', 'yesOrNo'];

describe('the words of the language', () => {
  it('all have a sound, those that are rarely said too', async () => {
    const dictionary = await readDictionary();
    const rare = wordsOfGrammar(rareGrammar('anything'));
    expect([vocabulary().length > 200, rare.length > 2000]).toEqual([true, true]);
    const words = [...vocabulary(), ...rare];
    expect(soundWords(words, dictionary, PRONUNCIATIONS).missing).toEqual([]);
  });

  it('are as the tokeniser leaves them: what it would change is never understood', () => {
    const words = wordsOfGrammar(rareGrammar('anything'));
    expect(words.filter((word) => tokenise(word)[0]?.text !== word)).toEqual([]);
  });

  it.each(EXPECTATIONS)('are those of the grammar when it expects %s', (expectation) => {
    const words = new Set(vocabulary());
    const heard = wordsOfGrammar(recogniserGrammar(expectation));
    expect(heard.filter((word) => !words.has(word))).toEqual([]);
  });

  it.each([
    ['anything', 1800],
    ['number', 540],
    ['yesOrNo', 470],
  ] as const)(
    'are few enough for the embedded engine, which writes each reference out in full, expecting %s: at most %i',
    (expectation, most) => {
      const combined = combineGrammars(heardGrammars(expectation)) ?? '';
      const written = wordsWrittenOut(withoutRare(combined));
      expect(written).toBe(wordsWrittenOut(combineGrammars([likely(expectation)]) ?? ''));
      expect(written).toBeLessThan(most);
      expect(written).toBeGreaterThan(0.9 * most);
    },
  );

  it.each([
    ['anything', 80_000],
    ['number', 7500],
    ['yesOrNo', 6500],
  ] as const)(
    'make a net for the neural engine that is read in a quarter of a second, expecting %s: at most %i nodes',
    (expectation, most) => {
      const grammar = parseJsgf(combineGrammars(heardGrammars(expectation)) ?? '');
      invariant(grammar.kind === 'read', 'the printed grammar is JSGF');
      const outcome = wordNet(grammar);
      invariant(outcome.kind === 'net', 'it holds nothing that no net can');
      expect(outcome.net.nodes.length).toBeLessThan(most);
      expect(outcome.net.nodes.length).toBeGreaterThan(0.7 * most);
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

const likely = (expectation: Expectation) => ({
  text: recogniserGrammar(expectation),
  weight: 1,
});

/** The words of a grammar where every reference stands for all that its rule holds. */
function wordsWrittenOut(jsgf: string): number {
  const grammar = parseJsgf(jsgf.replace(GARBAGE_RULE, '<not_for_us> = <VOID> ;'));
  invariant(grammar.kind === 'read', 'the printed grammar is JSGF');
  const { rules, publicRules } = grammar;
  const open = new Set<string>();
  const inRule = (rule: string): number => {
    const body = rules.get(rule);
    if (body === undefined || open.has(rule)) return 0;
    open.add(rule);
    const count = wordsIn(body);
    open.delete(rule);
    return count;
  };
  const sum = (parts: readonly Expansion[]): number =>
    parts.reduce((total, part) => total + wordsIn(part), 0);
  const wordsIn = (expansion: Expansion): number => {
    switch (expansion.kind) {
      case 'word':
        return 1;
      case 'reference':
        return inRule(expansion.rule);
      case 'sequence':
        return sum(expansion.parts);
      case 'choice':
        return sum(expansion.options.map((option) => option.expansion));
      case 'optional':
      case 'repeat':
        return wordsIn(expansion.expansion);
      case 'never':
        return 0;
    }
  };
  return sum(publicRules.map((rule): Expansion => ({ kind: 'reference', rule })));
}
