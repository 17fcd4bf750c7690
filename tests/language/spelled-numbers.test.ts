import numberToWords from 'number-to-words';
import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';

const from = (first: number, last: number): readonly number[] =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index);

/** The library writes "minus" itself; it knows no tenths, so those are put behind its whole number. */
function spell(tenths: number): string {
  const size = Math.abs(tenths);
  const whole = numberToWords.toWords(Math.floor(size / 10));
  const tenth = size % 10 === 0 ? '' : ` point ${numberToWords.toWords(size % 10)}`;
  return `${tenths < 0 ? 'minus ' : ''}${whole}${tenth}`;
}

/** "one thousand, two hundred and thirty-four" */
const withAnd = (words: string): string => words.replace(/hundred (?!point)/g, 'hundred and ');

const bare = (words: string) => understand(words, EMPTY_CONTEXT).unclaimed.map(Number);

/** As the answer to what was just asked: a vacuum may be anything up to an atmosphere; below zero is doubted. */
const answered = (words: string) => {
  const { readings, doubts } = understand(words, { ...EMPTY_CONTEXT, asked: 'vacuum' });
  return [...readings, ...doubts].map(({ value }) => value);
};

const WHOLE = from(-100, 9_999).map((value) => value * 10);
const TENTHS = from(-1_000, 10_000);

describe('numbers as another library spells them', { timeout: 180_000 }, () => {
  it.each([
    ['every whole number from −100 to 9,999', WHOLE, 10_100],
    ['every tenth from −100 to 1,000', TENTHS, 11_001],
  ] as const)('are read back: %s', (_which, values, count) => {
    expect(values.length).toBe(count);
    const misread = values.flatMap((tenths) =>
      [...new Set([spell(tenths), withAnd(spell(tenths))])].filter((words) =>
        [bare, answered].some((read) => {
          const found = read(words);
          return found.length !== 1 || found[0] !== tenths / 10;
        }),
      ),
    );
    expect(misread).toEqual([]);
  });
});
