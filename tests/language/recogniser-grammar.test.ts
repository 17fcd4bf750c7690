import { describe, expect, it } from 'vitest';
import { phrasesOf } from '../../core/grammar/phrases.ts';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { WHOLE_NUMBER } from '../../core/language/numbers/numbers.ts';
import { parse } from '../../core/language/parse/parse.ts';
import { phraseHints } from '../../core/language/heard/phrase-hints.ts';
import {
  heardRules,
  recogniserGrammar,
  recogniserGrammarAbnf,
  vocabulary,
} from '../../core/language/heard/recogniser-grammar.ts';
import { tokenise } from '../../core/language/words/tokenise.ts';

const EXPECTATIONS = ['anything', 'number', 'yesOrNo'] as const;

describe('the grammar that the recogniser is given', () => {
  it.each(EXPECTATIONS)(
    'is JSGF whose every rule is defined once before it is used: %s',
    (expectation) => {
      const text = recogniserGrammar(expectation);
      expect(text.startsWith('#JSGF V1.0;\ngrammar gloveside;\n')).toBe(true);
      const defined = [...text.matchAll(/^(?:public )?<(\w+)> =/gm)].map(([, name]) => name);
      expect(new Set(defined).size).toBe(defined.length);
      const used = [...text.matchAll(/<(\w+)>/g)].map(([, name]) => name);
      expect(used.filter((name) => !defined.includes(name))).toEqual([]);
      expect(text).not.toMatch(/\[\s*\]|\(\s*\)/);
      expect(text).toBe(
        text
          .toLowerCase()
          .replace('#jsgf v1.0', '#JSGF V1.0')
          .replace(/<\w+>/g, (name) => {
            const found = used.find((each) => `<${each?.toLowerCase() ?? ''}>` === name);
            return `<${found ?? ''}>`;
          }),
      );
    },
  );

  it('hears the same numbers where it writes them with fewer words', () => {
    const { node } = WHOLE_NUMBER;
    const shorter = node.kind === 'choice' ? node.shortly : undefined;
    const numbers = phrasesOf(node);
    expect(numbers.length).toBeGreaterThan(2500);
    expect(shorter && phrasesOf(shorter).toSorted()).toEqual(numbers.toSorted());
  });

  it('stays small: accuracy falls as it grows, and 6.4 kB loads in 0.28 s', () => {
    expect(recogniserGrammar('anything').length).toBeLessThan(9000);
    expect(recogniserGrammar('number').length).toBeLessThan(3500);
    expect(recogniserGrammar('yesOrNo').length).toBeLessThan(2500);
  });

  it('names numbers at most twice, since the recogniser writes each reference out in full', () => {
    const references = recogniserGrammar('anything').match(/<amount>/g) ?? [];
    expect(references.length - 1).toBeLessThanOrEqual(2);
  });

  it('holds no word that the tokeniser would change before it is understood', () => {
    const changed = vocabulary().filter((word) => tokenise(word)[0]?.text !== word);
    expect(changed).toEqual([]);
  });

  it('hears what its own rules give as examples', () => {
    const words = new Set(vocabulary());
    const unheard = heardRules('anything')
      .flatMap((rule) => rule.examples[0] ?? [])
      .filter((example) => tokenise(example).some((token) => !words.has(token.text)));
    expect(unheard).toEqual([]);
  });

  it('hears the words that hold it and let it go on, by both their names', () => {
    const text = recogniserGrammar('anything');
    for (const words of ['pause', 'hold on', 'resume', 'go on']) {
      expect(text).toMatch(new RegExp(`[(|] ?${words} ?[)|]`));
    }
  });

  it.each(EXPECTATIONS)('says the same as SRGS in its ABNF form: %s', (expectation) => {
    const abnf = recogniserGrammarAbnf(expectation);
    const defined = [...abnf.matchAll(/^(?:public )?\$(\w+) =/gm)].map(([, name]) => name);
    const used = [...abnf.matchAll(/\$(\w+)/g)].map(([, name]) => name);
    expect(used.filter((name) => !defined.includes(name))).toEqual([]);
    const bodyOf = (text: string) => text.slice(text.indexOf('\n', text.indexOf('gram')));
    const asAbnf = bodyOf(recogniserGrammar(expectation))
      .replace(/<(\w+)>/g, '$$$1')
      .replace(/^(public \$said = )(.*) \[\$said\];$/m, '$1($2) <1->;');
    expect(abnf).toContain(asAbnf);
  });

  it('hints at the names of the trade, each once, within the bounds of the standard', () => {
    const hints = phraseHints();
    const phrases = hints.map(({ phrase }) => phrase);
    expect(new Set(phrases).size).toBe(phrases.length);
    expect(phrases).toEqual(
      expect.arrayContaining(['superheat', 'four oh four a', 'high pressure switch', 'txv']),
    );
    expect(hints.filter(({ boost }) => boost <= 0 || boost > 10)).toEqual([]);
  });

  it('understands every answer that it listens for to a yes or no question', () => {
    for (const answer of ['yes', 'no', 'yeah', 'nope', 'take that back']) {
      expect(parse(answer, EMPTY_CONTEXT).items).toHaveLength(1);
    }
  });
});
