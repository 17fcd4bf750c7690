import { describe, expect, it } from 'vitest';
import { type Context, EMPTY_CONTEXT } from '../../core/language/context.ts';
import { namesIn, NO_NAMES } from '../../core/language/names/known-names.ts';
import { recogniserGrammar } from '../../core/language/heard/recogniser-grammar.ts';
import { understand } from '../../core/language/understand.ts';
import { workDoneAt, workTodoAt } from '../../core/replies/work-words.ts';
import { hears, readJsgf } from '../grammar/grammar-reader.ts';

const NAMES = {
  ...NO_NAMES,
  parts: namesIn('Copperline 012 contactor\n\nBellweir 1240\nOtterby relay kit\nBellweir 1240\n'),
};
const KNOWING: Context = { ...EMPTY_CONTEXT, names: NAMES };

describe('parts by names of their own', () => {
  it('are listed a line each, each once', () => {
    expect(NAMES.parts).toEqual(['Copperline 012 contactor', 'Bellweir 1240', 'Otterby relay kit']);
  });

  it.each([
    ['put in a new copperline zero one two contactor', 'Copperline 012 contactor', 'contactor'],
    ['i installed the copperline oh one two contactor', 'Copperline 012 contactor', 'contactor'],
    ['put in a Copperline 012 contactor', 'Copperline 012 contactor', 'contactor'],
    ['put the bellweir twelve forty in', 'Bellweir 1240', null],
    [
      'swapped the old contactor for a copperline zero one two contactor',
      'Copperline 012 contactor',
      'contactor',
    ],
    ['the otterby relay kit is in', 'Otterby relay kit', 'startRelay'],
    ['replaced the bellweir one two four zero', 'Bellweir 1240', null],
  ])('are work done with them: %s', (said, called, part) => {
    const { work, unclaimed } = understand(said, KNOWING);
    expect(work).toMatchObject([{ did: 'replace', called, part }]);
    expect(unclaimed).toEqual([]);
  });

  it.each([
    ['it needs a new copperline zero one two contactor', 'replace'],
    ['order a copperline zero one two contactor', 'order'],
  ])('are what is recommended: %s', (said, kind) => {
    expect(understand(said, KNOWING).recommendations).toMatchObject([
      { do: kind, called: 'Copperline 012 contactor', part: 'contactor' },
    ]);
  });

  it('are found as the parts that they are', () => {
    expect(
      understand('the copperline zero one two contactor is burnt', KNOWING).findings,
    ).toMatchObject([{ part: 'contactor', state: 'burnt' }]);
  });

  it('mean nothing by name while they are not known', () => {
    const { work } = understand('put in a new copperline zero one two contactor', EMPTY_CONTEXT);
    expect(work.filter(({ called }) => called !== undefined)).toEqual([]);
  });

  it('are heard where they are known, figure by figure, and cost nothing where none is', () => {
    const grammar = readJsgf(recogniserGrammar('anything', NAMES));
    expect(hears(grammar, 'put in a new copperline zero one two contactor')).toBe(true);
    expect(hears(grammar, 'installed the otterby relay kit')).toBe(true);
    const without = recogniserGrammar('anything');
    expect(hears(readJsgf(without), 'put in a new copperline zero one two contactor')).toBe(false);
    expect(recogniserGrammar('anything', { ...NAMES, parts: [] })).toBe(without);
  });

  it('are said back by those names', () => {
    const [work] = understand('put in a new bellweir twelve forty', KNOWING).work;
    expect(work && workDoneAt(work)).toBe('Bellweir 1240 put in');
    const [todo] = understand('order a bellweir twelve forty', KNOWING).recommendations;
    expect(todo && workTodoAt(todo)).toBe('order the Bellweir 1240');
  });
});
