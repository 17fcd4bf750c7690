import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { explain } from '../../core/language/explain.ts';
import { parse } from '../../core/language/parse.ts';
import { tokenise } from '../../core/language/tokenise.ts';
import { understand } from '../../core/language/understand.ts';
import { readCorpus } from '../corpus/corpus.ts';
import { seeded } from './random.ts';

const corpus = readCorpus();
const words = [...new Set(corpus.flatMap(({ said }) => said.split(' ')))];
const random = seeded(11);
const anyOf = <Item>(items: readonly Item[]): Item | undefined =>
  items[Math.floor(random() * items.length)];
const scrambled = Array.from({ length: 3000 }, () =>
  Array.from({ length: 1 + Math.floor(random() * 14) }, () => anyOf(words)).join(' '),
);

/**
 * Measured on these sentences: 85 at most. Written as a bound on work, which does not depend on the machine.
 */
const STEPS_PER_TOKEN = 600;

describe('sentences of words in any order', () => {
  it('are all answered, with bounded work', () => {
    const slow = scrambled.filter((text) => {
      understand(text, EMPTY_CONTEXT);
      return parse(text, EMPTY_CONTEXT).steps > STEPS_PER_TOKEN * (tokenise(text).length + 1);
    });
    expect(slow).toEqual([]);
  });

  it('lose no written number: each is claimed by one part or left to ask about', () => {
    const figures = scrambled.map((text, index) => `${text} ${7000 + index}`);
    const lost = figures.filter((text, index) => {
      const number = String(7000 + index);
      const { rules, unclaimed } = explain(text, EMPTY_CONTEXT);
      const claims = rules.filter((rule) => rule.words.split(/\s/).includes(number)).length;
      return claims + unclaimed.filter((each) => each.includes(number)).length !== 1;
    });
    expect(lost).toEqual([]);
  });

  it('are answered where they hold a word that every object of the engine knows', () => {
    for (const said of ['constructor', "constructor's", 'the constructor is at 44']) {
      expect(understand(said, EMPTY_CONTEXT).text).toBe(said);
    }
  });

  it('are answered whatever characters they hold', () => {
    const letters = Array.from('ab1 .,-\'"°/%µ½é漢😀\u0000\n');
    for (let round = 0; round < 2000; round += 1) {
      const text = Array.from({ length: 12 }, () => anyOf(letters)).join('');
      expect(understand(text, EMPTY_CONTEXT).text).toBe(text);
    }
  });
});

describe('a sentence of 10,000 words', () => {
  it.each(['head one ninety', 'customer says', 'if', 'fan is', 'no wait one', '1', 'uh'])(
    'of "%s" is answered with work in proportion',
    (phrase) => {
      const count = Math.ceil(10_000 / phrase.split(' ').length);
      const text = Array.from({ length: count }, () => phrase).join(' ');
      expect(understand(text, EMPTY_CONTEXT).text).toBe(text);
      expect(parse(text, EMPTY_CONTEXT).steps).toBeLessThan(STEPS_PER_TOKEN * 10_000);
    },
  );
});
