/** Catalogue entries of recovery, charging, leak rates and what they come to in law. */
import { FLUIDS } from '../fluids/fluids.ts';
import { fromBase } from '../units/convert.ts';
import * as values from '../units/quantity-values.ts';
import {
  answer,
  both,
  plain,
  refrigerantOf,
  temperatureIfGiven,
  WEIGHT,
} from './catalogue-entry.ts';
import type { Entry } from './catalogue-entry.ts';
import { baseOf, choiceOf, needBase, needChoice, needSeries } from './catalogue-inputs.ts';
import type { InputValues } from './catalogue-inputs.ts';
import { choice, counted, length, mass, optional, REFRIGERANT, series } from './catalogue-keys.ts';
import { temperature, volume } from './catalogue-keys.ts';
import { chargeByWeight, chargeByWeightFormula, hoseContentFormula } from './charge-weights.ts';
import { lineContent, lineContentFormula, lineSetAdjustment } from './charge-weights.ts';
import { lineSetAdjustmentFormula, receiverCapacity } from './charge-weights.ts';
import { receiverCapacityFormula } from './charge-weights.ts';
import { cylinderFill, cylinderFillFormula, cylinderRemaining } from './cylinder-fill.ts';
import {
  cylinderRemainingFormula,
  FILL_SHARE,
  HOT_CYLINDER,
  liquidShare,
} from './cylinder-fill.ts';
import { liquidShareFormula, specificGravity, specificGravityFormula } from './cylinder-fill.ts';
import type { Formula } from './formula.ts';
import { leakRate, leakRateFormula, rollingLeakRate, rollingLeakRateFormula } from './leak-rate.ts';
import { carbonDioxideEquivalentFormula, equivalentOf, LEAK_USES } from './leak-rules.ts';
import { leakCheckInterval, leakCheckIntervalFormula } from './leak-rules.ts';
import { leakThreshold, leakThresholdFormula, REPAIR_DEADLINES } from './leak-rules.ts';

const SMALL_WEIGHT = { us: 'oz', si: 'g' } as const;
const massOf = (inputs: InputValues, key: string): values.Mass =>
  values.mass(needBase(inputs, key));
const lengthOf = (inputs: InputValues, key: string): values.Length =>
  values.length(needBase(inputs, key));

const CYLINDER_KEYS = [
  REFRIGERANT,
  mass('waterCapacity'),
  mass('tare'),
  optional(counted('specificGravity', 'ratio', 'ratio')),
];

function cylinderOf(inputs: InputValues) {
  const given = baseOf(inputs, 'specificGravity');
  return {
    refrigerant: refrigerantOf(inputs),
    waterCapacity: massOf(inputs, 'waterCapacity'),
    tare: massOf(inputs, 'tare'),
    ...(given === undefined ? {} : { specificGravity: values.ratio(given) }),
  };
}

const CYLINDERS: readonly Entry[] = [
  {
    formula: specificGravityFormula,
    keys: [REFRIGERANT],
    units: both('ratio'),
    run: (inputs) =>
      answer(specificGravity(refrigerantOf(inputs)), ({ value, otherSource }) => ({
        base: value,
        ...(otherSource === null ? {} : { otherSource }),
      })),
  },
  {
    formula: cylinderFillFormula,
    keys: CYLINDER_KEYS,
    units: WEIGHT,
    run: (inputs) =>
      answer(cylinderFill(cylinderOf(inputs)), ({ net, gross, ruledBy }) => ({
        base: gross,
        also: { net },
        findings: { ruledBy },
      })),
  },
  {
    formula: cylinderRemainingFormula,
    keys: [...CYLINDER_KEYS, mass('present')],
    units: WEIGHT,
    run: (inputs) =>
      answer(
        cylinderRemaining({ ...cylinderOf(inputs), present: massOf(inputs, 'present') }),
        (left) => ({ base: left, findings: { state: left < 0 ? 'overfilled' : 'roomLeft' } }),
      ),
  },
  {
    formula: liquidShareFormula,
    keys: [
      REFRIGERANT,
      optional(counted('filled', 'ratio', 'percent')),
      optional(temperature('temperature')),
    ],
    units: both('percent'),
    run: (inputs) =>
      answer(
        liquidShare({
          refrigerant: refrigerantOf(inputs),
          filled: values.ratio(baseOf(inputs, 'filled') ?? FILL_SHARE),
          at: temperatureIfGiven(inputs, 'temperature') ?? HOT_CYLINDER,
        }),
        (share) => ({
          base: share,
          findings: { state: share < 1 ? 'vapourSpaceLeft' : 'liquidFull' },
        }),
      ),
  },
];

/** A hose and a liquid line are one sum under two names. */
const lineEntry = (formula: Formula, units: Entry['units']): Entry => ({
  formula,
  keys: [REFRIGERANT, length('length'), length('bore'), optional(temperature('temperature'))],
  units,
  run: (inputs) => {
    const at = temperatureIfGiven(inputs, 'temperature');
    return plain(
      lineContent({
        refrigerant: refrigerantOf(inputs),
        length: lengthOf(inputs, 'length'),
        bore: lengthOf(inputs, 'bore'),
        ...(at === undefined ? {} : { at }),
      }),
    );
  },
});

const CHARGING: readonly Entry[] = [
  {
    formula: receiverCapacityFormula,
    keys: [
      ...[REFRIGERANT, volume('volume'), optional(temperature('temperature'))],
      optional(counted('share', 'ratio', 'percent')),
    ],
    units: WEIGHT,
    run: (inputs) => {
      const [at, share] = [temperatureIfGiven(inputs, 'temperature'), baseOf(inputs, 'share')];
      return plain(
        receiverCapacity({
          refrigerant: refrigerantOf(inputs),
          room: values.volume(needBase(inputs, 'volume')),
          ...(at === undefined ? {} : { at }),
          ...(share === undefined ? {} : { share: values.ratio(share) }),
        }),
      );
    },
  },
  lineEntry(lineContentFormula, WEIGHT),
  lineEntry(hoseContentFormula, both('g')),
  {
    formula: lineSetAdjustmentFormula,
    keys: [length('length'), length('chargedFor'), mass('perFoot')],
    units: SMALL_WEIGHT,
    run: (inputs) =>
      plain(
        lineSetAdjustment({
          length: lengthOf(inputs, 'length'),
          chargedFor: lengthOf(inputs, 'chargedFor'),
          perMetre: values.mass(needBase(inputs, 'perFoot') / FOOT),
        }),
      ),
  },
  {
    formula: chargeByWeightFormula,
    keys: [mass('nameplate'), mass('step'), optional(counted('tolerance', 'ratio', 'percent'))],
    units: both('percent'),
    run: (inputs) => {
      const tolerance = baseOf(inputs, 'tolerance');
      const found = chargeByWeight({
        nameplate: massOf(inputs, 'nameplate'),
        step: massOf(inputs, 'step'),
        ...(tolerance === undefined ? {} : { tolerance: values.ratio(tolerance) }),
      });
      return answer(found, ({ resolution, low, high, scale }) => ({
        base: resolution,
        findings: { scale },
        beside: { low: fromBase(low, 'g'), high: fromBase(high, 'g') },
      }));
    },
  },
];

const FOOT = 0.3048;
const MINUTES_A_DAY = 1440;

const LEAKS: readonly Entry[] = [
  {
    formula: leakRateFormula,
    keys: [mass('added'), mass('charge'), counted('days', 'duration', 'day')],
    units: both('percent'),
    run: (inputs) =>
      plain(
        leakRate({
          added: massOf(inputs, 'added'),
          charge: massOf(inputs, 'charge'),
          since: values.duration(needBase(inputs, 'days')),
        }),
      ),
  },
  {
    formula: rollingLeakRateFormula,
    keys: [
      series(
        'additions',
        { at: { dimension: 'duration', bare: 'day' }, value: { dimension: 'mass' } },
        '200day:12lb,10day:9lb',
      ),
      mass('charge'),
      optional(counted('verifiedDaysAgo', 'duration', 'day')),
    ],
    units: both('percent'),
    run: (inputs) => {
      const verified = baseOf(inputs, 'verifiedDaysAgo');
      return plain(
        rollingLeakRate({
          additions: needSeries(inputs, 'additions').map(({ at, value }) => ({
            daysAgo: at / MINUTES_A_DAY,
            added: values.mass(value),
          })),
          charge: massOf(inputs, 'charge'),
          ...(verified === undefined ? {} : { verifiedDaysAgo: verified / MINUTES_A_DAY }),
        }),
      );
    },
  },
  {
    formula: leakThresholdFormula,
    keys: [
      REFRIGERANT,
      mass('charge'),
      choice('use', LEAK_USES),
      counted('rate', 'ratio', 'percent'),
    ],
    units: both('percent'),
    run: (inputs) => {
      const found = leakThreshold({
        refrigerant: refrigerantOf(inputs),
        charge: massOf(inputs, 'charge'),
        use: needChoice(inputs, 'use', LEAK_USES),
        rate: values.ratio(needBase(inputs, 'rate')),
      });
      return answer(found, ({ threshold, verdict, rule, repairDays, source }) => ({
        base: threshold,
        findings: { verdict, rule },
        ...(repairDays === null
          ? {}
          : {
              beside: {
                repairWithin: { value: repairDays, unit: 'day' },
                followUpWithin: { value: REPAIR_DEADLINES.followUpAfterInitial.value, unit: 'day' },
              },
            }),
        source,
        otherSource: 'old EPA pages still show 35 and 15 %, which ended in 2019',
      }));
    },
  },
  {
    formula: carbonDioxideEquivalentFormula,
    keys: [REFRIGERANT, mass('charge')],
    units: both('tCO2e'),
    run: (inputs) => {
      const refrigerant = refrigerantOf(inputs);
      const { gwp } = FLUIDS[refrigerant];
      return answer(equivalentOf({ refrigerant, charge: massOf(inputs, 'charge') }), (base) => ({
        base,
        source: `GWP ${gwp.value}: ${gwp.source}`,
      }));
    },
  },
  {
    formula: leakCheckIntervalFormula,
    keys: [
      ...[REFRIGERANT, mass('charge'), optional(choice('sealed', ['hermetic', 'no']))],
      optional(choice('detection', ['fixed', 'none'])),
    ],
    units: both('tCO2e'),
    run: (inputs) => {
      const refrigerant = refrigerantOf(inputs);
      const found = leakCheckInterval({
        refrigerant,
        charge: massOf(inputs, 'charge'),
        hermetic: choiceOf(inputs, 'sealed', ['hermetic']) !== undefined,
        detection: choiceOf(inputs, 'detection', ['fixed']) !== undefined,
      });
      return answer(found, ({ equivalent, months }) => ({
        base: equivalent,
        findings: { interval: months === null ? 'none' : `every${months}Months` },
        source: `GWP: ${FLUIDS[refrigerant].gwp.source}`,
        otherSource:
          'the printed kilogram limits are rounded, some of them upward: the tonnes decide',
      }));
    },
  },
];

export const REFRIGERANT_ENTRIES: readonly Entry[] = [...CYLINDERS, ...CHARGING, ...LEAKS];
