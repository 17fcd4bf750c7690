import { describe, expect, it } from 'vitest';
import { type Context, EMPTY_CONTEXT } from '../../core/language/context.ts';
import { phraseHints } from '../../core/language/heard/phrase-hints.ts';
import { recogniserGrammar } from '../../core/language/heard/recogniser-grammar.ts';
import { understand } from '../../core/language/understand.ts';
import { shortForm } from '../corpus/short-form.ts';
import { hears, readJsgf } from '../grammar/grammar-reader.ts';

const NAMES = {
  sites: ['Harbor Street Deli', "Nadia's Corner", 'Store 14'],
  units: ['walk-in by the dock', 'Prep table two', 'the old reach-in'],
  parts: [],
};
const KNOWING: Context = { ...EMPTY_CONTEXT, names: NAMES };

const meant = (said: string, context = KNOWING): string => shortForm(understand(said, context));

describe('names of earlier visits', () => {
  it.each([
    ['at harbor street deli', 'site Harbor Street Deli'],
    ['back at Harbor Street Deli', 'site Harbor Street Deli'],
    ["we're at nadia's corner", "site Nadia's Corner"],
    ['harbor street deli', 'site Harbor Street Deli'],
    ['this is the walk-in by the dock', 'unit walk-in by the dock'],
    ['the walk in by the dock', 'unit walk-in by the dock'],
    ["i'm on the old reach in", 'unit the old reach-in'],
    ['next unit, prep table two', 'unit Prep table two;!newVisit'],
    ['next unit is the walk in by the dock', 'unit walk-in by the dock;!newVisit'],
    [
      'at harbor street deli on the walk in by the dock head one ninety',
      'headPressure 190 psi;site Harbor Street Deli;unit walk-in by the dock',
    ],
  ])('%s', (said, expected) => {
    expect(meant(said)).toBe(expected);
  });

  it('are no unit of this visit where only a part of one is told of', () => {
    const { facts } = understand('they want gaskets on the walk in by the dock', KNOWING);
    expect(facts.filter(({ fact }) => fact === 'unit')).toEqual([]);
  });

  it('are meant by their kind where one goes back to it', () => {
    expect(meant('go back to the walk-in for a second', { ...KNOWING, equipment: 'reachIn' })).toBe(
      'equipment walkInCooler;unit walk-in by the dock;!newVisit',
    );
  });

  it('are written as they were the first time, however they are said', () => {
    expect(understand('on PREP TABLE TWO', KNOWING).facts).toMatchObject([
      { value: 'Prep table two', words: 'on PREP TABLE TWO' },
    ]);
  });
});

describe('a name that nobody knows yet', () => {
  it.each([
    ['site is blue door cafe', 'site blue door cafe'],
    ['i am at blue door cafe', 'site blue door cafe'],
    ['unit is called the one in the cellar', 'unit the one in the cellar'],
    ['next unit, prep table nine', 'unit prep table nine;!newVisit'],
    ['next unit is called the cellar box', 'unit cellar box;!newVisit'],
    ['this is the walk-in by the bar', 'equipment walkInCooler;unit walk-in by the bar'],
  ])('is kept in its own words: %s', (said, expected) => {
    expect(meant(said)).toBe(expected);
    expect(meant(said, EMPTY_CONTEXT)).toBe(expected);
  });

  it('means nothing where only a known one would', () => {
    expect(meant('at harbor street', EMPTY_CONTEXT)).toBe('NOTHING');
    expect(meant('on the second try', KNOWING)).toBe('NOTHING');
  });
});

describe('the recogniser', () => {
  const grammar = readJsgf(recogniserGrammar('anything', NAMES));
  const without = readJsgf(recogniserGrammar('anything'));

  it.each([
    'at harbor street deli',
    "at nadia's corner",
    'this is the walk in by the dock',
    'on prep table two head one ninety two',
    'next unit prep table two',
  ])('hears “%s” where the names are known, and not otherwise', (words) => {
    expect(hears(grammar, words)).toBe(true);
    expect(hears(without, words)).toBe(false);
    expect(understand(words, KNOWING).facts.length).toBeGreaterThan(0);
  });

  it('is given no name that it could not sound, and only the newest of many', () => {
    expect(recogniserGrammar('anything', NAMES)).not.toMatch(/store|14/);
    const many = Array.from(
      { length: 60 },
      (_, at) => `site ${'abcdefgh'[at % 8] ?? ''}${'xyz'[at % 3] ?? ''}${'k'.repeat(at)}`,
    );
    const text = recogniserGrammar('anything', { sites: many, units: [], parts: [] });
    expect(text.match(/\bsite [a-z]+/g)).toHaveLength(24);
  });

  it('is the same grammar while nothing is known', () => {
    expect(recogniserGrammar('anything', { sites: [], units: [], parts: [] })).toBe(
      recogniserGrammar('anything'),
    );
    expect(recogniserGrammar('number', NAMES)).toBe(recogniserGrammar('number'));
  });

  it('of a browser is given them as hints', () => {
    expect(phraseHints('anything', NAMES)).toContainEqual({
      phrase: 'harbor street deli',
      boost: 6,
    });
    expect(phraseHints().map(({ phrase }) => phrase)).not.toContain('harbor street deli');
  });
});
