import { describe, expect, it } from 'vitest';
import { answer } from '../../core/advice/answer.ts';
import type { Verdict } from '../../core/advice/verdict.ts';
import type { Question } from '../../core/language/utterance.ts';
import { guard } from '../../core/replies/guard/guard.ts';
import { verdictSaid } from '../../core/replies/verdict-said.ts';
import { REACH_IN, read, readings, visitOf } from './visits.ts';

const TODAY = readings(read('ambientTemp', 75, 'degF'), read('headPressure', 135, 'psi'));
const HEAD: Question = { ask: 'target', about: 'headPressure' };
const SUPPOSED = { quantity: 'ambientTemp', value: 95, unit: 'degF' } as const;

const ask = (question: Question, ambient = 75): Verdict =>
  answer(question, visitOf([REACH_IN, TODAY, readings(read('ambientTemp', ambient, 'degF'))]), {
    lastAnswer: null,
  });

describe('what something should be on a day that is not this one', () => {
  it('is what it should be once that is read, without how far off it is today', () => {
    const supposed = ask({ ...HEAD, supposed: SUPPOSED });
    const then = ask(HEAD, 95);
    if (supposed.kind !== 'known' || then.kind !== 'known') throw new Error('not known');
    expect(supposed).toMatchObject({ answer: 'target', supposed: SUPPOSED });
    expect('value' in supposed && supposed.value).toBe('value' in then && then.value);
    expect(supposed).not.toHaveProperty('reading');
    expect(then).toHaveProperty('reading');
    const air = supposed.inputs.filter(({ name }) => name === 'ambientTemp');
    expect(air.map(({ value, from }) => [value, from])).toEqual([[95, 'assumed']]);
  });

  it('leaves the visit as it was', () => {
    const state = visitOf([REACH_IN, TODAY]);
    const before = answer(HEAD, state, { lastAnswer: null });
    answer({ ...HEAD, supposed: SUPPOSED }, state, { lastAnswer: null });
    expect(answer(HEAD, state, { lastAnswer: null })).toEqual(before);
  });

  it('is said with the day that it is for, which no phrasing may leave out', () => {
    const verdict = ask({ ...HEAD, supposed: SUPPOSED });
    const { text } = verdictSaid(verdict);
    expect(text).toMatch(/That is with the air at 95 ?°F\.$/);
    expect(guard(text, verdict).kind).toBe('passed');
    expect(guard(text.replace(/ That is with the air.*$/, ''), verdict).kind).toBe('rejected');
  });

  it('needs no reading of today’s air', () => {
    const state = visitOf([REACH_IN]);
    expect(answer(HEAD, state, { lastAnswer: null }).kind).toBe('needs');
    expect(answer({ ...HEAD, supposed: SUPPOSED }, state, { lastAnswer: null }).kind).toBe('known');
  });
});
