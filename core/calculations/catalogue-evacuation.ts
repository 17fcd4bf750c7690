/** Catalogue entries of pressure tests, vacuum, moisture and recovery before opening. */
import { absolutePressure, duration } from '../units/quantity-values.ts';
import { fromBase } from '../units/convert.ts';
import { toGaugeReading } from '../units/branding.ts';
import { STANDARD_ATMOSPHERE } from '../units/atmosphere.ts';
import * as values from '../units/quantity-values.ts';
import { answer, both, GAUGE, refrigerantOf, TEMPERATURE } from './catalogue-entry.ts';
import { temperatureIfGiven, temperatureOf } from './catalogue-entry.ts';
import type { Entry } from './catalogue-entry.ts';
import { atmosphereOf, baseOf, choiceOf, needBase } from './catalogue-inputs.ts';
import { needChoice, needPressure, needSeries } from './catalogue-inputs.ts';
import type { InputValues } from './catalogue-inputs.ts';
import {
  ALTITUDE,
  choice,
  counted,
  mass,
  optional,
  pressure,
  pressureDrop,
} from './catalogue-keys.ts';
import { REFRIGERANT, series, temperature, temperatureDifference } from './catalogue-keys.ts';
import { nitrogenPressure, nitrogenPressureFormula } from './nitrogen-pressure.ts';
import { nitrogenTest, nitrogenTestFormula } from './nitrogen-test.ts';
import { PRESSURE_CLASSES, pressureClass, pressureClassFormula } from './recovery-level.ts';
import { recoveryLevel, recoveryLevelFormula } from './recovery-level.ts';
import { smallApplianceRecovery, smallApplianceRecoveryFormula } from './recovery-level.ts';
import { vacuumDecay, vacuumDecayFormula } from './vacuum-decay.ts';
import { VACUUM_DECAY } from './vacuum-defaults.ts';
import {
  dryingVacuum,
  dryingVacuumFormula,
  vacuumReading,
  vacuumReadingFormula,
} from './vacuum.ts';
import { waterBoilingPoint, waterBoilingPointFormula } from './water-vapour.ts';
import { isIce, waterVapourPressure, waterVapourPressureFormula } from './water-vapour.ts';

const MICRON = both('micron');
const MACHINES = ['since1993Nov15', 'before1993Nov15'] as const;
const WATER = (at: values.Temperature) => ({ phase: isIce(at) ? 'ice' : 'water' });

const IDEAL = 'the ideal gas law, as trade articles work it, gives the value under "ideal"';

/** The instruments' errors, where they were given. */
function instrumentsOf(inputs: InputValues) {
  const gauge = baseOf(inputs, 'gaugeError');
  const thermometer = baseOf(inputs, 'temperatureError');
  return {
    ...(gauge === undefined ? {} : { gaugeError: values.pressureDifference(gauge) }),
    ...(thermometer === undefined
      ? {}
      : { temperatureError: values.temperatureDifference(thermometer) }),
  };
}

const TESTS: readonly Entry[] = [
  {
    formula: nitrogenPressureFormula,
    keys: [pressure('pressure'), temperature('from'), temperature('to'), ALTITUDE],
    units: GAUGE,
    run: (inputs) => {
      const found = nitrogenPressure({
        pressure: needPressure(inputs, 'pressure'),
        from: temperatureOf(inputs, 'from'),
        to: temperatureOf(inputs, 'to'),
      });
      const gauge = (p: values.AbsolutePressure): number => toGaugeReading(p, atmosphereOf(inputs));
      return answer(found, ({ pressure: real, ideal }) => ({
        base: gauge(real),
        also: { ideal: gauge(ideal) },
        otherSource: IDEAL,
      }));
    },
  },
  {
    formula: nitrogenTestFormula,
    keys: [
      ...[pressure('pressure'), temperature('from'), temperature('to'), pressure('found')],
      ...[optional(pressure('rating')), optional(pressureDrop('gaugeError'))],
      ...[optional(temperatureDifference('temperatureError')), ALTITUDE],
    ],
    units: GAUGE,
    run: (inputs) => {
      const found = nitrogenTest({
        pressure: needPressure(inputs, 'pressure'),
        from: temperatureOf(inputs, 'from'),
        to: temperatureOf(inputs, 'to'),
        found: needPressure(inputs, 'found'),
        ...(inputs.has('rating') ? { rating: needPressure(inputs, 'rating') } : {}),
        instruments: instrumentsOf(inputs),
      });
      return answer(found, ({ change, expected, uncertainty, verdict }) => ({
        base: change,
        also: { expected: toGaugeReading(expected, atmosphereOf(inputs)), uncertainty },
        findings: { verdict },
      }));
    },
  },
];

const VACUUM: readonly Entry[] = [
  {
    formula: vacuumReadingFormula,
    keys: [pressure('pressure'), ALTITUDE],
    units: MICRON,
    run: (inputs) => {
      const found = vacuumReading({
        pressure: needPressure(inputs, 'pressure'),
        atmosphere: atmosphereOf(inputs),
      });
      return answer(found, ({ absolute, inches, dial }) => ({
        base: absolute,
        findings: { dial },
        beside: {
          dial: { value: inches === 0 ? 0 : -inches, unit: 'inHg' },
          absolute: fromBase(absolute, 'psia'),
        },
      }));
    },
  },
  {
    formula: waterVapourPressureFormula,
    keys: [temperature('temperature')],
    units: MICRON,
    run: (inputs) => {
      const at = temperatureOf(inputs, 'temperature');
      return answer(waterVapourPressure(at), (base) => ({ base, findings: WATER(at) }));
    },
  },
  {
    formula: waterBoilingPointFormula,
    keys: [pressure('pressure'), ALTITUDE],
    units: TEMPERATURE,
    run: (inputs) =>
      answer(waterBoilingPoint(needPressure(inputs, 'pressure')), (base) => ({
        base,
        findings: WATER(base),
      })),
  },
  {
    formula: dryingVacuumFormula,
    keys: [pressure('pressure'), temperature('coldestTemp'), ALTITUDE],
    units: MICRON,
    run: (inputs) => {
      const vacuum = needPressure(inputs, 'pressure');
      const found = dryingVacuum({ vacuum, coldest: temperatureOf(inputs, 'coldestTemp') });
      return answer(found, ({ needed, moisture }) => ({
        base: needed,
        also: { vacuum },
        findings: { moisture },
      }));
    },
  },
  {
    formula: vacuumDecayFormula,
    keys: [
      series(
        'readings',
        {
          at: { dimension: 'duration', bare: 'min' },
          value: { dimension: 'absolutePressure', bare: 'micron' },
        },
        '0min:350micron,5min:600micron,10min:840micron',
      ),
      optional(temperature('coldestTemp')),
      optional(counted('tightUpTo', 'absolutePressure', 'micron')),
      optional(counted('atLeast', 'duration', 'min')),
    ],
    units: MICRON,
    run: (inputs) => {
      const readings = needSeries(inputs, 'readings').map(({ at, value }) => ({
        minutes: at,
        pressure: absolutePressure(value),
      }));
      const coldest = temperatureIfGiven(inputs, 'coldestTemp');
      const [limit, atLeast] = [baseOf(inputs, 'tightUpTo'), baseOf(inputs, 'atLeast')];
      const found = vacuumDecay({
        readings,
        ...(coldest === undefined ? {} : { coldest }),
        settings: {
          ...(limit === undefined ? {} : { tightUpTo: absolutePressure(limit) }),
          ...(atLeast === undefined ? {} : { atLeast: duration(atLeast) }),
        },
      });
      return answer(found, ({ rise, verdict, minutes }) => ({
        base: rise,
        findings: { verdict },
        beside: { over: { value: minutes, unit: 'min' } },
        source: VACUUM_DECAY.source,
        otherSource:
          'hvacspecialists.info calls a steady 500 to 1,000 micron tight and dry, and 1,000 to 2,000 wet',
      }));
    },
  },
];

const RECOVERY: readonly Entry[] = [
  {
    formula: pressureClassFormula,
    keys: [REFRIGERANT],
    units: { us: 'psia', si: 'bara' },
    run: (inputs) =>
      answer(pressureClass(refrigerantOf(inputs)), ({ pressure: base, pressureClass: found }) => ({
        base,
        findings: { pressureClass: found },
      })),
  },
  {
    formula: recoveryLevelFormula,
    keys: [
      choice('pressureClass', PRESSURE_CLASSES),
      mass('charge'),
      choice('machine', MACHINES),
      optional(choice('repair', ['major', 'minorNoEvacuationAfter'])),
    ],
    units: both('inHg'),
    run: (inputs) => {
      const found = recoveryLevel({
        pressureClass: needChoice(inputs, 'pressureClass', PRESSURE_CLASSES),
        charge: values.mass(needBase(inputs, 'charge')),
        machine: needChoice(inputs, 'machine', MACHINES),
        minorRepair: choiceOf(inputs, 'repair', ['minorNoEvacuationAfter']) !== undefined,
      });
      return answer(found, ({ level, otherSource }) => ({
        base: toGaugeReading(level, STANDARD_ATMOSPHERE),
        beside: { absolute: fromBase(level, 'mmHg') },
        ...(otherSource === null ? {} : { otherSource }),
      }));
    },
  },
  {
    formula: smallApplianceRecoveryFormula,
    keys: [mass('charge'), choice('compressor', ['runs', 'doesNotRun'])],
    units: both('percent'),
    run: (inputs) => {
      const found = smallApplianceRecovery({
        charge: values.mass(needBase(inputs, 'charge')),
        compressorRuns: choiceOf(inputs, 'compressor', ['runs']) !== undefined,
      });
      return answer(found, ({ share, orLevel }) => ({
        base: share,
        beside: { orReach: fromBase(toGaugeReading(orLevel, STANDARD_ATMOSPHERE), 'inHg') },
      }));
    },
  },
];

export const EVACUATION_ENTRIES: readonly Entry[] = [...TESTS, ...VACUUM, ...RECOVERY];
