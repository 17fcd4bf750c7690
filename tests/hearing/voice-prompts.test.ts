import { beforeAll, describe, expect, it } from 'vitest';

import { type Pronunciations, soundWords } from '../../core/hearing/dictionary.ts';
import { PHONES } from '../../core/hearing/garbage.ts';
import { parseJsgf } from '../../core/hearing/parse-jsgf.ts';
import { recogniserGrammar } from '../../core/language/heard/recogniser-grammar.ts';
import { VOICE_PROMPTS } from '../../core/language/heard/voice-prompts.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import { readDictionary } from '../../server/hearing/node-model.ts';
import { accepts } from './bench/accepts.ts';

const WORDS = [...new Set(VOICE_PROMPTS.flatMap((prompt) => prompt.split(' ')))];
let pronunciations: Pronunciations;
beforeAll(async () => {
  const sounded = soundWords(WORDS, await readDictionary(), PRONUNCIATIONS);
  expect(sounded.missing).toEqual([]);
  pronunciations = sounded.pronunciations;
});

describe('the sentences that a voice is learnt from', () => {
  it('are twenty, each of the grammar', () => {
    expect(new Set(VOICE_PROMPTS).size).toBe(20);
    const grammar = parseJsgf(recogniserGrammar('anything'));
    if (grammar.kind === 'malformed') throw new Error(grammar.message);
    const foreign = VOICE_PROMPTS.filter((prompt) => !accepts(grammar, prompt.split(' ')));
    expect(foreign).toEqual([]);
  });

  it('hold every sound but the two rarest', () => {
    const sounds = new Set(WORDS.flatMap((word) => (pronunciations[word]?.[0] ?? '').split(' ')));
    expect(PHONES.filter((phone) => !sounds.has(phone))).toEqual(['ZH']);
  });

  it.each(['fifteen fifty', 'thirteen thirty', 'eighteen eighty', 'nineteen ninety'])(
    'hold the numbers that are taken for each other: %s',
    (pair) => {
      expect(pair.split(' ').filter((number) => !WORDS.includes(number))).toEqual([]);
    },
  );
});
