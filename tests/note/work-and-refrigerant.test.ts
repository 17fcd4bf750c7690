import { describe, expect, it } from 'vitest';
import type { Utterance } from '../../core/language/utterance.ts';
import type { PartId, WorkKindId } from '../../core/terms/names.ts';
import { REACH_IN, read, readings, visitOf, WARM } from '../advice/visits.ts';
import { linesOf } from './note-lines.ts';
import { utteranceOf } from '../support/utterances.ts';

const did = (kind: WorkKindId, part: PartId | null): Utterance =>
  utteranceOf({ work: [{ did: kind, part, words: '' }] });

describe('the work of a note', () => {
  it('says work on a part once, and what was done over again each time', () => {
    const state = visitOf([
      REACH_IN,
      WARM,
      did('defrost', null),
      did('replace', 'defrostHeater'),
      did('defrost', null),
      did('reset', 'overload'),
      did('evacuate', null),
      did('reset', 'overload'),
    ]);
    expect(linesOf(state, 'work')).toEqual([
      'Defrosted.',
      'Defrost heater replaced.',
      'Overload reset.',
      'Evacuated.',
      'Overload reset.',
    ]);
  });

  it('holds what hands made and no rule names, in its words, and nothing that was only looked at', () => {
    const state = visitOf([
      REACH_IN,
      WARM,
      utteranceOf({ remarks: ['straightened the fins with a comb'] }),
      did('replace', 'filterDrier'),
      utteranceOf({ remarks: ['zip tied the cap tube off the suction line'] }),
      utteranceOf({ remarks: ['checked the door and it closes'] }),
      utteranceOf({ remarks: ['cut out on the high pressure switch twice'] }),
    ]);
    expect(linesOf(state, 'work')).toEqual([
      'Filter drier replaced.',
      'Straightened the fins with a comb.',
      'Zip tied the cap tube off the suction line.',
    ]);
    const told = [...linesOf(state, 'findings'), ...linesOf(state, 'after')];
    expect(told).toContain('Checked the door and it closes.');
    expect(told).toContain('Cut out on the high pressure switch twice.');
  });

  it('counts valves that were turned for the job as no work on the unit', () => {
    const state = visitOf([
      REACH_IN,
      WARM,
      did('isolate', 'kingValve'),
      did('replace', 'filterDrier'),
      did('open', 'kingValve'),
    ]);
    expect(linesOf(state, 'work')).toEqual(['Filter drier replaced.']);
    expect(linesOf(state, 'customer').join(' ')).not.toContain('the valve at the refrigerant tank');
    const turned = visitOf([REACH_IN, WARM, did('open', 'kingValve')]);
    expect(linesOf(turned, 'customer').join(' ')).toContain(
      'No repair was recorded on this visit.',
    );
  });
});

describe('the account of refrigerant', () => {
  const none = (...of: readonly ('refrigerantAdded' | 'refrigerantRecovered')[]): Utterance =>
    readings(...of.map((quantity) => read(quantity, 0, 'lb')));

  it('says that none was moved where that was said, and sums up nothing', () => {
    const state = visitOf([REACH_IN, none('refrigerantAdded', 'refrigerantRecovered')]);
    expect(linesOf(state, 'refrigerant')).toEqual(['None added, none recovered.']);
    expect(linesOf(state, 'office').join(' ')).toContain(
      'No refrigerant was added and none was recovered.',
    );
  });

  it('says of the way that nobody spoke of only that none was recorded', () => {
    const state = visitOf([REACH_IN, none('refrigerantAdded')]);
    expect(linesOf(state, 'refrigerant')).toEqual(['None added, none recorded as recovered.']);
    expect(linesOf(state, 'office').join(' ')).toContain('No refrigerant was added.');
  });

  it('tells beside what went in that none came out', () => {
    const added = readings(read('refrigerantAdded', 6, 'oz'));
    const state = visitOf([REACH_IN, added, none('refrigerantRecovered')]);
    expect(linesOf(state, 'refrigerant')).toEqual(['Added 6 oz of R-134a.', 'None recovered.']);
  });

  it('still says that none was recorded where nobody spoke of it', () => {
    expect(linesOf(visitOf([REACH_IN, WARM]), 'refrigerant')).toEqual([
      'No refrigerant was recorded in or out.',
    ]);
  });
});
