import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Automata } from '../../core/grammar/automata.ts';
import { Grammar } from '../../core/grammar/compile.ts';
import { sameTags } from '../../core/grammar/fold.ts';
import { type Match, Matcher, type RuntimeLists } from '../../core/grammar/match.ts';
import {
  choice,
  greedy,
  list,
  named,
  type Node,
  optional,
  pause,
  repeat,
  rest,
  scope,
  sequence,
  summed,
  tag,
  type Tags,
  tokenClass,
  word,
} from '../../core/grammar/nodes.ts';
import { Reach } from '../../core/grammar/reach.ts';
import { parseShape } from '../../core/grammar/shape.ts';
import { Skimmer } from '../../core/grammar/skim.ts';
import { type Token, UNKNOWN } from '../../core/grammar/tokens.ts';
import { skimmed } from './skimmed.ts';

const WORDS = ['a', 'b', '1', '2'] as const;

/** What a node means depends on the way it is read: each tag has a value of its own. */
const aTag = fc.record({ slot: fc.constantFrom('s', 't', 'plus', 'times'), n: fc.integer({ min: 1, max: 9 }) })
  .map(({ slot, n }) => tag({ [slot]: n })); // prettier-ignore
const aLeaf = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...WORDS).map(word) },
  { weight: 3, arbitrary: aTag },
  { weight: 1, arbitrary: fc.constantFrom(tokenClass('digits'), tokenClass('digits', 100), pause) },
  { weight: 1, arbitrary: fc.constantFrom(rest('r', 'pause'), rest('r', 'end')) },
);

/** Any node of the algebra but lists, a few levels deep. */
const { node: anyNode } = fc.letrec<{ node: Node }>((tie) => ({
  node: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    aLeaf,
    fc.array(tie('node'), { minLength: 1, maxLength: 3 }).map((parts) => sequence(...parts)),
    fc.array(tie('node'), { minLength: 1, maxLength: 3 }).map((options) => choice(...options)),
    tie('node').map(optional),
    tie('node').map(greedy),
    fc
      .tuple(tie('node'), fc.integer({ min: 0, max: 1 }), fc.integer({ min: 0, max: 1 }))
      .map(([node, min, more]) => repeat(node, min, Math.max(1, min + more))),
    tie('node').map((node) => named('n', node)),
    tie('node').map((node) => summed('sum', node)),
    tie('node').map((node) => scope('in', node)),
  ),
}));

const aToken = fc
  .record({ text: fc.constantFrom(...WORDS), pause: fc.boolean() })
  .map(({ text, pause }): Token => {
    const value = /\d/.test(text) ? Number(text) : null;
    return {
      text,
      known: UNKNOWN,
      start: 0,
      end: 0,
      pause,
      value,
      classes: value === null ? [] : ['digits'],
    };
  });
const someTokens = fc.array(aToken, { minLength: 1, maxLength: 5 });

/** The same rule by the matcher, which tries every way, and by its automaton. */
function both(
  node: Node,
  tokens: readonly Token[],
  { lists = {}, wantsEvery = false }: { lists?: RuntimeLists; wantsEvery?: boolean } = {},
) {
  const grammar = new Grammar();
  const rule = named('rule', node);
  const ready = grammar.compile(rule);
  const matcher = new Matcher(grammar, tokens, lists);
  const matches = matcher.run(ready, 0).filter(({ end }) => end > 0);
  const reach = new Reach(new Automata(grammar, [rule], { wantsEvery }), 0, {
    matcher,
    at: 0,
    to: tokens.length,
  });
  const ends = skimmed(new Skimmer(grammar, [rule]), matcher).map(([end]) => end);
  return { matches, reach, skimmed: ends.filter((end) => end > 0) };
}

const endsOf = (matches: readonly Match[]): readonly number[] => [
  ...new Set(matches.map(({ end }) => end)),
];

const tokensOf = (text: string): readonly Token[] =>
  text.split(' ').map((word) => ({
    text: word,
    known: UNKNOWN,
    start: 0,
    end: 0,
    pause: false,
    value: null,
    classes: [],
  }));

const RUNS = { numRuns: 1500 };

describe('a glance at any rule', () => {
  it('passes over nothing that the matcher reads', () => {
    let vain = 0;
    let read = 0;
    fc.assert(
      fc.property(anyNode, someTokens, (node, tokens) => {
        const { matches, skimmed } = both(node, tokens);
        const ends = endsOf(matches);
        expect(skimmed).toEqual(expect.arrayContaining([...ends]));
        read += ends.length;
        vain += skimmed.length - ends.length;
      }),
      RUNS,
    );
    expect(read).toBeGreaterThan(vain * 4);
  });
});

describe('the automaton of any rule', () => {
  it('tells the reading that the matcher prefers up to each end, or leaves it to the matcher', () => {
    let told = 0;
    let left = 0;
    fc.assert(
      fc.property(anyNode, someTokens, (node, tokens) => {
        const { matches, reach } = both(node, tokens);
        for (const end of endsOf(matches)) {
          const tags = reach.first(end);
          if (tags === null) left += 1;
          else told += 1;
          const preferred = matches.find((match) => match.end === end)?.tags[0] ?? {};
          if (tags !== null) expect(tags).toEqual(preferred);
        }
      }),
      RUNS,
    );
    expect(told).toBeGreaterThan(left * 50);
  });

  it('says that a reading is the only one only where it is', () => {
    fc.assert(
      fc.property(anyNode, someTokens, (node, tokens) => {
        const { matches, reach } = both(node, tokens);
        for (let end = 1; end <= tokens.length; end += 1) {
          if (!reach.hasOnly(end)) continue;
          expect(matches.filter((match) => match.end === end).length).toBeLessThan(2);
        }
      }),
      RUNS,
    );
  });

  it('puts the first readings up to each end in the order in which the matcher prefers them', () => {
    fc.assert(
      fc.property(anyNode, someTokens, (node, tokens) => {
        const { matches, reach } = both(node, tokens);
        const ends = endsOf(matches);
        fc.pre(ends.every((end) => reach.first(end) !== null));
        expect(ends.toSorted((one, other) => reach.compare(one, other))).toEqual(ends);
      }),
      RUNS,
    );
  });
});

/** Those up to one end, each meaning once, in their order. */
function meanings(all: readonly (Tags | null)[]): readonly Tags[] {
  const told: Tags[] = [];
  for (const tags of all) {
    if (tags !== null && !told.some((each) => sameTags(each, tags))) told.push(tags);
  }
  return told;
}

describe('the automaton that wants every reading', () => {
  it('tells all that the matcher finds up to each end, in its order, or leaves them to the matcher', () => {
    let told = 0;
    let left = 0;
    fc.assert(
      fc.property(anyNode, someTokens, (node, tokens) => {
        const { matches, reach } = both(node, tokens, { wantsEvery: true });
        for (let end = 1; end <= tokens.length; end += 1) {
          const count = reach.countTo(end);
          if (count < 0) {
            left += 1;
            continue;
          }
          told += 1;
          const found = meanings(Array.from({ length: count }, (_, at) => reach.reading(end, at)));
          const matched = matches.filter((match) => match.end === end);
          expect(found).toEqual(meanings(matched.map(({ tags }) => tags[0] ?? {})));
        }
      }),
      RUNS,
    );
    expect(told).toBeGreaterThan(left * 50);
  });

  it('says that it has not found all where there are too many', () => {
    const either = choice(tag({ s: 1 }), tag({ s: 2 }), tag({ s: 3 }), tag({ s: 4 }));
    const node = sequence(...Array.from({ length: 6 }, () => either), word('x'));
    expect(both(node, tokensOf('x'), { wantsEvery: true }).reach.countTo(1)).toBeLessThan(0);
    expect(both(node, tokensOf('x')).reach.countTo(1)).toBe(1);
  });
});

describe('an automaton', () => {
  const at = sequence(word('at'), choice(list('sites', 'site'), parseShape('(red|blue) [door]')));

  it('leaves words that a list knows to the matcher', () => {
    const sites = [['blue', 'door']];
    expect(both(at, tokensOf('at blue door'), { lists: { sites } }).reach.first(3)).toBeNull();
    expect(both(at, tokensOf('at red door'), { lists: { sites } }).reach.first(3)).toEqual({});
    expect(both(at, tokensOf('at blue door')).reach.first(3)).toEqual({});
  });

  it('does not take a reading that passes over a greedy part', () => {
    const node = sequence(word('x'), greedy(word('psi')), optional(parseShape('psi now')));
    const { matches, reach } = both(node, tokensOf('x psi now'));
    expect(endsOf(matches)).toEqual([2]);
    expect(reach.first(3)).toBeNull();
    expect(reach.first(2)).toEqual({});
  });

  it('is full once it has learnt as much as it may, and reads on until it is dropped', () => {
    const node = repeat(choice(...['a', 'b', 'c', 'd'].map(word)), 1, 9);
    const grammar = new Grammar();
    grammar.learn(node);
    const automata = new Automata(grammar, [node], { most: 10 });
    const reads = (text: string): boolean =>
      new Reach(automata, 0, {
        matcher: new Matcher(grammar, tokensOf(text)),
        at: 0,
        to: text.split(' ').length,
      }).first(text.split(' ').length) !== null;
    expect(reads('a b')).toBe(true);
    expect(automata.isFull).toBe(false);
    for (const text of ['a b c', 'b c d', 'c d a b', 'd d']) expect(reads(text)).toBe(true);
    expect(automata.isFull).toBe(true);
    expect(reads('a a a')).toBe(true);
  });
});
