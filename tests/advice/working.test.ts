import { describe, expect, it } from 'vitest';
import { answer } from '../../core/advice/answer.ts';
import type { Question, Reading } from '../../core/language/utterance.ts';
import { verdictSaid } from '../../core/replies/verdict-said.ts';
import type { PlaceId } from '../../core/terms/names.ts';
import type { QuantityId } from '../../core/terms/quantities.ts';
import type { UnitId } from '../../core/units/units.ts';
import { read, readings, REACH_IN, unitIs, visitOf, WARM } from './visits.ts';

type At = readonly [QuantityId, PlaceId, number, UnitId];
const at = (...[quantity, place, value, unit]: At): Reading => ({
  ...read(quantity, value, unit),
  place,
});

const VISIT = visitOf([
  REACH_IN,
  WARM,
  readings(
    read('suctionLineTemp', 40, 'degF'),
    read('highCutoutPressure', 300, 'psi'),
    read('designAmbientTemp', 105, 'degF'),
    { ...read('headPressure', 280, 'psi'), event: 'tripped' },
    read('waterCapacity', 47.7, 'lb'),
    read('tareWeight', 28, 'lb'),
  ),
  unitIs({ fact: 'nameplate', item: 'lowSide', value: 140, unit: 'psi' }),
  unitIs({ fact: 'nameplate', item: 'charge', value: 38, unit: 'oz' }),
  readings(
    at('voltage', 'lineSide', 115, 'V'),
    at('voltage', 'highPressureSwitch', 115, 'V'),
    at('resistance', 'commonRun', 4, 'ohm'),
    at('resistance', 'commonStart', 11, 'ohm'),
    at('resistance', 'runStart', 15, 'ohm'),
  ),
]);

const ASKED: readonly Question[] = [
  { ask: 'target', about: 'headPressure' },
  { ask: 'compare', about: 'headPressure' },
  { ask: 'value', about: 'superheat' },
  { ask: 'saturation', value: 110, unit: 'degF', refrigerant: 'R-134a' },
  { ask: 'margin', about: 'highCutoutPressure' },
  { ask: 'hottestDay' },
  { ask: 'judge', about: 'highPressureSwitch' },
  { ask: 'judge', about: 'windings' },
  { ask: 'limit', about: 'testPressure' },
  { ask: 'limit', about: 'cylinderFill' },
  { ask: 'limit', about: 'charge' },
  { ask: 'switch', about: 'highPressureSwitch' },
  { ask: 'causes' },
];

describe('where a number comes from', () => {
  it.each(ASKED.map((question) => [JSON.stringify(question), question] as const))(
    '%s: its inputs and its source are told',
    (_name, question) => {
      const known = answer(question, VISIT, { lastAnswer: null });
      if (known.kind !== 'known') throw new Error(JSON.stringify(known));
      const working = answer({ ask: 'working' }, VISIT, { lastAnswer: known });
      const { text, spoken } = verdictSaid(working);
      expect(text).toMatch(/^From .+ Source: .+\.$/);
      expect(spoken).toMatch(/on the screen\.$/);
      expect(spoken).not.toContain('Source:');
    },
  );

  it('tells how long ago each was read, for the eye', () => {
    const superheat = answer({ ask: 'value', about: 'superheat' }, VISIT, { lastAnswer: null });
    const [last] = VISIT.history.slice(-1);
    if (superheat.kind !== 'known' || last === undefined) throw new Error('no superheat');
    const later = { ...VISIT, history: [...VISIT.history, { ...last, at: last.at + 12 * 60_000 }] };
    const { text, spoken } = verdictSaid(
      answer({ ask: 'working' }, later, { lastAnswer: superheat }),
    );
    const line = VISIT.readings.find(({ reading }) => reading.quantity === 'suctionLineTemp');
    const minutes = (last.at - (line?.at ?? 0)) / 60_000 + 12;
    expect(text).toContain(`suction line 40 °F, as read ${minutes} min ago`);
    expect(text).toContain('By SH =');
    expect(spoken).not.toContain('ago');
  });
});
