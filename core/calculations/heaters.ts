import { current, power, resistance } from '../units/quantity-values.ts';
import type { Current, Power, Resistance, Voltage } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

interface Heater {
  readonly voltage: Voltage;
  /** Cold, leads off. */
  readonly resistance: Resistance;
}

/** What a defrost, drain or door heater should draw: 0 A with voltage across it is a burnt element. */
export function heaterCurrent({ voltage, resistance }: Heater): Calculated<Current> {
  if (!(voltage > 0 && resistance > 0)) return refused('notPositive');
  return known(current(voltage / resistance), 'deadAndDisconnected');
}

/** What it gives at that voltage: at 208 V a 240 V element gives three quarters. */
export function heaterPower({ voltage, resistance }: Heater): Calculated<Power> {
  if (!(voltage > 0 && resistance > 0)) return refused('notPositive');
  return known(power(voltage ** 2 / resistance), 'deadAndDisconnected');
}

/** What it should read cold, by what is printed on it. */
export function heaterResistance(rated: {
  readonly voltage: Voltage;
  readonly power: Power;
}): Calculated<Resistance> {
  if (!(rated.voltage > 0 && rated.power > 0)) return refused('notPositive');
  return known(resistance(rated.voltage ** 2 / rated.power), 'deadAndDisconnected');
}

/** The same, where its amps are printed on it and not its watts. */
export function heaterResistanceByAmps(rated: {
  readonly voltage: Voltage;
  readonly current: Current;
}): Calculated<Resistance> {
  if (!(rated.voltage > 0 && rated.current > 0)) return refused('notPositive');
  return known(resistance(rated.voltage / rated.current), 'deadAndDisconnected');
}

const SYMBOLS = symbols(
  ['V', 'voltage across the heater', 'V'],
  ['R', 'resistance of the heater, leads off', 'Ω'],
);
const RANGE = 'resistance heaters; a self-regulating one is no fixed resistance';
const SOURCE = 'a water-heater maker’s service handbook (manualsdump.com/amp/en/manuals/51783/3)';

export const heaterCurrentFormula: Formula = {
  id: 'heaterCurrent',
  name: 'heater current',
  equation: 'I = V / R',
  symbols: SYMBOLS,
  range: RANGE,
  source: SOURCE,
  standing: 'published',
  example: {
    inputs: { voltage: '240V', resistance: '12.8ohm' },
    gives: { value: 18.75, unit: 'A' },
    within: 0.005,
    source: `${SOURCE}: 12.8 Ω, 18.75 A at 240 V`,
    standing: 'published',
  },
};

export const heaterPowerFormula: Formula = {
  id: 'heaterPower',
  name: 'heater power',
  equation: 'P = V² / R',
  symbols: SYMBOLS,
  range: RANGE,
  source: SOURCE,
  standing: 'published',
  example: {
    inputs: { voltage: '240V', resistance: '12.8ohm' },
    gives: { value: 4500, unit: 'W' },
    within: 0.5,
    source: `${SOURCE}: 12.8 Ω, 4,500 W at 240 V`,
    standing: 'published',
  },
};

export const heaterResistanceFormula: Formula = {
  id: 'heaterResistance',
  name: 'heater resistance',
  equation: 'R = V² / P',
  symbols: symbols(
    ['V', 'voltage that the heater is rated at', 'V'],
    ['P', 'what the heater is rated to give', 'W'],
  ),
  range: RANGE,
  source: SOURCE,
  standing: 'published',
  example: {
    inputs: { voltage: '240V', power: '4500W' },
    gives: { value: 12.8, unit: 'ohm' },
    within: 0.005,
    source: `${SOURCE}: 4,500 W, 12.8 Ω at 240 V`,
    standing: 'published',
  },
};

export const heaterResistanceByAmpsFormula: Formula = {
  id: 'heaterResistanceByAmps',
  name: 'heater resistance by its amps',
  equation: 'R = V / I',
  symbols: symbols(
    ['V', 'voltage that the heater is rated at', 'V'],
    ['I', 'what the heater is rated to draw', 'A'],
  ),
  range: RANGE,
  source: SOURCE,
  standing: 'published',
  example: {
    inputs: { voltage: '240V', current: '18.75A' },
    gives: { value: 12.8, unit: 'ohm' },
    within: 0.005,
    source: `${SOURCE}: 12.8 Ω, 18.75 A at 240 V`,
    standing: 'published',
  },
};
