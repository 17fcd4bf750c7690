import { describe, expect, it } from 'vitest';
import { fromUtterance } from '../../core/visit/from-utterance.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { clockWords } from '../../core/replies/dates.ts';
import { REACH_IN, read, readings, visitOf, WARM } from '../advice/visits.ts';
import { createClockedStamp } from '../support/stamp.ts';
import { commanding, working } from '../support/utterances.ts';
import { rowsOf } from './note-lines.ts';

const TWICE = [
  readings(read('boxTemp', 41, 'degF'), read('headPressure', 160, 'psi')),
  readings(read('boxTemp', 37, 'degF'), read('suctionPressure', 14, 'psi')),
  commanding({ do: 'markAfter' }),
];
const WORKED = [REACH_IN, WARM, working('brush')];

describe('what was read again after the work', () => {
  it('stands once, the last first and what came before it behind', () => {
    const rows = rowsOf(visitOf([...WORKED, ...TWICE]), 'after');
    expect(rows['box temperature']).toEqual(['37 °F, earlier 41 °F']);
    expect(rows['head pressure']).toEqual(['160 psi']);
    expect(Object.keys(rows)).toHaveLength(3);
  });

  it('has its time where the device kept how its clock stood', () => {
    const { stamp } = createClockedStamp(500);
    const state = TWICE.reduce<VisitState>(
      (so, said) =>
        fromUtterance(said, so, (body) => ({
          ...stamp(body),
          at: 1_700_000_000_000,
          utcOffset: -300,
        })).state,
      visitOf(WORKED),
    );
    // 1 700 000 000 s is 22:13:20 UTC on November 14, 2023.
    expect(rowsOf(state, 'after')['box temperature']).toEqual(['37 °F at 5:13 pm, earlier 41 °F']);
  });

  it('tells noon and midnight as a clock of twelve hours does', () => {
    expect([0, 12 * 60, 13 * 60 + 5].map((minutes) => clockWords(minutes * 60_000, 0))).toEqual([
      '12:00 am',
      '12:00 pm',
      '1:05 pm',
    ]);
    expect(clockWords(0, -60)).toBe('11:00 pm');
  });

  it('tells superheat and subcooling where there was nothing before to change from', () => {
    const state = visitOf([
      REACH_IN,
      readings(read('boxTemp', 55, 'degF')),
      working('brush'),
      readings(
        read('headPressure', 146, 'psi'),
        read('suctionPressure', 15, 'psi'),
        read('suctionLineTemp', 24, 'degF'),
        read('liquidLineTemp', 102, 'degF'),
      ),
      commanding({ do: 'markAfter' }),
    ]);
    // R-134a: 15 psig is 15 °F, and 146 psig is 110 °F (pressure-temperature charts to the degree).
    expect(rowsOf(state, 'after')['superheat']?.[0]).toMatch(/^9\.\d °F/);
    expect(rowsOf(state, 'after')['subcooling']?.[0]).toMatch(/^7\.\d °F/);
    expect(rowsOf(state, 'change')['superheat']).toBeUndefined();
  });
});
