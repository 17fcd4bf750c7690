import { capacitance, duration, ratio } from '../units/quantity-values.ts';
import type {
  Capacitance,
  Current,
  Duration,
  Frequency,
  Ratio,
  Resistance,
  Voltage,
} from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { BLEED_RESISTOR, CAPACITOR_TOLERANCES } from './electrical-defaults.ts';
import type { CapacitorKind } from './electrical-defaults.ts';
import { symbols } from './formula.ts';
import type { Formula, Sourced } from './formula.ts';

/** A running capacitor by the current through it and the voltage across it. */
export function runCapacitance(input: {
  readonly current: Current;
  readonly voltage: Voltage;
  readonly frequency: Frequency;
}): Calculated<Capacitance> {
  const { current, voltage, frequency } = input;
  if (!(current >= 0 && voltage > 0 && frequency > 0)) return refused('notPositive');
  const found = (1e6 * current) / (2 * Math.PI * frequency * voltage);
  return known(capacitance(found), 'liveWork', 'capacitorCharge');
}

export interface CapacitorVerdict {
  /** Above the rated value; below it negative. */
  readonly off: Ratio;
  readonly verdict: 'low' | 'within' | 'high';
  readonly low: Capacitance;
  readonly high: Capacitance;
  /** Null where the can's own tolerance was given. */
  readonly from: Sourced<unknown> | null;
}

/** Whether a measured capacitor is within its tolerance: the can's own where given, else the usual of its kind. */
export function capacitorTolerance(input: {
  readonly measured: Capacitance;
  readonly rated: Capacitance;
  readonly kind: CapacitorKind;
  /** Either way, as marked on the can. */
  readonly marked?: Ratio;
}): Calculated<CapacitorVerdict> {
  const { measured, rated, kind, marked } = input;
  if (!(rated > 0 && measured >= 0)) return refused('notPositive');
  const usual = CAPACITOR_TOLERANCES[kind];
  const { below, above } = marked === undefined ? usual.value : { below: marked, above: marked };
  const [low, high] = [capacitance(rated * (1 - below)), capacitance(rated * (1 + above))];
  const verdict = measured < low ? 'low' : measured > high ? 'high' : 'within';
  const from = marked === undefined ? usual : null;
  const off = ratio((measured - rated) / rated);
  return known({ off, verdict, low, high, from }, 'capacitorCharge');
}

/** What is left after five time constants is under a hundredth. */
const TIME_CONSTANTS = 5;

/** How long a capacitor bleeds through a resistor before it is measured; it is measured all the same. */
export function bleedWait(input: {
  readonly capacitance: Capacitance;
  readonly resistance?: Resistance;
}): Calculated<Duration> {
  const through = input.resistance ?? BLEED_RESISTOR.value;
  if (!(input.capacitance > 0 && through > 0)) return refused('notPositive');
  const seconds = TIME_CONSTANTS * through * input.capacitance * 1e-6;
  return known(duration(seconds / 60), 'capacitorCharge');
}

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

export const capacitorToleranceFormula: Formula = {
  id: 'capacitorTolerance',
  name: 'capacitor against its tolerance',
  equation: 'off = (C − Crated) / Crated',
  symbols: symbols(['C', 'measured', 'µF'], ['Crated', 'as marked on the can', 'µF']),
  range: 'run ±6 %, start −0/+20 % unless the can says otherwise',
  source: 'definition',
  standing: 'computed',
  example: {
    inputs: { measured: '74.5uF', rated: '70uF', kind: 'run', marked: '10%' },
    gives: { value: 6.4, unit: 'percent' },
    within: 0.05,
    source:
      'hvacrschool.com, Measuring capacitance on a running system: 74.5 of 70 µF, within 10 %; by hand 6.4 %',
    standing: 'computed',
  },
};

export const bleedWaitFormula: Formula = {
  id: 'bleedWait',
  name: 'wait while a capacitor bleeds',
  equation: 't = 5 · R · C',
  symbols: symbols(['R', 'bleed resistor', 'Ω'], ['C', 'capacitance', 'F']),
  range: 'power off and locked out, one resistor across the terminals; then measure',
  source: 'electriciantraining.tpub.com/14179, NEETS: full or empty after five time constants',
  standing: 'published',
  example: {
    inputs: { capacitance: '100uF', resistance: '20kohm' },
    gives: { value: 10, unit: 's' },
    within: 0.001,
    source: '5 × 20,000 Ω × 100 µF by hand',
    standing: 'computed',
  },
};
