import { describe, expect, it } from 'vitest';
import { utteranceSchema } from '../../core/wire/utterance-schema.ts';
import { gloveside } from '../support/fake-terminal.ts';

async function understood(input: readonly string[], options: readonly string[] = []) {
  const { status, printed, complaints } = await gloveside(['understand', ...options], { input });
  expect([status, complaints]).toEqual([0, []]);
  return printed.map((line) => utteranceSchema.parse(JSON.parse(line)));
}

describe('understand', () => {
  it('answers each line with one object, in order, the text unchanged', async () => {
    const sentences = ['head one forty six', '', ' suction  at twelve ', 'blah blah', '146'];
    const answers = await understood([sentences.join('\n')]);
    expect(answers.map(({ text }) => text)).toEqual(sentences);
    expect(answers[0]?.readings).toMatchObject([
      { quantity: 'headPressure', value: 146, unit: 'psi', unitFrom: 'implied' },
    ]);
    const { text: _, ...parts } = answers[1] ?? { text: '' };
    expect(Object.values(parts).every((part) => part.length === 0)).toBe(true);
  });

  it('answers a bare number as what was just asked for', async () => {
    const [answer] = await understood(['forty four\n'], ['--asked', 'boxTemp']);
    expect(answer?.readings).toMatchObject([{ quantity: 'boxTemp', value: 44, unit: 'degF' }]);
  });

  it('reads bare numbers in the units that were set', async () => {
    const [answer] = await understood(['box four\n'], ['--units', 'si']);
    expect(answer?.readings).toMatchObject([{ quantity: 'boxTemp', value: 4, unit: 'degC' }]);
  });

  it('doubts by the refrigerant that was set: 900 psi is ordinary for carbon dioxide', async () => {
    const on = async (refrigerant: string) =>
      (await understood(['head nine hundred\n'], ['--refrigerant', refrigerant]))[0];
    expect((await on('R-744'))?.readings).toMatchObject([{ value: 900 }]);
    expect((await on('r-134a'))?.doubts).toMatchObject([{ value: 900, why: 'outOfRange' }]);
  });

  it('answers a sentence of 10,000 words, and the one after it', { timeout: 60_000 }, async () => {
    const long = Array.from({ length: 2500 }, () => 'head one forty six').join(' ');
    const [first, second] = await understood([`${long}\nsuction twelve\n`]);
    expect(first?.text).toBe(long);
    expect(second?.readings).toMatchObject([{ quantity: 'suctionPressure', value: 12 }]);
  });

  it('prints the grammar of what is likely said next, in either form, names and all', async () => {
    const grammar = async (...options: readonly string[]) =>
      (await gloveside(['understand', ...options], { input: [] })).printed.join('\n');
    const jsgf = await grammar('--grammar', 'jsgf', '--parts', 'Bellweir relay');
    expect(jsgf).toMatch(/^#JSGF V1\.0;/);
    expect(jsgf).toContain('bellweir');
    const abnf = await grammar('--grammar', 'abnf', '--asked', 'boxTemp');
    expect(abnf).toMatch(/^#ABNF 1\.0 UTF-8;/);
    expect(abnf).toContain('public $said =');
    expect(abnf.length).toBeLessThan(jsgf.length);
    const { status, complaints } = await gloveside(['understand', '--grammar', 'srgs']);
    expect(status).toBe(2);
    expect(complaints.join(' ')).toContain('--grammar takes jsgf or abnf, not "srgs"');
  });

  it('says why in place of the JSON: rules with their words, what was left over, what was nearly meant', async () => {
    const { printed } = await gloveside(['understand', '--explain'], {
      input: ['okay head one forty six, gasket is zzz\nnice weather\nfour apples\n'],
    });
    const [first = '', talk = '', apples = ''] = printed;
    expect(first).toContain('said        okay head one forty six, gasket is zzz');
    expect(first).toContain('rule        [the] <quantity> <link> <amount>');
    expect(first).toContain('read      "head one forty six", words 2 to 5');
    expect(first).toContain('found     quantity=headPressure number=146');
    expect(first).toContain('left over   "gasket is zzz"');
    expect(first).toMatch(
      /nearly {6}<the> <part> \(.*\n {2}read {6}"gasket is"\n {2}stopped {3}at "zzz"/,
    );
    expect(talk).toContain('understood  nothing');
    expect(apples).toContain('understood  unclaimed ["4"]');
    expect(printed.filter((text) => text.startsWith('{'))).toEqual([]);
  });
});
