import { describe, expect, it } from 'vitest';
import { createConstraint, LONGEST } from '../../../prompts/decode/constraint.ts';
import { createDice } from '../../../prompts/decode/dice.ts';
import type { Lexicon } from '../../../prompts/decode/lexicon.ts';
import { parseLexicon } from '../../../prompts/decode/lexicon.ts';
import { phraseInTries, type Writer } from '../../../prompts/decode/phrase-in-tries.ts';
import type { PhraseRecord } from '../../../prompts/record/phrase-record.ts';

const TOKENS =
  '[PAD] [UNK] [END] [SAY] [NOT] ##. ##, {about} {measured} {target} is over under'.split(' ');
const id = (token: string): number => TOKENS.indexOf(token);
const ids = (words: string): readonly number[] => words.split(' ').filter(Boolean).map(id);
const ANY = ids('[END] ##. ##, {about} {measured} {target} is over under');

const LEXICON: Lexicon = {
  tokens: TOKENS,
  groups: [
    { kind: 'compare', register: 'short', needs: [], words: ids('is ##. ##,') },
    { kind: 'compare', register: 'short', needs: ['over'], words: ids('over') },
    { kind: 'compare', register: 'short', needs: ['under'], words: ids('under') },
    { kind: 'value', register: 'short', needs: [], words: ids('##. {target}') },
  ],
  follows: TOKENS.map(() => ANY),
};
const slot = (required: boolean) => ({ text: 'x', spoken: 'x', required });
const RECORD: PhraseRecord = {
  kind: 'compare',
  fields: ['over'],
  slots: { about: slot(true), measured: slot(false) },
};

/** The tokens that may come next. */
function next(written: string, lexicon: Lexicon = LEXICON): readonly string[] {
  const asked = { record: RECORD, register: 'short', lastOpening: null } as const;
  const constrain = createConstraint(asked, lexicon, { temperature: 1, roll: createDice(1) });
  const scores = new Float32Array(TOKENS.length);
  constrain(ids(written), scores);
  return TOKENS.filter((_, at) => (scores[at] ?? -Infinity) > -Infinity);
}

describe('what may come next', () => {
  it('is a word or a slot of its own, no mark at the start, and no word of the other direction', () => {
    expect(next('')).toEqual(['{about}', '{measured}', 'is', 'over']);
  });

  it('is each slot at most once, and no word or mark twice running', () => {
    expect(next('{about}')).toEqual(['##.', '##,', '{measured}', 'is', 'over']);
    expect(next('{about} is')).toEqual(['##.', '##,', '{measured}', 'over']);
    expect(next('{about} ##,')).toEqual(['{measured}', 'is', 'over']);
  });

  it('is the end only after a full stop, with every required slot said', () => {
    expect(next('{measured} ##.')).not.toContain('[END]');
    expect(next('{about} is over')).not.toContain('[END]');
    expect(next('{about} is over ##.')).toContain('[END]');
    expect(next('{about} ##. is ##. is ##. is ##.')).toEqual(['[END]']);
  });

  it('is a step that some sentence takes, and the end where there is none', () => {
    const follows = TOKENS.map((token) => (token === 'is' ? ids('over') : ANY));
    expect(next('{about} is', { ...LEXICON, follows })).toEqual(['over']);
    expect(next('over is', { ...LEXICON, follows: TOKENS.map(() => []) })).toEqual(['[END]']);
  });
});

describe('phrasing in tries', () => {
  const wanted = {
    record: RECORD,
    register: 'short',
    passes: (text: string) => !text.includes('bad'),
    seed: 3,
    last: null,
  } as const;
  const writing = (...sentences: readonly string[]) => {
    const prompts: string[] = [];
    const write: Writer = (prompt) => Promise.resolve(sentences[prompts.push(prompt) - 1] ?? '');
    return { prompts, write };
  };

  it('takes the first that is whole, fits and passes', async () => {
    const { prompts, write } = writing(
      '{about} is',
      '{about} is bad.',
      '{measured}.',
      '{about} is over.',
    );
    expect(await phraseInTries(write, LEXICON, wanted)).toMatchObject({
      sentence: '{about} is over.',
      tries: 4,
    });
    expect(prompts).toHaveLength(4);
    expect(prompts[0]).toBe('@compare %short +over {about} ! {measured} [NOT] [END] [SAY]');
  });

  it('gives up after the last of them', async () => {
    const { prompts, write } = writing();
    expect(await phraseInTries(write, LEXICON, wanted)).toBeNull();
    expect(prompts).toHaveLength(4);
  });

  it('does not say what was said last, and tells the model how that began', async () => {
    const last = {
      said: { text: 'X is over.', spoken: '' },
      sentence: '{about} is over.',
      tries: 1,
    };
    const { prompts, write } = writing('{about} is over.', '{about} over.');
    const phrased = await phraseInTries(write, LEXICON, { ...wanted, last });
    expect(phrased?.sentence).toBe('{about} over.');
    expect(prompts[0]).toContain('[NOT] {about} [SAY]');
  });

  it('draws alike with the same seed, and otherwise with another', () => {
    const drawn = (seed: number) => {
      const roll = createDice(seed);
      return Array.from({ length: 8 }, () => roll());
    };
    expect(drawn(7)).toEqual(drawn(7));
    expect(drawn(7)).not.toEqual(drawn(8));
    expect(drawn(7).every((number) => number >= 0 && number < 1)).toBe(true);
    expect(LONGEST).toBeLessThan(64);
  });
});

describe('a lexicon', () => {
  it('is read back as it was written, and not at all when it is cut short or has another shape', () => {
    const text = JSON.stringify(LEXICON);
    expect(parseLexicon(text)).toEqual(LEXICON);
    expect(parseLexicon(text.slice(0, -5))).toBeNull();
    expect(parseLexicon(JSON.stringify({ ...LEXICON, follows: 1 }))).toBeNull();
    expect(parseLexicon(JSON.stringify({ ...LEXICON, groups: [{ kind: 1 }] }))).toBeNull();
  });
});
