import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Grammar } from '../../core/grammar/compile.ts';
import { Matcher } from '../../core/grammar/match.ts';
import {
  choice,
  named,
  type Node,
  optional,
  repeat,
  type RuleNode,
  sequence,
  tag,
  weighted,
  word,
} from '../../core/grammar/nodes.ts';
import { phrasesOf } from '../../core/grammar/phrases.ts';
import { printAbnf } from '../../core/grammar/print-abnf.ts';
import { printJsgf } from '../../core/grammar/print-jsgf.ts';
import { sampleNode } from '../support/sample-node.ts';
import { Skimmer } from '../../core/grammar/skim.ts';
import { type Token, UNKNOWN } from '../../core/grammar/tokens.ts';
import { hears, readAbnf, readJsgf } from './grammar-reader.ts';
import { skimmed } from './skimmed.ts';

const WORDS = ['a', 'b', 'c'] as const;
const aWord = fc.constantFrom(...WORDS).map(word);

/** Any node of the algebra that can be heard, a few levels deep; rules get their names afterwards. */
const { node: anyNode } = fc.letrec<{ node: Node }>((tie) => ({
  node: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    aWord,
    fc.array(tie('node'), { minLength: 1, maxLength: 3 }).map((parts) => sequence(...parts)),
    fc.array(tie('node'), { minLength: 1, maxLength: 3 }).map((options) => choice(...options)),
    fc
      .array(fc.record({ node: tie('node'), weight: fc.integer({ min: 1, max: 5 }) }), {
        minLength: 1,
        maxLength: 3,
      })
      .map((options) => weighted(...options)),
    tie('node').map(optional),
    fc
      .tuple(tie('node'), fc.integer({ min: 0, max: 2 }), fc.integer({ min: 1, max: 2 }))
      .map(([node, min, more]) => repeat(node, min, min + more)),
    tie('node').map((node) => sequence(node, tag({ seen: true }))),
    tie('node').map((node) => named('unnamed', node)),
  ),
}));

/** Each rule under a name of its own, as the printers demand. */
function withNames(node: Node): Node {
  let count = 0;
  const rename = (each: Node): Node => {
    switch (each.kind) {
      case 'rule': {
        count += 1;
        return { ...each, name: `r${count}`, node: rename(each.node) };
      }
      case 'sequence':
        return { ...each, parts: each.parts.map(rename) };
      case 'choice':
        return {
          ...each,
          options: each.options.map((option) => ({ ...option, node: rename(option.node) })),
        };
      case 'optional':
      case 'repeat':
      case 'scope':
      case 'unheard':
        return { ...each, node: rename(each.node) };
      default:
        return each;
    }
  };
  return rename(node);
}

/** A word in front, since a sentence that may be nothing at all is no grammar for a recogniser. */
const anyRoot = anyNode.map((node): RuleNode =>
  named('said', sequence(word('x'), withNames(node))),
);
const anySentence = fc
  .array(fc.constantFrom(...WORDS), { maxLength: 4 })
  .map((words) => ['x', ...words].join(' '));

const tokensOf = (sentence: string): readonly Token[] =>
  sentence.split(' ').map((text) => ({
    text,
    known: UNKNOWN,
    start: 0,
    end: 0,
    pause: false,
    value: null,
    classes: [],
  }));

function reads(root: RuleNode, sentence: string): boolean {
  const grammar = new Grammar();
  const ready = grammar.compile(root);
  const tokens = tokensOf(sentence);
  return new Matcher(grammar, tokens).run(ready, 0).some(({ end }) => end === tokens.length);
}

/** Where the root and its copy may end in the sentence, by the matcher and at a glance. */
function endsIn(root: RuleNode, sentence: string) {
  const grammar = new Grammar();
  const skimmer = new Skimmer(grammar, [root, root]);
  const matcher = new Matcher(grammar, tokensOf(sentence));
  const read = matcher.run(grammar.compile(root), 0).map(({ end }) => end);
  return { read: [...new Set(read)].sort(), found: skimmed(skimmer, matcher) };
}

const RUNS = { numRuns: 400 };

describe('any grammar', () => {
  it('is heard, by what is printed of it, exactly where the matcher reads it', () => {
    fc.assert(
      fc.property(anyRoot, anySentence, (root, sentence) => {
        const expected = reads(root, sentence);
        expect(hears(readJsgf(printJsgf('g', root, 'once')), sentence)).toBe(expected);
        expect(hears(readAbnf(printAbnf(root, 'once')), sentence)).toBe(expected);
      }),
      RUNS,
    );
  });

  it('is skimmed to where the matcher reads it, and nowhere else', () => {
    fc.assert(
      fc.property(anyRoot, anySentence, (root, sentence) => {
        const { read, found } = endsIn(root, sentence);
        expect(found).toEqual(read.flatMap((end) => [0, 1].map((number) => [end, number])));
      }),
      RUNS,
    );
  });

  it('may follow itself where it is printed so', () => {
    fc.assert(
      fc.property(anyRoot, anySentence, anySentence, (root, first, second) => {
        fc.pre(reads(root, first) && reads(root, second));
        const both = `${first} ${second}`;
        expect(hears(readJsgf(printJsgf('g', root, 'many')), both)).toBe(true);
        expect(hears(readAbnf(printAbnf(root, 'many')), both)).toBe(true);
        expect(hears(readJsgf(printJsgf('g', root, 'many')), `${both} y`)).toBe(false);
      }),
      { numRuns: 150 },
    );
  });

  it('says only what it reads, in samples and in its list of phrases', () => {
    fc.assert(
      fc.property(
        anyRoot,
        fc.array(fc.double({ min: 0, max: 0.999, noNaN: true }), { minLength: 1 }),
        (root, dice) => {
          let at = 0;
          const random = (): number => dice[(at += 1) % dice.length] ?? 0;
          expect(reads(root, sampleNode(root, random).words.join(' '))).toBe(true);
          for (const phrase of phrasesOf(root).slice(0, 20)) expect(reads(root, phrase)).toBe(true);
        },
      ),
      RUNS,
    );
  });
});
