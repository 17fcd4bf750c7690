import { describe, expect, it } from 'vitest';
import type { Fact, Utterance } from '../../core/language/utterance.ts';
import { timeTold } from '../../core/visit/time-told.ts';
import { visitOf } from '../advice/visits.ts';
import { commanding, utteranceOf } from '../support/utterances.ts';

const labor = (value: number, isMore = false): Utterance => {
  const fact: Fact = { fact: 'labor', value, words: 'labor', ...(isMore ? { more: true } : {}) };
  return utteranceOf({ facts: [fact] });
};
const MORE = true;
const laborOf = (...said: readonly Utterance[]): number | null => timeTold(visitOf(said)).labor;

describe('labor that is added', () => {
  it('counts on top of what was told', () => {
    expect(laborOf(labor(90), labor(120, MORE))).toBe(210);
    expect(laborOf(labor(120, MORE), labor(30, MORE))).toBe(150);
  });

  it('is corrected by what is told of all of it, and taken back', () => {
    expect(laborOf(labor(90), labor(120, MORE), labor(180))).toBe(180);
    expect(laborOf(labor(90), labor(120, MORE), commanding({ do: 'undo' }))).toBe(90);
  });
});
