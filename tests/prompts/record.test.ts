import { describe, expect, it } from 'vitest';
import type { Known } from '../../core/advice/verdict.ts';
import { verdictSaid } from '../../core/replies/verdict-said.ts';
import { fill, fits } from '../../prompts/record/fill.ts';
import { recordOf } from '../../prompts/record/record-of.ts';

const working = { kind: 'known', formula: null, inputs: [], source: null, cautions: [] } as const;
const HEAD: Known = {
  ...working,
  answer: 'compare',
  basis: 'table',
  about: 'headPressure',
  measured: 192,
  target: 171,
  measuredUnit: 'psi',
  value: 21,
  unit: 'psi',
  direction: 'over',
  alongside: { about: 'condensingTemp', value: 8.5, unit: 'dF', direction: 'over' },
};
const SATURATION: Known = {
  ...working,
  answer: 'saturation',
  refrigerant: 'R-134a',
  given: { value: -4, unit: 'degF' },
  value: 146,
  unit: 'psi',
  phase: 'dew',
};

const record = (verdict: Known) => {
  const told = recordOf(verdict);
  if (told === null) throw new Error('it is never phrased');
  return told;
};

describe('what a model is told of a verdict', () => {
  it('has a word for all that is true of it and no number, name or unit outside its slots', () => {
    const { kind, fields, slots } = record(HEAD);
    expect([kind, ...fields]).toEqual(['compare', 'over', 'alongsideOver']);
    expect(Object.keys(slots)).toEqual([
      'about',
      'measured',
      'target',
      'difference',
      'alongsideName',
      'alongside',
    ]);
    expect(slots['difference']).toMatchObject({ text: '21 psi', required: true });
  });

  it('leaves the difference out of what is in the band, so that nobody chases it', () => {
    const { fields, slots } = record({ ...HEAD, low: 160, high: 200 });
    expect(fields).toEqual(['inBand']);
    expect(Object.keys(slots)).toEqual(['about', 'measured', 'target']);
  });

  it('has the rule of the day behind it, word for word, and is nothing for a refusal and for what is needed', () => {
    expect(recordOf({ ...HEAD, basis: 'fanCycling' })?.tail?.text).toBe(
      'The fan cycles, so anything between is right.',
    );
    expect(recordOf({ kind: 'needs', about: null, need: 'before' })).toBeNull();
  });
});

describe('a sentence with its slots filled', () => {
  it('says a unit once, and begins each sentence with a capital', () => {
    const sentence =
      '{about} is {difference} over: {measured}, should be {target}. {alongsideName} is {alongside} over.';
    expect(fill(sentence, record(HEAD))).toEqual({
      text: 'Head is 21 psi over: 192, should be 171. Condensing is 8.5 °F over.',
      spoken: 'Head is 21 P S I over: 192, should be 171. Condensing is 8.5 degrees over.',
    });
    expect(fill(sentence, record(HEAD))).toEqual(verdictSaid(HEAD));
  });

  it('is spoken as its slots are, wherever they stand', () => {
    expect(fill('at {given} it is {result}, {refrigerant}.', record(SATURATION))).toEqual({
      text: 'At -4 °F it is 146 psi, R-134a.',
      spoken: 'At minus 4 degrees it is 146 P S I, R one thirty four A.',
    });
  });

  it('does not take a decimal point for the end of a sentence', () => {
    const half = record({ ...HEAD, value: 21.5 });
    expect(fill('{difference} over, {about}.', half)?.text).toBe('21.5 psi over, head.');
  });

  it.each([
    ['{about} is {difference} over.', true],
    ['{about} is over.', false],
    ['{about} is {difference} over: {difference}.', false],
    ['{about} is {difference} over on {refrigerant}.', false],
  ])('fits only with each required slot once and no foreign one: %s', (sentence, does) => {
    expect(fits(sentence, record(HEAD))).toBe(does);
  });

  it('is nothing with a slot that is not there', () => {
    expect(fill('{about} is {refrigerant}.', record(HEAD))).toBeNull();
  });
});
