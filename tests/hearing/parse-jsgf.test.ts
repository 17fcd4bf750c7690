import { describe, expect, it } from 'vitest';

import { parseJsgf } from '../../core/hearing/parse-jsgf.ts';
import { recogniserGrammar } from '../../core/language/heard/recogniser-grammar.ts';

const word = (text: string) => ({ kind: 'word', word: text });

/** Right-hand sides and what the W3C Note of 5 June 2000 says that they mean, by its section. */
const EXPANSIONS: readonly (readonly [string, string, unknown])[] = [
  ['4.1', 'hello', word('hello')],
  ['4.1', '"new york"', word('new york')],
  ['4.2', '<greeting>', { kind: 'reference', rule: 'greeting' }],
  ['4.3', 'where are', { kind: 'sequence', parts: [word('where'), word('are')] }],
  [
    '4.3.2: alternatives bind weaker than sequences',
    'a b | c',
    {
      kind: 'choice',
      options: [
        { expansion: { kind: 'sequence', parts: [word('a'), word('b')] }, weight: 1 },
        { expansion: word('c'), weight: 1 },
      ],
    },
  ],
  [
    '4.3.3: weights',
    '/10/ small | /2/ medium | /1.5e0/ large',
    {
      kind: 'choice',
      options: [
        { expansion: word('small'), weight: 10 },
        { expansion: word('medium'), weight: 2 },
        { expansion: word('large'), weight: 1.5 },
      ],
    },
  ],
  ['4.4', '[ please ]', { kind: 'optional', expansion: word('please') }],
  ['4.5: * is none or more', 'very*', { kind: 'repeat', expansion: word('very'), least: 0 }],
  ['4.5: + is one or more', 'very+', { kind: 'repeat', expansion: word('very'), least: 1 }],
  [
    '4.5: a sign of repetition binds to what is next to it',
    'a b+',
    {
      kind: 'sequence',
      parts: [word('a'), { kind: 'repeat', expansion: word('b'), least: 1 }],
    },
  ],
  ['4.6: tags change nothing that is said', 'yes {affirm | {}', word('yes')],
  ['2.4: <NULL> is said by saying nothing', '<NULL>', { kind: 'sequence', parts: [] }],
  ['2.4: <VOID> cannot be said', '<VOID>', { kind: 'never' }],
];

const wrapped = (expansion: string): string =>
  `#JSGF V1.0 ISO8859-1 en;\ngrammar test;\n<a> = x; // not public\npublic <b> = ${expansion};`;

describe('parseJsgf', () => {
  it.each(EXPANSIONS)('section %s: %s', (_, text, meaning) => {
    const outcome = parseJsgf(wrapped(text));
    expect(outcome.kind === 'read' && outcome.rules.get('b')).toEqual(meaning);
    expect(outcome.kind === 'read' && outcome.publicRules).toEqual(['b']);
  });

  it.each([
    ['a grouping that is never closed', 'public <a> = (b;', ') was expected before ";"'],
    ['a rule without a name', 'public = b;', "a rule's name was expected, not ="],
    ['a rule that never ends', 'public <a> = b', '; was expected before ""'],
    ['a sign with nothing to repeat', 'public <a> = * b;', 'a stray *'],
    ['what it would have to fetch', 'import <x.y>;\npublic <a> = <x.y>;', 'imports another'],
  ])('says what is wrong with %s', (_, text, message) => {
    const outcome = parseJsgf(`#JSGF V1.0;\ngrammar test;\n${text}`);
    expect(outcome).toMatchObject({ kind: 'malformed' });
    expect(outcome.kind === 'malformed' && outcome.message).toContain(message);
  });

  it('reads the whole grammar of the language', () => {
    expect(parseJsgf(recogniserGrammar('anything'))).toMatchObject({ publicRules: ['said'] });
  });
});
