import { describe, expect, it } from 'vitest';

import { parseJsgf } from '../../core/hearing/parse-jsgf.ts';
import { accepts } from './bench/accepts.ts';
import { sampleHeard } from './bench/sentences.ts';
import { isTaken, verdictOn } from './bench/verdict.ts';
import { wilson } from './bench/wilson.ts';

const heard = (...words: readonly string[]) => ({
  alternatives: words.map((each) => ({ words: each, confidence: 0.9, wordConfidences: [] })),
});

describe('the hearing benchmark', () => {
  it('counts an interval as published (Newcombe, Statistics in Medicine 17, 1998, table I, method 3)', () => {
    const published = [
      [81, 263, 0.2553, 0.3662],
      [15, 148, 0.0624, 0.1605],
      [0, 20, 0, 0.1611],
      [1, 29, 0.0061, 0.1718],
    ] as const;
    for (const [hits, of, low, high] of published) {
      expect(wilson(hits, of)[0]).toBeCloseTo(low, 4);
      expect(wilson(hits, of)[1]).toBeCloseTo(high, 4);
    }
  });

  it('samples the same sentences from the same seed, every other one a reading', () => {
    const sentences = sampleHeard(8, 3);
    expect(sampleHeard(8, 3)).toEqual(sentences);
    expect(sampleHeard(8, 4)).not.toEqual(sentences);
    for (const reading of sentences.filter((_, index) => index % 2 === 0)) {
      expect(isTaken(heard(reading))).toBe(true);
    }
  });

  it('tells which sentences a grammar holds', () => {
    const grammar = parseJsgf(
      '#JSGF V1.0;\ngrammar g;\n<n> = one | two;\npublic <g> = (head [is] <n>+ | no*) [<g>] | <VOID>;',
    );
    if (grammar.kind === 'malformed') throw new Error(grammar.message);
    const says = (text: string): boolean => accepts(grammar, text.split(' '));
    const held = ['head one', 'head is two one', 'no no head two no', 'head one head is two'];
    expect(held.filter((text) => !says(text))).toEqual([]);
    expect(['head', 'head is', 'one', 'head no', 'head one is'].filter(says)).toEqual([]);
  });

  it('judges by what was meant', () => {
    expect(verdictOn('head one ninety two', heard('head is one hundred ninety two'))).toBe('exact');
    expect(verdictOn('head one ninety two', heard('head one ninety three'))).toBe('wrong');
    expect(verdictOn('suction fourteen', heard('suction nine hundred'))).toBe('asked');
    expect(verdictOn('suction fourteen', { ...heard('suction ten'), rejected: 'unsure' })).toBe(
      'rejected',
    );
    expect(verdictOn('suction fourteen', heard())).toBe('rejected');
  });
});
