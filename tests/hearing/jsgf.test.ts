import { describe, expect, it } from 'vitest';

import { GARBAGE_PRONUNCIATIONS } from '../../core/hearing/garbage.ts';
import { combineGrammars, withoutUnsounded, wordsOfGrammar } from '../../core/hearing/jsgf.ts';

const READING = `#JSGF V1.0 UTF-8 en;
grammar reading; // what a gauge shows
/* two rules */
<number> = one | /0.5/ two {two} | <NULL>;
public <reading> = (head | suction) [is] <number>+;`;
const ANSWER = '#JSGF V1.0;\ngrammar answer;\n<number> = no;\npublic <answer> = yes | <number>;';

describe('combineGrammars', () => {
  it('keeps rules of the same name apart and makes one public rule', () => {
    const text = combineGrammars([
      { text: READING, weight: 1 },
      { text: ANSWER, weight: 0.5 },
    ]);
    expect(text).toContain('public <heard> = /1/ <g0_reading> | /0.5/ <g1_answer> | /1e-20/');
    expect(text).toContain('<g0_number> = one');
    expect(text).toContain('<g1_number> = no;');
    expect(text).toContain('<NULL>');
    expect(text?.match(/public/g)).toHaveLength(1);
    expect(text?.match(/^grammar /gm)).toHaveLength(1);
  });

  it('is null when no grammar has a public rule', () => {
    expect(combineGrammars([])).toBeNull();
    expect(combineGrammars([{ text: '#JSGF V1.0;\ngrammar x;\n<a> = b;', weight: 1 }])).toBeNull();
  });

  it('adds a phone loop of every phone', () => {
    const words = wordsOfGrammar(combineGrammars([{ text: ANSWER, weight: 1 }]) ?? '');
    expect(words).toEqual([...Object.keys(GARBAGE_PRONUNCIATIONS), 'no', 'yes'].sort());
  });
});

describe('wordsOfGrammar', () => {
  it('finds words and nothing else', () => {
    expect(wordsOfGrammar(READING)).toEqual(['head', 'is', 'one', 'suction', 'two']);
  });

  it('keeps the apostrophe of a word', () => {
    expect(wordsOfGrammar("public <a> = (condenser's | it's) plugged;")).toEqual([
      "condenser's",
      "it's",
      'plugged',
    ]);
  });
});

describe('names that cannot be sounded', () => {
  const grammar = combineGrammars([
    {
      text: '#JSGF V1.0;\ngrammar g;\n<knownSite> = (harbor street deli | zzyq cafe);\n<knownUnit> = qqq;\n<unit> = (psi | qqq);\npublic <said> = at <knownSite> | on <knownUnit> | <unit>;\n',
      weight: 1,
    },
  ]);

  it('are left out, and no other word is', () => {
    const known = new Set(['at', 'on', 'harbor', 'street', 'deli', 'cafe', 'psi']);
    const text = withoutUnsounded(grammar ?? '', known);
    expect(text).toContain('<g0_knownSite> = (harbor street deli);');
    expect(text).toContain('<g0_knownUnit> = <VOID>;');
    expect(text).toContain('<g0_unit> = (psi | qqq);');
  });

  it('leave a grammar whose names all sound as it is', () => {
    const all = new Set(['harbor', 'street', 'deli', 'zzyq', 'cafe', 'qqq']);
    expect(withoutUnsounded(grammar ?? '', all)).toBe(grammar);
  });
});
