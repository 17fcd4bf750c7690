import { apparentPower as voltAmps, power as watts } from '../units/quantity-values.ts';
import type { ApparentPower, Current, Power, Ratio, Voltage } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

export type Phases = 'single' | 'three';

const FACTOR: Record<Phases, number> = { single: 1, three: Math.sqrt(3) };

interface Load {
  /** Across the load; line to line with three phases. */
  readonly voltage: Voltage;
  readonly current: Current;
  readonly phases: Phases;
}

/** Volts times amps: all that can be said without a power factor. */
export function apparentPower({ voltage, current, phases }: Load): Calculated<ApparentPower> {
  if (!(voltage > 0 && current >= 0)) return refused('notPositive');
  return known(voltAmps(FACTOR[phases] * voltage * current), 'liveWork');
}

/** Watts, which need a measured power factor: an assumed one makes a guess look like a reading. */
export function power(input: Load & { readonly powerFactor: Ratio }): Calculated<Power> {
  const { powerFactor } = input;
  if (!(powerFactor > 0 && powerFactor <= 1)) return refused('ruleDoesNotApply');
  const apparent = apparentPower(input);
  if (apparent.kind === 'refused') return apparent;
  return known(watts(apparent.value * powerFactor), ...apparent.cautions);
}

const SYMBOLS = symbols(
  ['V', 'voltage across the load, line to line with three phases', 'V'],
  ['I', 'line current', 'A'],
  ['PF', 'power factor, measured', '1'],
  ['k', '1 with one phase, √3 with three', '1'],
);
const RANGE = 'sine wave, balanced load';

export const powerFormula: Formula = {
  id: 'power',
  name: 'power of a load',
  equation: 'P = k · V · I · PF',
  symbols: SYMBOLS,
  range: `${RANGE}; a power factor between 0 and 1`,
  source: 'engineeringtoolbox.com/three-phase-electrical-d_888, equation 1',
  standing: 'published',
  example: {
    inputs: { voltage: '400V', current: '20A', powerFactor: '1', phases: 'three' },
    gives: { value: 13856, unit: 'W' },
    within: 0.5,
    source: 'engineeringtoolbox.com/three-phase-electrical-d_888: 400 V, 20 A, 13,856 W',
    standing: 'published',
  },
};

export const apparentPowerFormula: Formula = {
  id: 'apparentPower',
  name: 'apparent power of a load',
  equation: 'S = k · V · I',
  symbols: SYMBOLS.filter(({ symbol }) => symbol !== 'PF'),
  range: RANGE,
  source: 'engineeringtoolbox.com/three-phase-electrical-d_888, equation 2',
  standing: 'published',
  example: {
    inputs: { voltage: '400V', current: '20A', phases: 'three' },
    gives: { value: 13856, unit: 'VA' },
    within: 0.5,
    source:
      'engineeringtoolbox.com/three-phase-electrical-d_888: 400 V, 20 A, 13,856 of a pure resistance',
    standing: 'published',
  },
};
