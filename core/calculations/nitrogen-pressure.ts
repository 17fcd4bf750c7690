import { absolutePressure } from '../units/quantity-values.ts';
import type { AbsolutePressure, Temperature } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

const KELVIN_AT_ZERO_C = 273.15;

/** 300 psig: from there real nitrogen leaves the ideal law by more than half a psi over 20 °F. */
const IDEAL_UP_TO = absolutePressure(2170);

/** What a sealed test pressure becomes when the gas goes from one temperature to another. */
export function nitrogenPressure(input: {
  readonly pressure: AbsolutePressure;
  readonly from: Temperature;
  readonly to: Temperature;
}): Calculated<AbsolutePressure> {
  const [before, after] = [input.from + KELVIN_AT_ZERO_C, input.to + KELVIN_AT_ZERO_C];
  if (input.pressure <= 0 || before <= 0 || after <= 0) return refused('notPositive');
  const found = absolutePressure((input.pressure * after) / before);
  return Math.max(found, input.pressure) >= IDEAL_UP_TO ? known(found, 'idealGas') : known(found);
}

export const nitrogenPressureFormula: Formula = {
  id: 'nitrogenPressure',
  name: 'nitrogen test pressure at another temperature',
  equation: 'P2 = P1 · T2 / T1',
  symbols: symbols(
    ['P1, P2', 'pressure before and after, absolute', 'kPa'],
    ['T1, T2', 'gas temperature before and after', 'K'],
  ),
  range:
    'dry nitrogen, sealed, constant volume; against real nitrogen 0.1 psi high at 150 psig over 10 °F, 2.5 psi at 500 psig over 35 °F',
  source: 'achrnews.com/articles/153295, Pressure testing a system with dry nitrogen',
  standing: 'published',
  example: {
    inputs: { pressure: '150psi', from: '80F', to: '70F' },
    gives: { value: 146.95, unit: 'psi' },
    within: 0.01,
    source: '164.696 psia × 529.67 / 539.67 less 14.696 by hand; the source works the same case',
    standing: 'computed',
  },
};
