import { describe, expect, it } from 'vitest';
import { chooseUnderstanding } from '../../core/language/choose-understanding.ts';
import { type Context, EMPTY_CONTEXT } from '../../core/language/context.ts';

const offered = (...words: readonly string[]) =>
  words.map((each, rank) => ({ words: each, confidence: 0.9 - rank / 10 }));

const choose = (alternatives: readonly string[], settled: Partial<Context> = {}) => {
  const choice = chooseUnderstanding(
    offered(...alternatives),
    { ...EMPTY_CONTEXT, ...settled },
    [],
  );
  return choice.chosen === null ? null : [choice.chosen.words, choice.because];
};

describe('the choice among what a recogniser offers', () => {
  it('keeps the likeliest where nothing speaks against it', () => {
    expect(choose(['head one ninety', 'head one nineteen'])).toEqual([
      'head one ninety',
      'likeliest',
    ]);
  });

  it('adds up the wordings of one meaning', () => {
    const { chosen } = chooseUnderstanding(
      [
        { words: 'head one ninety', confidence: 0.4 },
        { words: 'head is one nineteen', confidence: 0.35 },
        { words: 'head one nineteen', confidence: 0.2 },
      ],
      EMPTY_CONTEXT,
      [],
    );
    expect(chosen).toMatchObject({ words: 'head is one nineteen', rank: 1 });
    expect(chosen?.confidence).toBeCloseTo(0.55, 9);
  });

  it('takes what cannot well be where all else is much less likely', () => {
    const heard = [0.9, 0.02].map((confidence, at) => ({
      words: at === 0 ? 'suction nine hundred' : 'suction nineteen',
      confidence,
    }));
    expect(chooseUnderstanding(heard, EMPTY_CONTEXT, []).chosen?.rank).toBe(0);
  });

  it('prefers a plausible value to a likelier one that is not', () => {
    expect(choose(['suction nine hundred', 'suction nineteen'])).toEqual([
      'suction nineteen',
      'plausible',
    ]);
    const underway = { headPressure: { value: 60, unit: 'psi' } } as const;
    expect(choose(['suction seventy', 'suction seventeen'], underway)).toEqual([
      'suction seventeen',
      'plausible',
    ]);
  });

  it('goes by what can be where the recogniser tells no more than an order', () => {
    const untold = (...words: readonly string[]) =>
      chooseUnderstanding(
        words.map((each) => ({ words: each, confidence: 0 })),
        EMPTY_CONTEXT,
        [],
      ).chosen;
    expect(untold('suction nine hundred', 'suction nineteen')).toMatchObject({
      rank: 1,
      confidence: 0,
    });
    expect(untold('suction fifteen', 'suction fifty')?.rank).toBe(0);
  });

  it('prefers words that are read to words that are not', () => {
    expect(choose(['the con denser is plugged', 'the condenser is plugged'])).toEqual([
      'the condenser is plugged',
      'readWhole',
    ]);
    expect(choose(['fed one ninety', 'head one ninety'])).toEqual(['head one ninety', 'plausible']);
  });

  it('does not offer again what was just rejected, and says so when nothing is left', () => {
    const rejected = [{ quantity: 'headPressure', value: 150 }] as const;
    const heard = offered('head one fifty', 'head one fifteen');
    const choice = chooseUnderstanding(heard, EMPTY_CONTEXT, rejected);
    expect(choice).toMatchObject({ chosen: { words: 'head one fifteen' }, because: 'notRejected' });
    expect(choice.considered.map((each) => each.repeated)).toEqual([rejected[0], null]);
    expect(
      chooseUnderstanding(offered('head one fifty'), EMPTY_CONTEXT, rejected).chosen,
    ).toBeNull();
    expect(
      chooseUnderstanding(offered('suction fifteen'), EMPTY_CONTEXT, rejected).chosen,
    ).not.toBeNull();
    expect(chooseUnderstanding([], EMPTY_CONTEXT, []).chosen).toBeNull();
  });

  it('knows a rejected value as an answer, an amendment or a bare number too', () => {
    const rejected = [{ quantity: null, value: 50 }];
    for (const words of ['fifty', 'make it fifty', 'box fifty']) {
      expect(chooseUnderstanding(offered(words), EMPTY_CONTEXT, rejected).chosen).toBeNull();
    }
    const asked = { ...EMPTY_CONTEXT, asked: 'boxTemp' } as const;
    expect(chooseUnderstanding(offered('fifty', 'fifteen'), asked, rejected).chosen?.words).toBe(
      'fifteen',
    );
  });
});
