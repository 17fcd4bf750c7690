import { describe, expect, it } from 'vitest';
import { phrasesOf } from '../../core/grammar/phrases.ts';
import { COMMAND_RULES } from '../../core/language/commands/command-rules.ts';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import {
  recogniserGrammar,
  recogniserGrammarAbnf,
} from '../../core/language/heard/recogniser-grammar.ts';
import { understand } from '../../core/language/understand.ts';
import { hears, readAbnf, readJsgf } from '../grammar/grammar-reader.ts';

const STATES = ['anything', 'number', 'yesOrNo'] as const;
const grammars = {
  anything: readJsgf(recogniserGrammar('anything')),
  number: readJsgf(recogniserGrammar('number')),
  yesOrNo: readJsgf(recogniserGrammar('yesOrNo')),
};

/** What must get through whatever was just asked, and what it must then mean. */
const EMERGENCIES = [
  ['stop', 'pause'],
  ['hold on', 'pause'],
  ['pause', 'pause'],
  ['undo', 'undo'],
  ['take that back', 'undo'],
  ['no', 'no'],
  ['no wait', 'no'],
  ['make it eighty nine', 'amend'],
  ['say that again', 'repeat'],
  ['go on', 'resume'],
  ['help', 'help'],
  ['finish', 'finish'],
  ['new visit', 'newVisit'],
  ['set a ten minute timer', 'timer'],
  ['mark this as after', 'markAfter'],
] as const;

describe.each(STATES)('while the page expects %s', (state) => {
  it.each(EMERGENCIES)('“%s” is heard, and means %s', (words, command) => {
    expect(hears(grammars[state], words)).toBe(true);
    expect(understand(words, EMPTY_CONTEXT).commands).toMatchObject([{ do: command }]);
  });

  it('no command is lost that is heard when anything is expected', () => {
    const commands = COMMAND_RULES.filter(({ heardWhen }) => heardWhen.includes('anything'));
    expect(commands.length).toBeGreaterThan(12);
    const phrases = commands
      .filter(({ shape }) => !/<(amount|minutes)>/.test(shape))
      .flatMap(({ node }) => phrasesOf(node));
    expect(phrases.length).toBeGreaterThan(15);
    expect(phrases.filter((phrase) => !hears(grammars[state], phrase))).toEqual([]);
  });

  it('the ABNF form hears the same', () => {
    const abnf = readAbnf(recogniserGrammarAbnf(state));
    const sentences = [...EMERGENCIES.map(([words]) => words), 'head one ninety two', 'is', 'one'];
    for (const words of sentences) {
      expect([words, hears(abnf, words)]).toEqual([words, hears(grammars[state], words)]);
    }
  });
});

describe('the narrow states', () => {
  it('hear no question and no finding: that is what makes them narrow', () => {
    for (const words of ['what should head be', 'condenser is plugged']) {
      expect(hears(grammars.anything, words)).toBe(true);
      expect(hears(grammars.number, words)).toBe(false);
      expect(hears(grammars.yesOrNo, words)).toBe(false);
    }
  });

  it('hear what answers “fifteen, or fifty?”', () => {
    for (const words of ['the first', 'the second one', 'fifty', 'yes', 'no', 'make it fifty']) {
      expect(hears(grammars.number, words)).toBe(true);
    }
  });

  it('hear a bare number, which noise turns into where anything is expected', () => {
    for (const words of ['fifteen', 'one ninety two', 'nineteen point five', 'minus six']) {
      expect(hears(grammars.number, words)).toBe(true);
      expect(hears(grammars.yesOrNo, words)).toBe(true);
      expect(hears(grammars.anything, words)).toBe(false);
    }
  });

  it('hear a named reading where a number is expected, several in one breath, with a correction', () => {
    expect(hears(grammars.number, 'head one ninety two suction fourteen')).toBe(true);
    expect(hears(grammars.number, 'one sixty no wait one sixty two')).toBe(true);
    expect(hears(grammars.yesOrNo, 'head one ninety two')).toBe(false);
  });
});
