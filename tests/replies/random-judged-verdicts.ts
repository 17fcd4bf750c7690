import fc from 'fast-check';
import type { Known } from '../../core/advice/verdict.ts';
import type { UnitId } from '../../core/units/units.ts';

const working = { kind: 'known' as const, formula: null, inputs: [], source: null, cautions: [] };

const amount = (unit: UnitId) =>
  fc.double({ min: 0.5, max: 600, noNaN: true }).map((value) => ({ value, unit }));

/** Figures whose numbers differ from one another, as read: exchanging two of them would be told. */
const figures = (unit: UnitId, limitUnit: UnitId = unit) =>
  fc
    .record({ value: amount(unit), limit: amount(limitUnit), read: amount(limitUnit) })
    .map(({ value, limit, read }) => ({ value: value.value, unit, limit, read }));

const judgedOf = <const Finding extends string>(
  findings: readonly Finding[],
): fc.Arbitrary<Finding> => fc.constantFrom(...findings);

const heater = fc.constantFrom('expected', 'asExpected', 'off', 'noCurrent');
const control = fc.constantFrom('whereSet', 'early', 'late');
const answer = fc.constant('judged' as const);

const ELECTRICAL = [
  fc.tuple(judgedOf(['low', 'within', 'high']), figures('uF')).map(([finding, of]) => ({
    about: 'runCapacitor' as const,
    finding,
    ...of,
  })),
  fc.tuple(judgedOf(['low', 'within', 'high']), figures('uF')).map(([finding, of]) => ({
    about: 'startCapacitor' as const,
    finding,
    ...of,
  })),
  fc
    .tuple(
      judgedOf([
        'addsUp',
        'doesNotAddUp',
        'overloadOpen',
        'startOpen',
        'runOpen',
        'open',
        'contradiction',
      ]),
      figures('ohm'),
    )
    .map(([finding, of]) => ({ about: 'windings' as const, finding, ...of })),
  fc
    .tuple(judgedOf(['aboveFloor', 'belowFloor']), figures('Mohm'), fc.boolean())
    .map(([finding, of, isOver]) => ({
      about: 'insulation' as const,
      finding,
      ...of,
      value: isOver && finding === 'aboveFloor' ? null : of.value,
    })),
  fc
    .tuple(judgedOf(['underRating', 'overRating', 'lockedRotor']), figures('A'))
    .map(([finding, of]) => ({ about: 'compressorCurrent' as const, finding, ...of })),
  fc
    .tuple(judgedOf(['low', 'within', 'high']), figures('V'))
    .map(([finding, of]) => ({ about: 'supplyVoltage' as const, finding, ...of })),
  fc
    .tuple(judgedOf(['within', 'aboveLimit', 'stop']), figures('percent'))
    .map(([finding, of]) => ({ about: 'voltageImbalance' as const, finding, ...of })),
  fc
    .tuple(judgedOf(['within', 'aboveLimit']), figures('percent'))
    .map(([finding, of]) => ({ about: 'currentImbalance' as const, finding, ...of })),
] as const;

const REST = [
  fc
    .tuple(judgedOf(['none', 'suspected', 'present', 'testFailed']), figures('dF'))
    .map(([finding, of]) => ({ about: 'nonCondensables' as const, finding, ...of })),
  fc
    .tuple(judgedOf(['within', 'above', 'thawed']), figures('degF'))
    .map(([finding, of]) => ({ about: 'food' as const, finding, ...of })),
  fc
    .tuple(judgedOf(['holds', 'leaks', 'rises']), figures('psi'))
    .map(([finding, of]) => ({ about: 'pressureTest' as const, finding, ...of })),
  fc
    .tuple(control, figures('psi'))
    .map(([finding, of]) => ({ about: 'highPressureSwitch' as const, finding, ...of })),
  fc
    .tuple(control, figures('psi'))
    .map(([finding, of]) => ({ about: 'lowPressureSwitch' as const, finding, ...of })),
  fc
    .tuple(judgedOf(['withinLimit', 'aboveLimit', 'floodBack']), figures('degF'))
    .map(([finding, of]) => ({ about: 'dischargeLine' as const, finding, ...of })),
  fc
    .tuple(judgedOf(['within', 'overThreshold', 'notCovered']), figures('percent'))
    .map(([finding, of]) => ({ about: 'leakRate' as const, finding, ...of })),
  fc
    .tuple(heater, figures('A'))
    .map(([finding, of]) => ({ about: 'defrostHeater' as const, finding, ...of })),
  fc
    .tuple(judgedOf(['byRating']), figures('ohm', 'A'))
    .map(([finding, of]) => ({ about: 'defrostHeater' as const, finding, ...of })),
  fc
    .tuple(heater, figures('A'))
    .map(([finding, of]) => ({ about: 'doorHeater' as const, finding, ...of })),
  fc
    .tuple(judgedOf(['byRating']), figures('ohm', 'A'))
    .map(([finding, of]) => ({ about: 'doorHeater' as const, finding, ...of })),
] as const;

/** Everything that is judged, in each way in which it can be found. */
export const judgedAnswer: fc.Arbitrary<Known> = fc
  .tuple(answer, fc.oneof(...ELECTRICAL, ...REST))
  .map(([judged, of]): Known => ({ ...working, answer: judged, ...of }));
