import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { equalReadings, type Item, parseAsItStands } from '../../core/language/parse/parse.ts';
import { readCorpus } from '../corpus/corpus.ts';

/** Which rules read which words, whatever each of them makes of its own. */
const rulesOf = (items: readonly Item[]): string =>
  items.map(({ rank, start, end }) => `${rank} from ${start} to ${end}`).join(', ');

/**
 * The best cover cuts these inside a number, and is not taken: "twenty" on the scale and "two pounds" of something. Or one
 * rule may take "an hour" from the other, and both tell the same.
 */
const NUMBER_CUT = [
  'they paid three hundred bucks for it',
  'scale says twenty two pounds on the cylinder',
  'pressured it up to two hundred psi nitrogen',
  'swapped out the contactor and pulling thirty two six amps',
  "nitrogen's at one forty eight an hour later",
];

describe('ways to read a sentence that tie in words, items and ranks', { timeout: 180_000 }, () => {
  it('differ, in every sentence of the corpus, only within a rule, whose earlier option is meant', () => {
    const ties = readCorpus().map(({ said, context }) => {
      const [first, ...others] = equalReadings(said, context).map(rulesOf);
      const isUndecided = others.some((other) => other !== first);
      return {
        said,
        isUndecided,
        isMeant: first === rulesOf(parseAsItStands(said, context).items),
      };
    });
    const saidOf = (some: typeof ties): readonly string[] => some.map(({ said }) => said);
    expect(saidOf(ties.filter(({ isUndecided }) => isUndecided))).toEqual([]);
    const others = saidOf(ties.filter(({ isMeant }) => !isMeant));
    expect(others.toSorted()).toEqual(NUMBER_CUT.toSorted());
  });

  it('are found where there are any: which of the two a word belongs to is left to their order', () => {
    const said = 'is it safe to light the torch this door heater megs out fifty to ground';
    const wordsOf = ({ start, end }: { start: number; end: number }): string =>
      said.split(' ').slice(start, end).join(' ');
    const ways = equalReadings(said, EMPTY_CONTEXT).map((items) => items.map(wordsOf));
    expect(ways).toEqual([
      ['is it safe to light the torch this', 'door heater megs out fifty to ground'],
      ['is it safe to light the torch', 'this door heater megs out fifty to ground'],
    ]);
  });
});
