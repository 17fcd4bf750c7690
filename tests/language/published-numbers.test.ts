import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { talkNumbers } from '../../core/language/settle/talk-numbers.ts';
import { understand } from '../../core/language/understand.ts';
import { numbersMeant } from '../corpus/numbers-meant.ts';
import { PUBLISHED } from '../corpus/published/sources.ts';
import { shortForm } from '../corpus/short-form.ts';

const tableOf = (name: string): readonly (readonly string[])[] =>
  readFileSync(new URL(`../corpus/published/${name}.tsv`, import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => line.split('\t'));

const agreed = tableOf('agreed').map(([said = '', numbers = '', source = '']) => ({
  said,
  numbers,
  source,
}));
const contested = tableOf('contested').map(
  ([said = '', theirs = '', ours = '', source = '', reason = '']) => ({
    said,
    theirs,
    ours,
    source,
    reason,
  }),
);

const inOrder = (numbers: readonly number[]): readonly number[] =>
  numbers.toSorted((one, other) => one - other);
const numbersOf = (text: string): readonly number[] =>
  inOrder(text.split(' ').flatMap((each) => (each === '' || each === 'none' ? [] : Number(each))));
/** What was meant, asked about or passed over as talk. */
const numbersFound = (said: string): readonly number[] => [
  ...numbersMeant(understood(said)),
  ...talkNumbers(said, EMPTY_CONTEXT).map(({ value }) => value),
];
const understood = (said: string): string => shortForm(understand(said, EMPTY_CONTEXT));

describe('numbers in the published tests of other readers', () => {
  it.each(agreed)('all are found and none invented: "$said" ($source)', ({ said, numbers }) => {
    expect(inOrder(numbersFound(said))).toEqual(numbersOf(numbers));
  });

  it.each(contested)('"$said" is no $theirs: $reason', ({ said, theirs, ours, reason }) => {
    expect(understood(said)).toBe(ours);
    expect(inOrder(numbersMeant(ours))).not.toEqual(numbersOf(theirs));
    expect(reason).toMatch(/\w+ \w+/);
  });

  it('are mostly agreed about, and each table row names a source', () => {
    expect(contested.length).toBeLessThan(agreed.length);
    const sources = new Set([...agreed, ...contested].map(({ source }) => source));
    expect([...sources].toSorted()).toEqual(Object.keys(PUBLISHED).toSorted());
  });
});
