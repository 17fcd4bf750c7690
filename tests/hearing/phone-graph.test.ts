import { describe, expect, it } from 'vitest';

import { parseJsgf } from '../../core/hearing/parse-jsgf.ts';
import { phoneGraph } from '../../core/hearing/phone-graph.ts';

const SOUNDS = { a: ['X'], b: ['X Y', 'Y'], strange: ['Q'] };

function build(rules: string) {
  const grammar = parseJsgf(`#JSGF V1.0;\ngrammar test;\n${rules}`);
  if (grammar.kind !== 'read') throw new Error(grammar.message);
  return phoneGraph(grammar, { pronunciations: SOUNDS, phones: ['', 'X', 'Y'] });
}

describe('phoneGraph', () => {
  it('builds once what leads to the same end', () => {
    const outcome = build('<n> = a | b;\npublic <s> = (a <n>) | (b <n>) | (a b <n>);');
    // n: a, b, b; before it: a; b, b; a, then the b before n again.
    expect(outcome.kind === 'graph' && outcome.graph.arcCount).toBe(1 + 3 + 1 + 3 + 1);
  });

  it('lets skips lead forwards only', () => {
    const outcome = build(
      'public <s> = [a] (b | a)* [<s>] b | <NULL>;'.replace('[<s>] b', 'b [<s>]'),
    );
    const nodes = outcome.kind === 'graph' ? outcome.graph.nodes : [];
    expect(nodes.length).toBeGreaterThan(0);
    nodes.forEach(({ skips }, number) => {
      for (const { to } of skips) expect(to).toBeGreaterThan(number);
    });
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
    ['public <s> = [a]*;', 'something without a word may be repeated'],
    ['public <s> = <missing>;', 'no rule is named missing'],
    ['public <s> = strange;', 'strange holds the unknown sound Q'],
  ])('refuses %s', (rules, message) => {
    const outcome = build(rules);
    expect(outcome.kind === 'malformed' && outcome.message).toContain(message);
  });

  it('leaves out what cannot be said', () => {
    expect(build('public <s> = a <VOID> | b;')).toMatchObject({ graph: { arcCount: 3 } });
  });
});
