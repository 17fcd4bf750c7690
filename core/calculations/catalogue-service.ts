/** Catalogue entries of tests, electrical work and weights. */
import * as values from '../units/quantity-values.ts';
import { WEIGHT, GAUGE, answer, both, gauge, plain } from './catalogue-entry.ts';
import { refrigerantOf, temperatureOf } from './catalogue-entry.ts';
import type { Entry } from './catalogue-entry.ts';
import { baseOf, needBase, needPressure } from './catalogue-inputs.ts';
import { ALTITUDE, REFRIGERANT, counted, current, mass } from './catalogue-keys.ts';
import { optional, pressure, temperature, voltage } from './catalogue-keys.ts';
import { runCapacitance, runCapacitanceFormula } from './electrical.ts';
import { voltageImbalance, voltageImbalanceFormula } from './electrical.ts';
import { nitrogenPressure, nitrogenPressureFormula } from './nitrogen-pressure.ts';
import { cylinderFill, cylinderFillFormula } from './refrigerant-weights.ts';
import { leakRate, leakRateFormula } from './refrigerant-weights.ts';

export const SERVICE_ENTRIES: readonly Entry[] = [
  {
    formula: nitrogenPressureFormula,
    keys: [pressure('pressure'), temperature('from'), temperature('to'), ALTITUDE],
    units: GAUGE,
    run: (inputs) =>
      gauge(
        inputs,
        nitrogenPressure({
          pressure: needPressure(inputs, 'pressure'),
          from: temperatureOf(inputs, 'from'),
          to: temperatureOf(inputs, 'to'),
        }),
      ),
  },
  {
    formula: voltageImbalanceFormula,
    keys: [voltage('ab'), voltage('bc'), voltage('ca')],
    units: both('percent'),
    run: (inputs) => {
      const leg = (key: string): values.Voltage => values.voltage(needBase(inputs, key));
      return plain(voltageImbalance({ ab: leg('ab'), bc: leg('bc'), ca: leg('ca') }));
    },
  },
  {
    formula: runCapacitanceFormula,
    keys: [current('current'), voltage('voltage'), counted('frequency', 'frequency', 'Hz')],
    units: both('uF'),
    run: (inputs) =>
      plain(
        runCapacitance({
          current: values.current(needBase(inputs, 'current')),
          voltage: values.voltage(needBase(inputs, 'voltage')),
          frequency: values.frequency(needBase(inputs, 'frequency')),
        }),
      ),
  },
  {
    formula: leakRateFormula,
    keys: [mass('added'), mass('charge'), counted('days', 'duration', 'day')],
    units: both('percent'),
    run: (inputs) =>
      plain(
        leakRate({
          added: values.mass(needBase(inputs, 'added')),
          charge: values.mass(needBase(inputs, 'charge')),
          since: values.duration(needBase(inputs, 'days')),
        }),
      ),
  },
  {
    formula: cylinderFillFormula,
    keys: [
      REFRIGERANT,
      mass('waterCapacity'),
      mass('tare'),
      optional(counted('specificGravity', 'ratio', 'ratio')),
    ],
    units: WEIGHT,
    run: (inputs) => {
      const given = baseOf(inputs, 'specificGravity');
      const found = cylinderFill({
        refrigerant: refrigerantOf(inputs),
        waterCapacity: values.mass(needBase(inputs, 'waterCapacity')),
        tare: values.mass(needBase(inputs, 'tare')),
        ...(given === undefined ? {} : { specificGravity: values.ratio(given) }),
      });
      return answer(found, ({ net, gross }) => ({ base: gross, also: { net } }));
    },
  },
];
