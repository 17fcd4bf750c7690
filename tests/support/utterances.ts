import type { Command, Reading, Utterance } from '../../core/language/utterance.ts';
import type { QuantityId } from '../../core/terms/quantities.ts';

const NOTHING: Utterance = {
  text: '',
  readings: [],
  facts: [],
  findings: [],
  work: [],
  recommendations: [],
  questions: [],
  commands: [],
  memos: [],
  remarks: [],
  unclaimed: [],
  doubts: [],
};

export function utteranceOf(parts: Partial<Utterance>): Utterance {
  return { ...NOTHING, ...parts };
}

export function psi(quantity: QuantityId, value: number): Reading {
  return {
    quantity,
    value,
    unit: 'psi',
    unitFrom: 'implied',
    place: null,
    words: `${quantity} ${value}`,
  };
}

export function degF(quantity: QuantityId, value: number): Reading {
  return { ...psi(quantity, value), unit: 'degF' };
}

export const commanding = (...commands: Command[]): Utterance => utteranceOf({ commands });
export const reading = (...readings: Reading[]): Utterance => utteranceOf({ readings });
export const working = (did: 'brush' | 'clean' = 'brush'): Utterance =>
  utteranceOf({ work: [{ did, part: 'condenser', words: `${did} condenser` }] });
