import { describe, expect, it } from 'vitest';

import { parseJsgf } from '../../core/hearing/parse-jsgf.ts';
import { type SoundGraph, soundGraph } from '../../core/hearing/sound-graph.ts';
import { grammarHolds } from '../support/grammar-holds.ts';

const SOUNDS = { a: ['X'], b: ['X Y', 'Y'], c: ['X Y'], strange: ['Q'] };

function build(rules: string) {
  const grammar = parseJsgf(`#JSGF V1.0;\ngrammar test;\n${rules}`);
  if (grammar.kind !== 'read') throw new Error(grammar.message);
  return soundGraph(grammar, { pronunciations: SOUNDS, phones: ['', 'X', 'Y'] });
}

function graphOf(rules: string): SoundGraph {
  const outcome = build(rules);
  if (outcome.kind !== 'graph') throw new Error(JSON.stringify(outcome));
  return outcome.graph;
}

/** All that leads on from anywhere: nodes in the order in which they are found, each with what its arcs are. */
function grown(graph: SoundGraph): readonly string[] {
  const nodes = [graph.start];
  const told: string[] = [];
  for (const node of nodes) {
    graph.reach(node)?.again.forEach(({ to }) => nodes.includes(to) || nodes.push(to));
    for (let arc = graph.arcsFrom[node] ?? 0; arc < (graph.arcsEnd[node] ?? 0); arc += 1) {
      const to = graph.end(arc);
      if (!nodes.includes(to)) nodes.push(to);
      const word = graph.words[graph.arcWord[arc] ?? -1] ?? '…';
      told.push(`${nodes.indexOf(node)} ${graph.arcPhone[arc]} ${word} ${nodes.indexOf(to)}`);
    }
  }
  return told;
}

describe('soundGraph', () => {
  it('says the sounds that words begin with once, and tells the word where it can be no other', () => {
    expect(grown(graphOf('public <s> = a | b | c;'))).toEqual([
      '0 1 a 1',
      // "b" and "c" sound alike: each is told with its last sound; the other way to say "b" with its first.
      '0 1 … 2',
      '0 2 b 1',
      '2 2 b 1',
      '2 2 c 1',
    ]);
    expect(grown(graphOf('public <s> = b;'))).toEqual(['0 1 b 1', '0 2 b 2', '1 2 … 2']);
  });

  it('makes one node of what the same words lead to, whatever rules they belong to', () => {
    const apart = graphOf('<n> = a | b;\npublic <s> = c <n> a | c <n> b | c a a;');
    const together = graphOf('public <s> = c (a (a | b) | b (a | b));');
    expect(grown(apart)).toHaveLength(grown(together).length);
  });

  it('grows only where somebody comes', () => {
    const graph = graphOf('public <s> = a a | b b b b;');
    expect(graph.arcPhone).toHaveLength(0);
    graph.reach(graph.start);
    const first = graph.arcPhone.length;
    expect(first).toBeGreaterThan(0);
    expect(grown(graph).length).toBeGreaterThan(first);
  });

  it('forgets what it grew once that is too much, and grows again', () => {
    const graph = graphOf('public <s> = a b c [<s>];');
    const before = grown(graph);
    graph.trim(before.length);
    expect(graph.arcPhone.length).toBe(before.length);
    graph.trim(before.length - 1);
    expect(graph.arcPhone).toHaveLength(0);
    expect(grown(graph)).toEqual(before);
  });

  it('names every word that nobody knows how to say', () => {
    expect(build('public <s> = a | what | [ever];')).toEqual({
      kind: 'unknownWords',
      words: ['ever', 'what'],
    });
    expect(build('public <s> = constructor;')).toMatchObject({ words: ['constructor'] });
  });

  it.each([
    ['public <s> = <s> a | b;', 'the rule s holds itself elsewhere than at its end'],
    ['<t> = b [<s>];\npublic <s> = a <t> b;', 'the rule s holds itself elsewhere than at its end'],
    ['public <s> = <missing>;', 'no rule is named missing'],
    ['public <s> = strange;', 'strange holds the unknown sound Q'],
  ])('refuses %s', (rules, message) => {
    const outcome = build(rules);
    expect(outcome.kind === 'malformed' && outcome.message).toContain(message);
  });
});

describe('the states of a grammar', () => {
  const holds = (rules: string) => {
    const held = grammarHolds(`#JSGF V1.0;\ngrammar test;\n${rules}`);
    return (text: string): boolean => held(text.split(' ').filter((word) => word !== ''));
  };

  it('come back from a rule to where it was called, and nowhere else', () => {
    const says = holds('<n> = a | b <m>;\n<m> = c;\npublic <s> = a <n> a | b <n> b | <n>;');
    expect(
      ['a', 'b c', 'a a a', 'a b c a', 'b a b', 'b b c b'].filter((text) => !says(text)),
    ).toEqual([]);
    expect(['a a b', 'b b c a', 'a b a', 'c', ''].filter(says)).toEqual([]);
  });

  it('leave out what cannot be said, and repeat what may be left out', () => {
    const says = holds('public <s> = a <VOID> | [b]* c+;');
    expect(['c', 'b c', 'b b b c c'].filter((text) => !says(text))).toEqual([]);
    expect(['a', 'b', 'c b'].filter(says)).toEqual([]);
  });

  it('begin again after a rule that others end with', () => {
    const says = holds('<t> = b [<s>];\npublic <s> = a <t>;\n');
    expect(['a b', 'a b a b', 'a b a b a b'].filter((text) => !says(text))).toEqual([]);
    expect(['a', 'a b b', 'b'].filter(says)).toEqual([]);
  });
});
