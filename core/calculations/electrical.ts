import { capacitance, ratio } from '../units/quantity-values.ts';
import type { Capacitance, Current, Frequency, Ratio, Voltage } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated, Caution } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

/** 2 %: compressor makers' limit (a chiller maker's manual; RSES). 5 %: NEMA MG-1, do not operate. */
const COMPRESSOR_LIMIT = 0.02;
const OPERATING_LIMIT = 0.05;

/** The largest deviation from the average of the three line-to-line voltages, over that average. */
export function voltageImbalance(input: {
  readonly ab: Voltage;
  readonly bc: Voltage;
  readonly ca: Voltage;
}): Calculated<Ratio> {
  const legs = [input.ab, input.bc, input.ca];
  if (legs.some((leg) => !(leg > 0))) return refused('notPositive');
  const average = (input.ab + input.bc + input.ca) / 3;
  const found = Math.max(...legs.map((leg) => Math.abs(leg - average))) / average;
  return known(ratio(found), ...imbalanceCautions(found));
}

function imbalanceCautions(imbalance: number): Caution[] {
  if (imbalance > OPERATING_LIMIT) return ['doNotOperate'];
  return imbalance > COMPRESSOR_LIMIT ? ['aboveCompressorLimit'] : [];
}

/** A running capacitor by the current through it and the voltage across it. */
export function runCapacitance(input: {
  readonly current: Current;
  readonly voltage: Voltage;
  readonly frequency: Frequency;
}): Calculated<Capacitance> {
  const { current, voltage, frequency } = input;
  if (!(current >= 0 && voltage > 0 && frequency > 0)) return refused('notPositive');
  return known(capacitance((1e6 * current) / (2 * Math.PI * frequency * voltage)), 'liveWork');
}

export const voltageImbalanceFormula: Formula = {
  id: 'voltageImbalance',
  name: 'voltage imbalance',
  equation: 'imbalance = max |V − Vavg| / Vavg',
  symbols: symbols(['V', 'each line-to-line voltage', 'V'], ['Vavg', 'average of the three', 'V']),
  range: 'three-phase, line to line; compressor makers allow 2 %, above 5 % do not operate',
  source: 'NEMA MG-1 definition as printed in a chiller maker’s 30MPA manual; 5 %: xcela.ca',
  standing: 'published',
  example: {
    inputs: { ab: '243V', bc: '236V', ca: '238V' },
    gives: { value: 1.7, unit: 'percent' },
    within: 0.05,
    source: 'a chiller maker’s 30MPA manual, page 39: 239 V average, 4 V off, printed 1.7 %',
    standing: 'published',
  },
};

export const runCapacitanceFormula: Formula = {
  id: 'runCapacitance',
  name: 'run capacitance under load',
  equation: 'C = 10⁶ · I / (2π f V)',
  symbols: symbols(
    ['C', 'capacitance', 'µF'],
    ['I', 'current in the capacitor’s lead', 'A'],
    ['V', 'voltage across the capacitor', 'V'],
    ['f', 'supply frequency', 'Hz'],
  ),
  range: 'running motor, sine wave; live work at 370 V and more',
  source: 'prestigeairtx.com, Testing a capacitor under load (2652 · I / V at 60 Hz)',
  standing: 'published',
  example: {
    inputs: { current: '1.1A', voltage: '383V', frequency: '60Hz' },
    gives: { value: 7.61, unit: 'uF' },
    within: 0.02,
    source: 'prestigeairtx.com, Testing a capacitor under load: printed 7.61',
    standing: 'published',
  },
};
