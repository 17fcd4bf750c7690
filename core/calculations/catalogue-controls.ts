/** Catalogue entries of pressure controls. */
import { toGaugeReading } from '../units/branding.ts';
import * as values from '../units/quantity-values.ts';
import { GAUGE, answer, gauge, plain } from './catalogue-entry.ts';
import { refrigerantOf, temperatureOf } from './catalogue-entry.ts';
import type { Entry } from './catalogue-entry.ts';
import {
  atmosphereOf,
  baseOf,
  needBase,
  needChoice,
  needPressure,
  differenceOf,
} from './catalogue-inputs.ts';
import type { InputValues } from './catalogue-inputs.ts';
import { ALTITUDE, REFRIGERANT, choice, optional, pressure } from './catalogue-keys.ts';
import { pressureDrop, temperature, temperatureDifference } from './catalogue-keys.ts';
import { orDefault, sourced } from './catalogue-sourced.ts';
import {
  CUT_OUT_MARGIN,
  REGULATOR_LINE_DROP,
  SHARE_OF_RELIEF,
  TRIP_TOLERANCES,
} from './control-defaults.ts';
import type { ControlSide } from './control-defaults.ts';
import { highPressureWindow, highPressureWindowFormula } from './high-pressure-window.ts';
import { coldStart, coldStartFormula } from './pressure-controls.ts';
import { controlCutOut, controlCutOutFormula } from './pressure-controls.ts';
import { controlDifferential, controlDifferentialFormula } from './pressure-controls.ts';
import { controlTrip, controlTripFormula } from './pressure-controls.ts';
import { lowPressureCutIn, lowPressureCutInFormula } from './pressure-controls.ts';
import { lowPressureCutOut, lowPressureCutOutFormula } from './pressure-controls.ts';
import { regulatorSetting, regulatorSettingFormula } from './suction-regulator.ts';

const SIDES: readonly ControlSide[] = ['high', 'low'];

const dropOf = (inputs: InputValues, key: string): values.PressureDifference | undefined => {
  const base = baseOf(inputs, key);
  return base === undefined ? undefined : values.pressureDifference(base);
};

const gaugeOf = (inputs: InputValues, absolute: values.AbsolutePressure): number =>
  toGaugeReading(absolute, atmosphereOf(inputs));

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
