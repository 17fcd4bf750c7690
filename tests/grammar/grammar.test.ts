import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Grammar } from '../../core/grammar/compile.ts';
import { bestCovers, Covering, type Piece } from '../../core/grammar/cover.ts';
import { foldSum, foldTags } from '../../core/grammar/fold.ts';
import { Matcher, type RuntimeLists } from '../../core/grammar/match.ts';
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
  sequence,
  summed,
  tag,
  tokenClass,
  unheard,
  weighted,
  word,
} from '../../core/grammar/nodes.ts';
import { phrasesOf } from '../../core/grammar/phrases.ts';
import { printAbnf } from '../../core/grammar/print-abnf.ts';
import { printJsgf } from '../../core/grammar/print-jsgf.ts';
import { MOST_LEARNT } from '../../core/grammar/remainders.ts';
import { sampleNode } from '../support/sample-node.ts';
import { parseShape } from '../../core/grammar/shape.ts';
import { Skimmer } from '../../core/grammar/skim.ts';
import { type Token, UNKNOWN } from '../../core/grammar/tokens.ts';
import { vocabularyOf } from '../../core/grammar/vocabulary.ts';
import { skimmed } from './skimmed.ts';

/** Words between spaces; a comma before a word makes a pause. */
function tokensOf(text: string): readonly Token[] {
  return text.split(' ').map((raw) => {
    const said = raw.replace(',', '');
    const value = /^\d+$/.test(said) ? Number(said) : null;
    const classes = value === null ? [] : ['digits'];
    return {
      text: said,
      known: UNKNOWN,
      start: 0,
      end: 0,
      pause: raw.startsWith(','),
      value,
      classes,
    };
  });
}

function matchAll(node: Node, text: string, lists: RuntimeLists = {}) {
  const grammar = new Grammar();
  const ready = grammar.compile(node);
  return new Matcher(grammar, tokensOf(text), lists).run(ready, 0);
}

const readings = (node: Node, text: string) =>
  matchAll(node, text).map(({ end, tags }) => ({ end, ...foldTags(tags) }));

const colour = named(
  'colour',
  choice(sequence(word('red'), tag({ colour: 'r' })), sequence(word('blue'), tag({ colour: 'b' }))),
);

describe('the matcher', () => {
  it('gives every reading, preferred first', () => {
    const node = sequence(word('very'), optional(word('very')), optional(colour));
    expect(readings(node, 'very very red')).toEqual([
      { end: 3, colour: 'r' },
      { end: 2 },
      { end: 1 },
    ]);
  });

  it('bounds a repeat, longest first', () => {
    expect(readings(repeat(word('a'), 1, 3), 'a a a a').map(({ end }) => end)).toEqual([3, 2, 1]);
  });

  it('takes a greedy part wherever it can', () => {
    const unit = sequence(word('psi'), tag({ unit: 'psi' }));
    expect(readings(sequence(word('x'), greedy(unit)), 'x psi')).toEqual([{ end: 2, unit: 'psi' }]);
    expect(readings(sequence(word('x'), greedy(unit)), 'x bar')).toEqual([{ end: 1 }]);
  });

  it('adds up a number and does not let it reach across a pause', () => {
    const number = summed('number', repeat(tokenClass('digits'), 1, 3));
    expect(readings(number, '1 2 3')[0]).toEqual({ end: 3, number: 6 });
    expect(readings(number, '1 2 ,3')[0]).toEqual({ end: 2, number: 3 });
  });

  it('reads the rest of a clause or of the sentence, and a pause where one stands', () => {
    expect(readings(rest('clause', 'pause'), 'a b ,c d')).toEqual([
      { end: 2, clause: { from: 0, to: 2 } },
    ]);
    expect(readings(rest('clause', 'end'), 'a b ,c d')[0]?.end).toBe(4);
    expect(readings(sequence(word('a'), pause, word('b')), 'a ,b')).toHaveLength(1);
    expect(readings(sequence(word('a'), pause, word('b')), 'a b')).toHaveLength(0);
  });

  it('knows lists only at run time', () => {
    const shape = sequence(word('the'), list('sites', 'site'));
    expect(matchAll(shape, 'the blue door', { sites: [['blue', 'door']] })).toEqual([
      { end: 3, tags: [{ site: 'blue door' }] },
    ]);
  });

  it('tries a named rule once at each place, however many ask for it', () => {
    const ways = choice(...Array.from({ length: 50 }, (_, n) => sequence(colour, word(`w${n}`))));
    const grammar = new Grammar();
    const ready = grammar.compile(ways);
    const matcher = new Matcher(grammar, tokensOf('red w49'));
    expect(matcher.run(ready, 0)).toHaveLength(1);
    expect(matcher.steps).toBeLessThan(160);
  });
});

describe('the cover', () => {
  const cover = (pieces: readonly (readonly [number, number, number])[]) =>
    new Covering(6, (at) =>
      pieces
        .map(([start, end, rank]) => ({ start, end, rank }))
        .filter(({ start }) => start === at),
    )
      .best()
      .map(({ start, end, rank }) => [start, end, rank]);

  it('claims the most, then in the fewest pieces, then by rank', () => {
    expect(cover([[0, 4, 1], [0, 3, 0], [3, 6, 0]])).toEqual([[0, 3, 0], [3, 6, 0]]); // prettier-ignore
    expect(
      cover([
        [0, 2, 0],
        [2, 4, 0],
        [0, 4, 9],
      ]),
    ).toEqual([[0, 4, 9]]);
    expect(cover([[1, 4, 5], [1, 4, 2]])).toEqual([[1, 4, 2]]); // prettier-ignore
  });

  it('is the best of all there are, also once pieces have changed', () => {
    const somePieces = fc.array(
      fc
        .record({ start: fc.nat(6), more: fc.integer({ min: 1, max: 4 }), rank: fc.nat(3) })
        .map(({ start, more, rank }) => ({ start, end: Math.min(start + more, 7), rank })),
      { maxLength: 12 },
    );
    const worth = (pieces: readonly Piece[]): readonly number[] => [
      pieces.reduce((sum, { start, end }) => sum + end - start, 0),
      -pieces.length,
      -pieces.reduce((sum, { rank }) => sum + rank, 0),
    ];
    const isMore = (one: readonly number[], other: readonly number[]): boolean => {
      const at = one.findIndex((value, index) => value !== other[index]);
      return at >= 0 && (one[at] ?? 0) > (other[at] ?? 0);
    };
    const best = (pieces: readonly Piece[], from = 0): readonly number[] =>
      pieces
        .filter(({ start }) => start >= from)
        .map((piece) => {
          const rest = best(pieces, piece.end);
          return worth([piece]).map((value, index) => value + (rest[index] ?? 0));
        })
        .reduce((one, other) => (isMore(other, one) ? other : one), [0, -0, -0]);
    fc.assert(
      fc.property(somePieces, fc.nat(6), (all, changed) => {
        let pieces = all;
        const covering = new Covering(7, (at) => pieces.filter(({ start }) => start === at));
        expect(worth(covering.best())).toEqual(best(pieces));
        pieces = all.filter(({ start }) => start !== changed);
        covering.settle(changed);
        expect(worth(covering.best())).toEqual(best(pieces));
      }),
    );
  });
});

describe('covers that come to the same', () => {
  it('are all found, the one that is taken first', () => {
    const pieces = [
      { start: 0, end: 2, rank: 1 },
      { start: 0, end: 3, rank: 2 },
      { start: 2, end: 5, rank: 2 },
      { start: 3, end: 5, rank: 1 },
      { start: 3, end: 5, rank: 4 },
    ];
    const piecesAt = (at: number) => pieces.filter(({ start }) => start === at);
    const covers = bestCovers(5, piecesAt);
    expect(covers.map((cover) => cover.map(({ end }) => end))).toEqual([
      [2, 5],
      [3, 5],
    ]);
    expect(covers[0]).toEqual(new Covering(5, piecesAt).best());
    expect(bestCovers(3, piecesAt)).toEqual([[{ start: 0, end: 3, rank: 2 }]]);
  });
});

describe('folding', () => {
  it('lets later tags win, and sums in the order said', () => {
    expect(foldTags([{ a: 1 }, { b: 2 }, { a: 3 }])).toEqual({ a: 3, b: 2 });
    expect(foldSum([{ plus: 2 }, { times: 1000 }, { plus: 0.1 }, { plus: 0.2 }])).toEqual({
      number: 2000.3,
    });
    expect(foldSum([{ sign: -1 }, { plus: 0 }])).toEqual({ number: 0 });
  });
});

describe('shapes', () => {
  it('read words, holes, options and choices', () => {
    const shape = parseShape('how [far] (off|out) is <colour>', { colour });
    expect(readings(shape, 'how far off is blue')).toEqual([{ end: 5, colour: 'b' }]);
    expect(readings(shape, 'how out is red')).toEqual([{ end: 4, colour: 'r' }]);
    expect(readings(parseShape('<colour:wall>', { colour }), 'red')).toEqual([
      { end: 1, wall: { colour: 'r' } },
    ]);
  });

  it.each(['how [far', 'how far)', 'how <long>', 'how ~far'])('refuse "%s"', (shape) => {
    expect(() => parseShape(shape)).toThrow(/^shape /);
  });
});

describe('the printers', () => {
  const root = named(
    'said',
    sequence(parseShape('[the] wall (is|~was) <colour>', { colour }), unheard(optional(word('x')))),
  );
  const spoken = named('said', parseShape('[the] wall (is|~was) <colour>', { colour }));

  it('print JSGF with each rule once and nothing that is only written', () => {
    expect(printJsgf('walls', spoken, 'many')).toBe(
      '#JSGF V1.0;\ngrammar walls;\n<colour> = (red | blue);\npublic <said> = [the] wall is <colour> [<said>];\n',
    );
    expect(printJsgf('walls', root, 'once')).toContain('<VOID>');
  });

  it('print weights where options differ, and refuse two rules of one name', () => {
    const node = weighted({ node: word('a'), weight: 3 }, { node: word('b'), weight: 1 });
    expect(printJsgf('g', named('r', node), 'once')).toContain('(/3/ a | /1/ b)');
    const twice = sequence(named('n', word('a')), named('n', word('b')));
    expect(() => printJsgf('g', named('r', twice), 'once')).toThrow('two rules are named n');
  });

  it('print the ABNF form of SRGS with each rule once, repeated as that form can say', () => {
    expect(printAbnf(spoken, 'many')).toBe(
      '#ABNF 1.0 UTF-8;\nlanguage en-US;\nmode voice;\nroot $said;\n$colour = (red | blue);\npublic $said = ([the] wall is $colour) <1->;\n',
    );
  });

  it('list the phrases of a node, each once', () => {
    expect(phrasesOf(spoken)).toEqual([
      'wall is red',
      'wall is blue',
      'the wall is red',
      'the wall is blue',
    ]);
  });

  it('list the words that can be heard', () => {
    expect(vocabularyOf([spoken])).toEqual(['blue', 'is', 'red', 'the', 'wall']);
  });
});

describe('the skimmer', () => {
  const skim = (nodes: readonly Node[], text: string, lists: RuntimeLists = {}) => {
    const grammar = new Grammar();
    const skimmer = new Skimmer(grammar, nodes);
    const matcher = new Matcher(grammar, tokensOf(text), lists);
    return skimmed(skimmer, matcher);
  };

  it('tells which nodes may read, and up to where', () => {
    const wall = parseShape('[the] wall [is <colour>]', { colour });
    expect(skim([wall, word('wall'), colour], 'the wall is red')).toEqual([
      [2, 0],
      [4, 0],
    ]);
    expect(skim([wall, word('wall'), colour], 'wall is blue')).toEqual([
      [1, 0],
      [1, 1],
      [3, 0],
    ]);
    expect(skim([wall, colour], 'the door')).toEqual([]);
  });

  it('leaps over words that only the sentence or its lists know', () => {
    const told = sequence(word('note'), rest('clause', 'pause'), optional(word('over')));
    expect(skim([told], 'note the red door ,over it')).toEqual([
      [4, 0],
      [5, 0],
    ]);
    const at = sequence(word('at'), list('sites', 'site'), word('now'));
    expect(skim([at], 'at blue door now', { sites: [['blue'], ['blue', 'door']] })).toEqual([
      [4, 0],
    ]);
    expect(skim([at], 'at blue door now')).toEqual([]);
  });

  it('minds where the sentence pauses', () => {
    const broken = sequence(word('wall'), pause, colour);
    expect(skim([broken], 'wall ,red')).toEqual([[2, 0]]);
    expect(skim([broken], 'wall red')).toEqual([]);
    const either = sequence(word('wall'), choice(pause, word('and')), colour);
    expect(skim([either], 'wall and red')).toEqual([[3, 0]]);
    expect(skim([either], 'wall red')).toEqual([]);
  });

  it('takes one step a token, however many nodes there are', () => {
    const nodes = Array.from({ length: 200 }, (_, n) => sequence(colour, word(`w${n}`)));
    const grammar = new Grammar();
    const skimmer = new Skimmer(grammar, nodes);
    const matcher = new Matcher(grammar, tokensOf('red w7 red'));
    expect(skimmed(skimmer, matcher)).toEqual([[2, 7]]);
    expect(matcher.steps).toBe(3);
  });

  it('forgets what it learnt before that fills the memory, and finds the same', () => {
    const grammar = new Grammar();
    const skimmer = new Skimmer(grammar, [colour, sequence(colour, colour)]);
    const found = () => skimmed(skimmer, new Matcher(grammar, tokensOf('red blue')));
    const before = found();
    for (let times = 0; times <= MOST_LEARNT; times += 1) grammar.remainders.learn();
    expect(grammar.remainders.age).toBe(1);
    expect(found()).toEqual(before);
  });
});

describe('samples', () => {
  it('say a node with the tags that it means', () => {
    expect(sampleNode(sequence(word('paint'), colour), () => 0.9)).toEqual({
      words: ['paint', 'blue'],
      tags: [{ colour: 'b' }],
    });
  });
});

describe('a fault in a grammar', () => {
  const compiled = (node: Node) => () => new Grammar().compile(node);

  it('is refused when it is built: a rule that holds itself, however far in', () => {
    const parts: Node[] = [word('a')];
    const loop = named('loop', optional(sequence(word('b'), choice(sequence(...parts)))));
    expect(compiled(loop)).not.toThrow();
    const growing: Node = { kind: 'sequence', parts };
    const itself = named('itself', optional(growing));
    parts.push(itself);
    expect(compiled(itself)).toThrow('rule itself holds itself');
    expect(compiled(sequence(word('x'), itself))).toThrow('rule itself holds itself');
  });

  it('is refused in its bounds and weights', () => {
    for (const [min, max] of [
      [2, 1],
      [0, 0],
      [-1, 2],
      [1, Infinity],
      [0.5, 2],
    ] as const) {
      expect(compiled(repeat(word('a'), min, max))).toThrow('has no bounds');
    }
    for (const weight of [0, -1, NaN, Infinity]) {
      expect(compiled(weighted({ node: word('a'), weight }))).toThrow('an option cannot weigh');
    }
  });

  it('is refused when printed: a rule inside another of its name', () => {
    const nested = named('n', sequence(word('a'), named('n', word('b'))));
    expect(() => printJsgf('g', named('r', nested), 'once')).toThrow('two rules are named n');
    expect(() => printAbnf(named('r', nested), 'once')).toThrow('two rules are named n');
  });
});
