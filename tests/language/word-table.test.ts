import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { WordTable } from '../../core/language/words/word-table.ts';

const WORD = /[a-z]+(?:'[a-z]+)?/y;

function wordAt(text: string, at: number): string | null {
  WORD.lastIndex = at;
  return WORD.exec(text)?.[0] ?? null;
}

const letters = fc.string({
  unit: fc.constantFrom('a', 'b', 'c', 'z', "'", ' ', '1', '.'),
  maxLength: 24,
});

describe('the table of words', () => {
  it('finds the word that a pattern finds, and its end, wherever it is asked', () => {
    const table = new WordTable();
    fc.assert(
      fc.property(letters, (text) => {
        for (let at = 0; at < text.length; at += 1) {
          const word = wordAt(text, at);
          const number = table.numberAt(text, at);
          if (word === null || word.length > 18) expect(number).toBe(-1);
          else expect([table.words[number], table.end]).toEqual([word, at + word.length]);
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('gives a word one number, and no two words the same', () => {
    const table = new WordTable();
    const words = ['a', 'aa', 'aaaaaa', 'aaaaaaa', "a'a", 'b', 'ba', 'ab', 'suction', "suction's"];
    const numbers = words.map((word) => table.numberAt(word, 0));
    expect(new Set(numbers).size).toBe(words.length);
    expect(words.map((word) => table.numberAt(`, ${word}.`, 2))).toEqual(numbers);
  });

  it('leaves a word that goes on in another script to others', () => {
    const table = new WordTable();
    expect(table.numberAt('that’s', 0)).toBe(-1);
    expect(table.numberAt('über', 0)).toBe(-1);
  });

  it('numbers no more words than it has room for, and still finds those', () => {
    const table = new WordTable();
    const word = (at: number): string =>
      String(at).replace(/\d/g, (digit) => 'abcdefghij'.charAt(Number(digit)));
    const numbers = Array.from({ length: 5000 }, (_, at) => table.numberAt(word(at), 0));
    expect(numbers.filter((number) => number >= 0)).toHaveLength(4096);
    expect(table.numberAt(word(17), 0)).toBe(numbers[17]);
    expect(table.numberAt(word(4999), 0)).toBe(-1);
  });
});
