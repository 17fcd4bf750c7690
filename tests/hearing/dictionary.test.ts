import { describe, expect, it } from 'vitest';

import { parseDictionary, printDictionary, soundWords } from '../../core/hearing/dictionary.ts';
import { readDictionary } from '../../server/hearing/node-model.ts';

const TEXT = ';; words\nread R EH D\nread(2) R IY D\nfan F AE N\nglass G L AE S\n';

describe('dictionary', () => {
  it('gathers the variants of a word and skips comments', () => {
    expect(parseDictionary(TEXT)).toEqual({
      read: ['R EH D', 'R IY D'],
      fan: ['F AE N'],
      glass: ['G L AE S'],
    });
  });

  it('reads back what it prints', () => {
    const words = parseDictionary(TEXT);
    expect(parseDictionary(printDictionary(words))).toEqual(words);
  });
});

describe('soundWords', () => {
  it('takes the extra table before the dictionary and names what nobody knows', () => {
    const sounded = soundWords(['fan', 'txv', 'zorb'], TEXT, { fan: ['F'], txv: ['T IY'] });
    expect(sounded).toEqual({
      pronunciations: { fan: ['F'], txv: ['T IY'] },
      missing: ['zorb'],
    });
  });

  it('says the plain form when asked for an unknown one only with its own base', () => {
    expect(soundWords(["zorb's"], TEXT, {}).missing).toEqual(["zorb's"]);
  });

  it("derives 's forms as the dictionary writes those it has", async () => {
    const text = await readDictionary();
    const words = ["it's", "dog's", "judge's", "fish's", "church's", "boss's"];
    const written = parseDictionary(text, new Set(words));
    const known = words.filter((word) => written[word] !== undefined);
    expect(known.length).toBeGreaterThan(3);
    const bases = parseDictionary(text, new Set(known.map((word) => word.slice(0, -2))));
    for (const word of known) {
      const derived = soundWords([word], printDictionary(bases), {}).pronunciations[word] ?? [];
      // The dictionary spells the unstressed vowel both ways.
      expect(derived).toContain(written[word]?.[0]?.replace(/AH Z$/, 'IH Z'));
    }
  });
});
