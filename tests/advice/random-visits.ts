import fc from 'fast-check';
import type { Command, Fact, Question, Reading, Utterance } from '../../core/language/utterance.ts';
import { JUDGED } from '../../core/terms/judged.ts';
import {
  CONDENSERS,
  EQUIPMENT,
  FINDING_STATES,
  HEAD_CONTROLS,
  METERING_DEVICES,
  PARTS,
  PLACES,
  WORK_KINDS,
} from '../../core/terms/names.ts';
import { DERIVED_QUANTITIES, QUANTITIES, quantityTerm } from '../../core/terms/quantities.ts';
import type { QuantityId } from '../../core/terms/quantities.ts';
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import { UNITS, type UnitId } from '../../core/units/units.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { utteranceOf } from '../support/utterances.ts';
import { visitOf } from './visits.ts';

/** The keys of a closed table, typed. */
function keysOf<Table extends object>(table: Table): (keyof Table & string)[] {
  const isKey = (key: string): key is keyof Table & string => key in table;
  return Object.keys(table).filter(isKey);
}

const quantity = fc.constantFrom(...keysOf(QUANTITIES));
const answerable = fc.constantFrom(...keysOf(QUANTITIES), ...keysOf(DERIVED_QUANTITIES));
const place = fc.option(fc.constantFrom(...keysOf(PLACES)), { nil: null, freq: 4 });
const part = fc.constantFrom(...keysOf(PARTS));
const refrigerant = fc.constantFrom(...REFRIGERANTS);
/** As instruments show them: to the tenth. */
const shown = fc.integer({ min: -600, max: 9000 }).map((tenths) => tenths / 10);
const words = fc.constantFrom('', 'said so', 'customer says <it> "hums" & trips');

const unitFor = (id: QuantityId): fc.Arbitrary<UnitId> =>
  fc.constantFrom(
    ...keysOf(UNITS).filter((unit) => UNITS[unit].dimension === quantityTerm(id).dimension),
  );

export const reading: fc.Arbitrary<Reading> = quantity.chain((id) =>
  fc
    .tuple(unitFor(id), shown, place, words, fc.integer({ min: 0, max: 11 }))
    .map(([unit, value, at, said, kind]): Reading => {
      const base = {
        quantity: id,
        unit,
        unitFrom: unitFromOf(unit),
        place: at,
        words: said,
      } as const;
      if (kind === 0) return { ...base, overlimit: true };
      if (kind === 1) return { ...base, low: value, high: value + 5 };
      if (kind === 2) return { ...base, value, hedged: true, afterMinutes: 5 };
      if (kind === 3) return { ...base, value, event: 'tripped' };
      if (kind === 4) return { ...base, value, when: 'arrival' };
      if (kind === 5) return { ...base, value, gasTemp: { value: 65, unit: 'degF' } };
      if (kind === 6) return { ...base, value, refrigerant: 'R-404A' };
      return { ...base, value };
    }),
);

/** Ounces that nobody called ounces were told as pounds and ounces, and are said back so. */
const unitFromOf = (unit: UnitId): 'said' | 'implied' => (unit === 'oz' ? 'said' : 'implied');

/** Readings that the targets are worked from, in a likely range, so that answers are not all needs. */
const likely: fc.Arbitrary<Reading> = fc
  .constantFrom(
    ['headPressure', 60, 400, 'psi'] as const,
    ['suctionPressure', -5, 90, 'psi'] as const,
    ['ambientTemp', 40, 115, 'degF'] as const,
    ['boxTemp', -20, 60, 'degF'] as const,
    ['setpointTemp', -10, 40, 'degF'] as const,
    ['suctionLineTemp', -20, 70, 'degF'] as const,
    ['liquidLineTemp', 50, 120, 'degF'] as const,
    ['highCutoutPressure', 250, 450, 'psi'] as const,
    ['lowCutoutPressure', 0, 30, 'psi'] as const,
    ['designAmbientTemp', 80, 120, 'degF'] as const,
    ['outdoorTemp', -10, 110, 'degF'] as const,
    ['heldHeadPressure', 80, 220, 'psi'] as const,
    ['fanCutinPressure', 150, 260, 'psi'] as const,
    ['fanCutoutPressure', 90, 200, 'psi'] as const,
    ['leavingWaterTemp', 70, 110, 'degF'] as const,
    ['dischargeLineTemp', 90, 260, 'degF'] as const,
    ['waterCapacity', 20, 120, 'lb'] as const,
    ['tareWeight', 15, 60, 'lb'] as const,
    ['cylinderWeight', 15, 150, 'lb'] as const,
    ['sinceLastCharge', 0, 500, 'day'] as const,
    ['ratedCapacitance', 5, 50, 'uF'] as const,
    ['refrigerantAdded', 1, 60, 'oz'] as const,
  )
  .chain(([id, min, max, unit]) =>
    fc.integer({ min, max }).map((value) => ({
      quantity: id,
      value,
      unit,
      unitFrom: unitFromOf(unit),
      place: null,
      words: '',
    })),
  );

/** Meter readings where the parts judged by them are. */
const metered: fc.Arbitrary<Reading> = fc
  .constantFrom(
    ['capacitance', 'runCapacitor', 'uF', 60] as const,
    ['current', 'runCapacitor', 'A', 6] as const,
    ['voltage', 'runCapacitor', 'V', 440] as const,
    ['resistance', 'commonRun', 'ohm', 8] as const,
    ['resistance', 'commonStart', 'ohm', 12] as const,
    ['resistance', 'runStart', 'ohm', 20] as const,
    ['insulationResistance', 'commonGround', 'Mohm', 90] as const,
    ['voltage', 'lineOneTwo', 'V', 260] as const,
    ['voltage', 'lineTwoThree', 'V', 260] as const,
    ['voltage', 'lineOneThree', 'V', 260] as const,
    ['current', 'compressor', 'A', 60] as const,
    ['resistance', 'defrostHeater', 'ohm', 40] as const,
    ['current', 'defrostHeater', 'A', 20] as const,
  )
  .chain(([id, at, unit, most]) =>
    fc.integer({ min: 0, max: most * 10 }).map((tenths): Reading => {
      const base = {
        quantity: id,
        unit,
        unitFrom: unitFromOf(unit),
        place: at,
        words: '',
      } as const;
      return tenths === 7 ? { ...base, overlimit: true } : { ...base, value: tenths / 10 };
    }),
  );

const fact: fc.Arbitrary<Fact> = fc.oneof(
  fc
    .constantFrom(...keysOf(CONDENSERS))
    .map((value): Fact => ({ fact: 'condenser', value, words: '' })),
  fc
    .constantFrom(...keysOf(HEAD_CONTROLS))
    .map((value): Fact => ({ fact: 'headControl', value, words: '' })),
  fc
    .constantFrom(
      ['voltage', 208, 'V'] as const,
      ['ratedLoadAmps', 6.2, 'A'] as const,
      ['highSide', 280, 'psi'] as const,
      ['lowSide', 140, 'psi'] as const,
    )
    .map(([item, value, unit]): Fact => ({ fact: 'nameplate', item, value, unit, words: '' })),

  refrigerant.map((value): Fact => ({ fact: 'refrigerant', value, words: '' })),
  fc
    .constantFrom(...keysOf(EQUIPMENT))
    .map((value): Fact => ({ fact: 'equipment', value, words: '' })),
  fc
    .constantFrom(...keysOf(METERING_DEVICES))
    .map((value): Fact => ({ fact: 'metering', value, words: '' })),
  fc.constant<Fact>({ fact: 'nameplate', item: 'charge', value: 38, unit: 'oz', words: '' }),
  fc.constant<Fact>({ fact: 'unit', value: 'reach-in by the <back> door', words: '' }),
);

const command: fc.Arbitrary<Command> = fc.oneof(
  fc
    .constantFrom('markBefore', 'markAfter', 'undo', 'yes', 'no', 'help', 'pause', 'finish')
    .map((does): Command => (does === 'undo' ? { do: 'undo' } : { do: does })),
  shown.map((value): Command => ({ do: 'amend', quantity: null, value })),
);

export const utterance: fc.Arbitrary<Utterance> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc
      .array(likely, { minLength: 1, maxLength: 5 })
      .map((all) => utteranceOf({ readings: all })),
  },
  { weight: 3, arbitrary: reading.map((one) => utteranceOf({ readings: [one] })) },
  {
    weight: 3,
    arbitrary: fc
      .array(metered, { minLength: 1, maxLength: 4 })
      .map((all) => utteranceOf({ readings: all })),
  },
  { weight: 4, arbitrary: fact.map((one) => utteranceOf({ facts: [one] })) },
  {
    weight: 2,
    arbitrary: fc
      .tuple(part, fc.constantFrom(...keysOf(FINDING_STATES)))
      .map(([of, state]) => utteranceOf({ findings: [{ part: of, state, words: '' }] })),
  },
  {
    weight: 2,
    arbitrary: fc
      .tuple(fc.constantFrom(...keysOf(WORK_KINDS)), fc.option(part, { nil: null }))
      .map(([did, of]) =>
        utteranceOf({
          work: [{ did, part: of, words: '' }],
          recommendations: [{ do: did, part: of, words: '' }],
        }),
      ),
  },
  { weight: 1, arbitrary: words.map((memo) => utteranceOf({ memos: [memo] })) },
  { weight: 2, arbitrary: command.map((one) => utteranceOf({ commands: [one] })) },
  { weight: 1, arbitrary: shown.map((value) => utteranceOf({ unclaimed: [String(value)] })) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(reading, fc.constantFrom('outOfRange', 'againstSibling', 'noUnit', 'hearsay'))
      .map(([one, why]) => utteranceOf({ doubts: [{ ...one, why }] })),
  },
);

const settings = fc.record({
  units: fc.constantFrom('us' as const, 'si' as const),
  altitudeM: fc.constantFrom(0, 0, 1500),
});

export const sentences = fc.array(utterance, { maxLength: 25 });

export const visit: fc.Arbitrary<VisitState> = fc
  .tuple(sentences, settings)
  .map(([said, how]) => visitOf(said, how));

export const question: fc.Arbitrary<Question> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc
      .constantFrom(...keysOf(JUDGED))
      .map((about): Question => ({ ask: 'judge', about })),
  },
  {
    weight: 2,
    arbitrary: fc
      .constantFrom('testPressure' as const, 'cylinderFill' as const, 'charge' as const)
      .map((about): Question => ({ ask: 'limit', about })),
  },
  { weight: 2, arbitrary: fc.constant<Question>({ ask: 'hottestDay' }) },
  {
    weight: 6,
    arbitrary: fc
      .tuple(
        fc.constantFrom('target' as const, 'value' as const, 'compare' as const),
        fc.option(answerable, { nil: null }),
      )
      .map(([ask, about]) => ({ ask, about })),
  },
  {
    weight: 2,
    arbitrary: fc
      .tuple(
        shown,
        fc.constantFrom('degF', 'degC', 'psi', 'bar', 'psia', 'inHg'),
        fc.option(refrigerant, { nil: null }),
      )
      .map(([value, unit, of]): Question => ({ ask: 'saturation', value, unit, refrigerant: of })),
  },
  {
    weight: 1,
    arbitrary: fc
      .option(answerable, { nil: null })
      .map((about): Question => ({ ask: 'margin', about })),
  },
  {
    weight: 2,
    arbitrary: fc
      .constantFrom(
        'causes',
        'nextCheck',
        'before',
        'beforeAfter',
        'readback',
        'note',
        'working',
        'timeLeft',
        'history',
      )
      .map((ask): Question => ({ ask })),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom<Question[]>(
      { ask: 'switch', about: 'highPressureSwitch' },
      { ask: 'limit', about: 'cylinderFill' },
      { ask: 'safety', about: 'brazing' },
      { ask: 'eta', about: 'boxTemp' },
      { ask: 'trend', about: null },
    ),
  },
);
