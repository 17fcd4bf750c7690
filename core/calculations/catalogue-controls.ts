/** Catalogue entries of pressure controls, heads and tests at rest. */
import { toGaugeReading } from '../units/branding.ts';
import * as values from '../units/quantity-values.ts';
import type { Calculated } from './calculated.ts';
import { DIFFERENCE, GAUGE, TEMPERATURE, answer, both, gauge, plain } from './catalogue-entry.ts';
import { refrigerantOf, temperatureIfGiven, temperatureOf } from './catalogue-entry.ts';
import type { Answer, Entry } from './catalogue-entry.ts';
import { atmosphereOf, baseOf, needBase, needChoice, needPressure } from './catalogue-inputs.ts';
import { needSeries } from './catalogue-inputs.ts';
import type { InputValues } from './catalogue-inputs.ts';
import { ALTITUDE, REFRIGERANT, choice, length, optional, pressure } from './catalogue-keys.ts';
import { pressureDrop, series, temperature, temperatureDifference } from './catalogue-keys.ts';
import {
  CUT_OUT_MARGIN,
  FAN_CYCLE,
  NON_CONDENSABLE_CONFLICT,
  NON_CONDENSABLE_EXCESS,
  REGULATOR_LINE_DROP,
  SHARE_OF_RELIEF,
  STEADY,
  TRIP_TOLERANCES,
  WATER_APPROACH,
} from './control-defaults.ts';
import type { ControlSide } from './control-defaults.ts';
import { DISCHARGE_LINE_LIMIT, FLOOD_BACK_MARGIN } from './discharge-line.ts';
import { dischargeLine, dischargeLineFormula } from './discharge-line.ts';
import type { Sourced } from './formula.ts';
import { fanCycle, fanCycleFormula, floodedShare, floodedShareFormula } from './head-control.ts';
import { heldHead, heldHeadFormula } from './head-control.ts';
import { highPressureWindow, highPressureWindowFormula } from './high-pressure-window.ts';
import { riserLoss, riserLossFormula } from './liquid-riser.ts';
import { riserSubcooling, riserSubcoolingFormula } from './liquid-riser.ts';
import { nonCondensables, nonCondensablesFormula } from './non-condensables.ts';
import { coldStart, coldStartFormula } from './pressure-controls.ts';
import { controlCutOut, controlCutOutFormula } from './pressure-controls.ts';
import { controlDifferential, controlDifferentialFormula } from './pressure-controls.ts';
import { controlTrip, controlTripFormula } from './pressure-controls.ts';
import { lowPressureCutIn, lowPressureCutInFormula } from './pressure-controls.ts';
import { lowPressureCutOut, lowPressureCutOutFormula } from './pressure-controls.ts';
import { steadyState, steadyStateFormula } from './steady-state.ts';
import { regulatorSetting, regulatorSettingFormula } from './suction-regulator.ts';
import { waterCondensingTarget, waterCondensingTargetFormula } from './water-condenser.ts';

const SIDES: readonly ControlSide[] = ['high', 'low'];

const differenceOf = (inputs: InputValues, key: string): values.TemperatureDifference =>
  values.temperatureDifference(needBase(inputs, key));

const dropOf = (inputs: InputValues, key: string): values.PressureDifference | undefined => {
  const base = baseOf(inputs, key);
  return base === undefined ? undefined : values.pressureDifference(base);
};

const gaugeOf = (inputs: InputValues, absolute: values.AbsolutePressure): number =>
  toGaugeReading(absolute, atmosphereOf(inputs));

/** What a default was taken from, and what conflicts with it. */
const sourced = (...of: readonly Sourced<unknown>[]): Pick<Answer, 'source' | 'otherSource'> => {
  const others = of.flatMap(({ otherSource }) => otherSource ?? []);
  return {
    source: of.map(({ source, standing }) => `default: ${source} (${standing})`).join('; '),
    ...(others.length === 0 ? {} : { otherSource: others.join('; ') }),
  };
};

/** With what the default leans on, where the input did not give its own. */
const orDefault = <Value extends number>(
  found: Calculated<Value>,
  given: unknown,
  { of, toBase }: { of: Sourced<unknown>; toBase: (value: Value) => number },
): Calculated<Answer> =>
  answer(found, (value) => ({
    base: toBase(value),
    ...(given === undefined ? sourced(of) : {}),
  }));

export const CONTROL_ENTRIES: readonly Entry[] = [
  {
    formula: lowPressureCutInFormula,
    keys: [REFRIGERANT, temperature('coilTemp'), ALTITUDE],
    units: GAUGE,
    run: (inputs) =>
      gauge(
        inputs,
        lowPressureCutIn({
          refrigerant: refrigerantOf(inputs),
          coil: temperatureOf(inputs, 'coilTemp'),
        }),
      ),
  },
  {
    formula: lowPressureCutOutFormula,
    keys: [
      REFRIGERANT,
      temperature('boxTemp'),
      temperatureDifference('temperatureDifference'),
      optional(pressureDrop('lineDrop')),
      ALTITUDE,
    ],
    units: GAUGE,
    run: (inputs) =>
      gauge(
        inputs,
        lowPressureCutOut({
          refrigerant: refrigerantOf(inputs),
          lowestBox: temperatureOf(inputs, 'boxTemp'),
          difference: differenceOf(inputs, 'temperatureDifference'),
          lineDrop: dropOf(inputs, 'lineDrop') ?? values.pressureDifference(0),
          atmosphere: atmosphereOf(inputs),
        }),
      ),
  },
  {
    formula: controlCutOutFormula,
    keys: [pressure('cutIn'), pressureDrop('differential'), ALTITUDE],
    units: GAUGE,
    run: (inputs) =>
      gauge(
        inputs,
        controlCutOut({
          cutIn: needPressure(inputs, 'cutIn'),
          differential: values.pressureDifference(needBase(inputs, 'differential')),
          atmosphere: atmosphereOf(inputs),
        }),
      ),
  },
  {
    formula: controlDifferentialFormula,
    keys: [pressure('cutIn'), pressure('cutOut'), ALTITUDE],
    units: GAUGE,
    run: (inputs) =>
      plain(
        controlDifferential({
          cutIn: needPressure(inputs, 'cutIn'),
          cutOut: needPressure(inputs, 'cutOut'),
        }),
      ),
  },
  {
    formula: coldStartFormula,
    keys: [REFRIGERANT, pressure('cutIn'), temperature('coldestTemp'), ALTITUDE],
    units: GAUGE,
    run: (inputs) => {
      const found = coldStart({
        refrigerant: refrigerantOf(inputs),
        cutIn: needPressure(inputs, 'cutIn'),
        coldest: temperatureOf(inputs, 'coldestTemp'),
      });
      return answer(found, ({ standing, start }) => ({
        base: gaugeOf(inputs, standing),
        findings: { start },
      }));
    },
  },
  {
    formula: controlTripFormula,
    keys: [choice('side', SIDES), pressure('setting'), pressure('opened'), ALTITUDE],
    units: GAUGE,
    run: (inputs) => {
      const side = needChoice(inputs, 'side', SIDES);
      const found = controlTrip({
        side,
        setting: needPressure(inputs, 'setting'),
        opened: needPressure(inputs, 'opened'),
      });
      return answer(found, ({ past, verdict }) => ({
        base: past,
        findings: { verdict },
        ...sourced(TRIP_TOLERANCES[side]),
      }));
    },
  },
  {
    formula: highPressureWindowFormula,
    keys: [
      REFRIGERANT,
      temperature('hottestTemp'),
      temperatureDifference('split'),
      pressure('rating'),
      optional(pressure('relief')),
      optional(pressureDrop('margin')),
      ALTITUDE,
    ],
    units: GAUGE,
    run: (inputs) => {
      const margin = dropOf(inputs, 'margin');
      const relief = inputs.has('relief') ? { relief: needPressure(inputs, 'relief') } : {};
      const found = highPressureWindow({
        refrigerant: refrigerantOf(inputs),
        hottest: temperatureOf(inputs, 'hottestTemp'),
        split: differenceOf(inputs, 'split'),
        rating: needPressure(inputs, 'rating'),
        ...relief,
        ...(margin === undefined ? {} : { margin }),
        atmosphere: atmosphereOf(inputs),
      });
      const used = [
        ...(margin === undefined ? [CUT_OUT_MARGIN] : []),
        ...(inputs.has('relief') ? [SHARE_OF_RELIEF] : []),
      ];
      return answer(found, ({ lowest, highest, window }) => ({
        base: gaugeOf(inputs, lowest),
        also: { highest: gaugeOf(inputs, highest) },
        findings: { window },
        ...(used.length === 0 ? {} : sourced(...used)),
      }));
    },
  },
  {
    formula: regulatorSettingFormula,
    keys: [
      REFRIGERANT,
      temperature('evaporatingTemp'),
      optional(pressureDrop('lineDrop')),
      ALTITUDE,
    ],
    units: GAUGE,
    run: (inputs) => {
      const lineDrop = dropOf(inputs, 'lineDrop');
      const found = regulatorSetting({
        refrigerant: refrigerantOf(inputs),
        evaporating: temperatureOf(inputs, 'evaporatingTemp'),
        ...(lineDrop === undefined ? {} : { lineDrop }),
      });
      const toBase = (absolute: values.AbsolutePressure): number => gaugeOf(inputs, absolute);
      return orDefault(found, lineDrop, { of: REGULATOR_LINE_DROP, toBase });
    },
  },
];

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
];
