import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';

const understood = (text: string) => understand(text, EMPTY_CONTEXT);

/** What the corpus tables' short form cannot say: where units came from, and the words of each part. */
describe('the whole object', () => {
  it('tells a unit said from one implied, and keeps each part with its own words', () => {
    expect(understood('Head one forty six, suction at twelve psi').readings).toEqual([
      {
        quantity: 'headPressure',
        value: 146,
        unit: 'psi',
        unitFrom: 'implied',
        place: null,
        words: 'Head one forty six',
      },
      {
        quantity: 'suctionPressure',
        value: 12,
        unit: 'psi',
        unitFrom: 'said',
        place: null,
        words: 'suction at twelve psi',
      },
    ]);
  });

  it('gives an empty sentence an empty object of the shape', () => {
    expect(understood('')).toEqual({
      text: '',
      readings: [],
      facts: [],
      findings: [],
      work: [],
      recommendations: [],
      questions: [],
      commands: [],
      memos: [],
      unclaimed: [],
      doubts: [],
    });
  });

  it('asks about a pressure below zero, where inches of vacuum or a slip may be meant', () => {
    expect(understood('suction minus two').doubts).toEqual([
      {
        quantity: 'suctionPressure',
        value: -2,
        unit: 'psi',
        unitFrom: 'unknown',
        place: null,
        words: 'suction minus two',
        why: 'noUnit',
      },
    ]);
  });

  it('gives a weight without its unit no unit at all', () => {
    expect(understood('added eight of one thirty four').doubts).toMatchObject([
      { quantity: 'refrigerantAdded', value: 8, unit: null, unitFrom: 'unknown', why: 'noUnit' },
    ]);
  });

  it('leaves out what a range, a hedge or an open meter does not have', () => {
    const [range] = understood('head is one ninety to two hundred').readings;
    expect(range).not.toHaveProperty('value');
    expect(range).toMatchObject({ low: 190, high: 200, unit: 'psi' });
    const [open] = understood('common to ground is OL').readings;
    expect(open).not.toHaveProperty('value');
    expect(open).toMatchObject({ overlimit: true, place: 'commonGround', unitFrom: 'implied' });
    expect(understood('head one ninety').readings[0]).not.toHaveProperty('hedged');
  });

  it('takes a correction as the only value', () => {
    const { readings, unclaimed, commands } = understood('head one sixty, no wait, one sixty two');
    expect(readings).toMatchObject([{ quantity: 'headPressure', value: 162 }]);
    expect(unclaimed).toEqual([]);
    expect(commands).toEqual([]);
  });
});
