import { describe, expect, it } from 'vitest';
import type { Reading, Utterance } from '../../core/language/utterance.ts';
import { REACH_IN, read, readings, visitOf, WARM } from '../advice/visits.ts';
import { utteranceOf } from '../support/utterances.ts';
import { linesOf } from './note-lines.ts';

const microfarads = (value: number): Reading => ({
  ...read('capacitance', value, 'uF'),
  place: 'runCapacitor',
});
const RATED = read('ratedCapacitance', 45, 'uF');
const replaced: Utterance = utteranceOf({
  work: [{ did: 'replace', part: 'runCapacitor', words: '' }],
});

describe('what a measurement came to', () => {
  // Within ±6 % of its rating a run capacitor is good (famous-supply.com, Testing capacitors): 33 of 45 µF is 27 % off.
  it('is told of the part that was replaced for it', () => {
    const state = visitOf([REACH_IN, WARM, readings(RATED, microfarads(33)), replaced]);
    expect(linesOf(state, 'tests')).toEqual(['Run capacitor 33 µF, rated 45 µF: weak.']);
    expect(linesOf(state, 'findings')).toContain('Run capacitor: weak.');
    expect(linesOf(state, 'customer')[0]).toContain(
      'We found that the capacitor that keeps the motor turning was weak.',
    );
  });

  it('is told of the old part and of the new one apart', () => {
    const after = readings(microfarads(44.6));
    const state = visitOf([REACH_IN, WARM, readings(RATED, microfarads(33)), replaced, after]);
    expect(linesOf(state, 'tests')).toEqual([
      'Run capacitor 33 µF, rated 45 µF: weak.',
      'New part: run capacitor 44.6 µF, rated 45 µF: good.',
    ]);
  });

  it('finds nothing weak in one that is good', () => {
    const state = visitOf([REACH_IN, WARM, readings(RATED, microfarads(44))]);
    expect(linesOf(state, 'tests')).toEqual(['Run capacitor 44 µF, rated 45 µF: good.']);
    expect(linesOf(state, 'findings').join(' ')).not.toContain('capacitor');
  });

  it('tells what a heater drew, and no longer what was to be done about it', () => {
    const at = (reading: Reading): Reading => ({ ...reading, place: 'defrostHeater' });
    // Ohm's law: 210 V / 21 ohms = 10 A.
    const state = visitOf([
      REACH_IN,
      WARM,
      readings(
        at(read('current', 0, 'A')),
        at(read('voltage', 210, 'V')),
        at(read('resistance', 21, 'ohm')),
      ),
      utteranceOf({ work: [{ did: 'replace', part: 'defrostHeater', words: '' }] }),
    ]);
    expect(linesOf(state, 'tests')[0]).toBe('The defrost heater drew nothing, should be 10 A.');
  });

  it('says what the windings and their insulation came to, and asks for neither again', () => {
    const at = (place: Reading['place'], ohms: number): Reading => ({
      ...read('resistance', ohms, 'ohm'),
      place,
    });
    const state = visitOf([
      REACH_IN,
      WARM,
      readings(at('commonRun', 0.8), at('commonStart', 2.1), at('runStart', 2.9)),
      readings(read('insulationResistance', 100, 'Mohm')),
      replaced,
    ]);
    const told = linesOf(state, 'tests');
    // Common to run and common to start add up to run to start: 0.8 + 2.1 = 2.9.
    expect(told[0]).toBe('The windings add up.');
    expect(told[1]).toMatch(/^100 MΩ to ground, .* is the floor: it passes\.$/);
    expect(linesOf(state, 'open').join(' ')).not.toContain('insulation');
  });
});

describe('a cause that has no name of its own', () => {
  const said = utteranceOf({ remarks: ['the cause was a stuck expansion valve'] });
  const state = visitOf([REACH_IN, WARM, replaced, said]);

  it('stands as the cause, however late it is told', () => {
    expect(linesOf(state, 'findings')).toEqual(['Cause: a stuck expansion valve.']);
    expect(linesOf(state, 'after').join(' ')).not.toContain('stuck');
  });

  it('is told to both readers in place of what is only likely', () => {
    expect(linesOf(state, 'customer')[0]).toContain('The cause was "a stuck expansion valve".');
    expect(linesOf(state, 'office')[0]).toContain('Cause: "a stuck expansion valve".');
    expect(linesOf(state, 'customer').join(' ')).not.toContain('likely');
  });
});
