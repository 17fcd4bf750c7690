/** Catalogue entries of heads, risers and readings at rest. */
import * as values from '../units/quantity-values.ts';
import { DIFFERENCE, GAUGE, TEMPERATURE, answer, both, plain } from './catalogue-entry.ts';
import { refrigerantOf, temperatureIfGiven, temperatureOf } from './catalogue-entry.ts';
import type { Entry } from './catalogue-entry.ts';
import { baseOf, needBase, needPressure, needSeries, differenceOf } from './catalogue-inputs.ts';
import {
  ALTITUDE,
  REFRIGERANT,
  length,
  optional,
  pressure,
  pressureDrop,
} from './catalogue-keys.ts';
import { series, temperature, temperatureDifference } from './catalogue-keys.ts';
import { orDefault, sourced } from './catalogue-sourced.ts';
import {
  FAN_CYCLE,
  NON_CONDENSABLE_CONFLICT,
  NON_CONDENSABLE_EXCESS,
  STEADY,
  WATER_APPROACH,
} from './control-defaults.ts';
import { DISCHARGE_LINE_LIMIT, FLOOD_BACK_MARGIN } from './discharge-line.ts';
import { dischargeLine, dischargeLineFormula } from './discharge-line.ts';
import { fanCycle, fanCycleFormula, floodedShare, floodedShareFormula } from './head-control.ts';
import { heldHead, heldHeadFormula } from './head-control.ts';
import { riserLoss, riserLossFormula } from './liquid-riser.ts';
import { riserSubcooling, riserSubcoolingFormula } from './liquid-riser.ts';
import { nonCondensables, nonCondensablesFormula } from './non-condensables.ts';
import { heldWithin, heldWithinFormula } from './held-within.ts';
import { steadyState, steadyStateFormula } from './steady-state.ts';
import { waterCondensingTarget, waterCondensingTargetFormula } from './water-condenser.ts';

export const HEAD_ENTRIES: readonly Entry[] = [
  {
    formula: fanCycleFormula,
    keys: [REFRIGERANT, pressure('on'), pressure('off'), ALTITUDE],
    units: TEMPERATURE,
    run: (inputs) => {
      const found = fanCycle({
        refrigerant: refrigerantOf(inputs),
        on: needPressure(inputs, 'on'),
        off: needPressure(inputs, 'off'),
      });
      return answer(found, ({ on, off, onAgainst, offAgainst }) => ({
        base: on,
        also: { off },
        findings: { on: onAgainst, off: offAgainst },
        ...sourced(FAN_CYCLE),
      }));
    },
  },
  {
    formula: heldHeadFormula,
    keys: [
      REFRIGERANT,
      pressure('setting'),
      temperature('ambientTemp'),
      temperatureDifference('split'),
      ALTITUDE,
    ],
    units: TEMPERATURE,
    run: (inputs) => {
      const found = heldHead({
        refrigerant: refrigerantOf(inputs),
        setting: needPressure(inputs, 'setting'),
        ambient: temperatureOf(inputs, 'ambientTemp'),
        split: differenceOf(inputs, 'split'),
      });
      return answer(found, ({ expected, ruledBy }) => ({ base: expected, findings: { ruledBy } }));
    },
  },
  {
    formula: floodedShareFormula,
    keys: [temperature('heldTemp'), temperature('ambientTemp'), temperatureDifference('split')],
    units: both('percent'),
    run: (inputs) =>
      plain(
        floodedShare({
          held: temperatureOf(inputs, 'heldTemp'),
          ambient: temperatureOf(inputs, 'ambientTemp'),
          split: differenceOf(inputs, 'split'),
        }),
      ),
  },
  {
    formula: waterCondensingTargetFormula,
    keys: [temperature('leavingWaterTemp'), optional(temperatureDifference('approach'))],
    units: TEMPERATURE,
    run: (inputs) => {
      const given = baseOf(inputs, 'approach');
      const found = waterCondensingTarget({
        leavingWater: temperatureOf(inputs, 'leavingWaterTemp'),
        ...(given === undefined ? {} : { approach: values.temperatureDifference(given) }),
      });
      return orDefault(found, given, { of: WATER_APPROACH, toBase: (value) => value });
    },
  },
  {
    formula: dischargeLineFormula,
    keys: [temperature('dischargeLineTemp'), optional(temperature('condensingTemp'))],
    units: TEMPERATURE,
    run: (inputs) => {
      const condensing = temperatureIfGiven(inputs, 'condensingTemp');
      const found = dischargeLine({
        line: temperatureOf(inputs, 'dischargeLineTemp'),
        ...(condensing === undefined ? {} : { condensing }),
      });
      return answer(found, ({ valve, verdict }) => ({
        base: valve,
        findings: { verdict },
        ...sourced(DISCHARGE_LINE_LIMIT, ...(verdict === 'floodBack' ? [FLOOD_BACK_MARGIN] : [])),
      }));
    },
  },
  {
    formula: nonCondensablesFormula,
    keys: [REFRIGERANT, pressure('pressure'), temperature('coilTemp'), ALTITUDE],
    units: DIFFERENCE,
    run: (inputs) => {
      const found = nonCondensables({
        refrigerant: refrigerantOf(inputs),
        standing: needPressure(inputs, 'pressure'),
        coil: temperatureOf(inputs, 'coilTemp'),
      });
      return answer(found, ({ excess, verdict }) => ({
        base: excess,
        findings: {
          verdict,
          ...(verdict === 'suspected' || verdict === 'present'
            ? { possible: ['nonCondensables', 'wrongRefrigerant', 'mixedRefrigerant'] }
            : {}),
        },
        ...sourced(NON_CONDENSABLE_EXCESS),
        otherSource: NON_CONDENSABLE_CONFLICT,
      }));
    },
  },
  {
    formula: riserLossFormula,
    keys: [REFRIGERANT, length('rise'), temperature('liquidTemp')],
    units: GAUGE,
    run: (inputs) =>
      plain(
        riserLoss({
          refrigerant: refrigerantOf(inputs),
          rise: values.length(needBase(inputs, 'rise')),
          liquid: temperatureOf(inputs, 'liquidTemp'),
        }),
      ),
  },
  {
    formula: riserSubcoolingFormula,
    keys: [REFRIGERANT, length('rise'), temperature('liquidTemp')],
    units: DIFFERENCE,
    run: (inputs) =>
      plain(
        riserSubcooling({
          refrigerant: refrigerantOf(inputs),
          rise: values.length(needBase(inputs, 'rise')),
          liquid: temperatureOf(inputs, 'liquidTemp'),
        }),
      ),
  },
  {
    formula: steadyStateFormula,
    keys: [
      series(
        'readings',
        { at: { dimension: 'duration', bare: 'min' }, value: { dimension: 'temperature' } },
        '0min:40F,5min:40.2F,10min:40F',
      ),
    ],
    units: DIFFERENCE,
    run: (inputs) => {
      const found = steadyState({
        readings: needSeries(inputs, 'readings').map(({ at, value }) => ({
          at: values.duration(at),
          value: values.temperature(value),
        })),
      });
      return answer(found, ({ state, change, swing }) => ({
        base: change,
        also: { swing },
        findings: { state },
        ...sourced(STEADY),
      }));
    },
  },
  {
    formula: heldWithinFormula,
    keys: [
      series(
        'readings',
        {
          at: { dimension: 'duration', bare: 'min' },
          value: { dimension: 'gaugePressure', bare: 'psi' },
        },
        '0min:176psi,5min:175psi,10min:174psi',
      ),
      pressureDrop('within'),
    ],
    units: both('min'),
    run: (inputs) => {
      const found = heldWithin({
        readings: needSeries(inputs, 'readings').map(({ at, value }) => ({ minutes: at, value })),
        within: needBase(inputs, 'within'),
      });
      return answer(found, ({ minutes, readings }) => ({
        base: minutes,
        findings: { readings: String(readings) },
      }));
    },
  },
];
