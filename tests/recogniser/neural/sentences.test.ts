import { beforeAll, describe, expect, it } from 'vitest';

import { PHONES } from '../../../core/hearing/garbage.ts';
import { readDictionary } from '../../../server/hearing/node-model.ts';
import { createRandom } from './random.ts';
import { createSentences, RESPELLED, type Sentence } from './sentences.ts';

let sentences: readonly Sentence[];

const sample = async (seed: number): Promise<readonly Sentence[]> => {
  const next = createSentences(await readDictionary(), createRandom(seed));
  return Array.from({ length: 600 }, next);
};

beforeAll(async () => {
  sentences = await sample(7);
});

describe('the sentences that the recipe has spoken', { timeout: 30_000 }, () => {
  it('are of every kind', () => {
    const kinds = new Set(sentences.map(({ kind }) => kind));
    expect([...kinds].sort()).toEqual(
      ['dictionary', 'digits', 'number', 'salad', 'sentence', 'talk', 'word'].sort(),
    );
  });

  it('have sounds of the model for each of their words', () => {
    const known = new Set<string>(PHONES);
    for (const { words, phones } of sentences) {
      expect(phones).toHaveLength(words.length);
      expect(
        phones.flatMap((word) => word.split(' ')).filter((phone) => !known.has(phone)),
      ).toEqual([]);
    }
  });

  it('are the same again for the same seed, and others for another', async () => {
    expect(await sample(7)).toEqual(sentences);
    expect(await sample(8)).not.toEqual(sentences);
  });

  it('hand trade words to the synthesiser as they are read out', () => {
    const trade = sentences.flatMap(({ words, text }) =>
      words.filter((word) => word in RESPELLED).map((word) => ({ word, text })),
    );
    expect(trade.length).toBeGreaterThan(0);
    const asWritten = trade.filter(({ word, text }) => !text.includes(RESPELLED[word] ?? word));
    expect(asWritten).toEqual([]);
  });
});
