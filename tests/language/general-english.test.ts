import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';
import type { Utterance } from '../../core/language/utterance.ts';

// What people say and write of anything but the job (the registry's `nlp-corpus`, MIT: reviews, captions, lyrics,
// tales, news), as a radio or a customer beside the unit would: almost nothing of it is ours.

const DOCUMENTS = 100;
/** Of so many sentences one is asked: all of them take half a minute, and tell the same. */
const EACH = 4;
const [FEWEST_WORDS, MOST_WORDS] = [3, 22];

const isText = (found: unknown): found is string => typeof found === 'string';

function sentencesIn(document: number): readonly string[] {
  const entry = createRequire(import.meta.url).resolve('nlp-corpus');
  const file = new URL(`../../builds/doc-${document}.json`, `file://${entry}`);
  const read: unknown = JSON.parse(readFileSync(file, 'utf8'));
  return Array.isArray(read) ? read.filter(isText) : [];
}

const isSaid = (text: string): boolean => {
  const words = text.trim().split(/\s+/).length;
  return words >= FEWEST_WORDS && words <= MOST_WORDS;
};

const SENTENCES = Array.from({ length: DOCUMENTS }, (_, document) => document)
  .flatMap((document) => [...sentencesIn(document)])
  .filter(isSaid)
  .filter((_, at) => at % EACH === 0);

/** Of how many sentences each kind is told: as many as there are and no more, for they can only become fewer. */
const MOST = [
  ['readings', 23],
  ['findings', 23],
  ['work', 1],
  ['recommendations', 4],
  ['facts', 32],
  ['commands', 15],
  ['questions', 154],
  // Numbers that are asked about: a number was said in one sentence of seven.
  ['unclaimed', 856],
] as const;

/** A name alone does nothing but wait for the next sentence. */
const MOST_TURNED_TO = 6;
const turnsTo = (each: Utterance[keyof Utterance][number]): boolean =>
  typeof each === 'object' && 'do' in each && each.do === 'turnTo';

describe(`${SENTENCES.length} sentences of general English`, () => {
  const meant = SENTENCES.map((sentence) => understand(sentence, EMPTY_CONTEXT));

  it('are enough to tell', () => {
    expect(SENTENCES.length).toBeGreaterThan(15_000);
  });

  it.each(MOST)('hold no more %s than %i', (kind, most) => {
    const told = SENTENCES.filter((_, at) => meant[at]?.[kind].some((each) => !turnsTo(each)));
    expect(told.length, told.join('\n')).toBeLessThanOrEqual(most);
  });

  it(`name by themselves, or break off before, what is ours no more than ${MOST_TURNED_TO} times`, () => {
    const told = SENTENCES.filter((_, at) => meant[at]?.commands.some(turnsTo));
    expect(told.length, told.join('\n')).toBeLessThanOrEqual(MOST_TURNED_TO);
  });
});
