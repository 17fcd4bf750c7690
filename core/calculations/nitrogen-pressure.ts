import { absolutePressure } from '../units/quantity-values.ts';
import type { AbsolutePressure, Temperature } from '../units/quantity-values.ts';
import { known, outside, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

export const KELVIN_AT_ZERO_C = 273.15;
/** kPa·L/(mol·K), CODATA 2018. */
const GAS_CONSTANT = 8.314462618;

/** Where the virial form below was fitted: 0.009 % off the equation of state at most. */
const TEMPERATURES = { low: -40, high: 60, unit: 'degC' } as const;
const PRESSURES = { low: 0, high: 7000, unit: 'kPaa' } as const;

/**
 * Real against ideal: 1 + Bρ + Cρ², ρ in mol/L. Least squares over −40 to 60 °C and 0.3 to 7 MPa against the
 * equation of Span et al. 2000; without C a test at 500 psig is 0.6 psi off.
 */
function compressibility(density: number, kelvin: number): number {
  const second = 0.044508 - 12.1339 / kelvin - 780.083 / kelvin ** 2;
  const third = 0.000644022 + 0.243974 / kelvin;
  return 1 + second * density + third * density ** 2;
}

/** mol/L. The correction is at most 6 % in range, so each round leaves a tenth of the error or less. */
export function nitrogenDensity(pressure: AbsolutePressure, at: Temperature): number {
  const kelvin = at + KELVIN_AT_ZERO_C;
  const ideal = pressure / (GAS_CONSTANT * kelvin);
  let density = ideal;
  for (let round = 0; round < 12; round += 1) density = ideal / compressibility(density, kelvin);
  return density;
}

export interface SealedNitrogen {
  readonly pressure: AbsolutePressure;
  /** By the ideal gas law, as trade articles work it. */
  readonly ideal: AbsolutePressure;
}

/** What a sealed test pressure becomes when the gas goes from one temperature to another: real nitrogen. */
export function nitrogenPressure(input: {
  readonly pressure: AbsolutePressure;
  readonly from: Temperature;
  readonly to: Temperature;
}): Calculated<SealedNitrogen> {
  if (!(input.pressure > 0)) return refused('notPositive');
  const beyond =
    outside(input.pressure, PRESSURES) ??
    outside(input.from, TEMPERATURES) ??
    outside(input.to, TEMPERATURES);
  if (beyond !== null) return beyond;
  const after = input.to + KELVIN_AT_ZERO_C;
  const density = nitrogenDensity(input.pressure, input.from);
  const pressure = density * GAS_CONSTANT * after * compressibility(density, after);
  return known(
    {
      pressure: absolutePressure(pressure),
      ideal: absolutePressure((input.pressure * after) / (input.from + KELVIN_AT_ZERO_C)),
    },
    'pressureTest',
  );
}

export const nitrogenPressureFormula: Formula = {
  id: 'nitrogenPressure',
  name: 'nitrogen test pressure at another temperature',
  equation: 'P2 = ρRT2·Z(ρ, T2) with ρ from P1 = ρRT1·Z(ρ, T1), Z = 1 + B(T)ρ + C(T)ρ²',
  symbols: symbols(
    ['P1, P2', 'pressure before and after, absolute', 'kPa'],
    ['T1, T2', 'gas temperature before and after', 'K'],
    ['ρ', 'molar density, which a sealed circuit keeps', 'mol/L'],
    ['R', 'gas constant, 8.314462618', 'kPa·L/(mol·K)'],
    ['B, C', 'virial coefficients fitted to the equation of state', 'L/mol, L²/mol²'],
  ),
  range:
    'dry nitrogen, sealed, constant volume, −40 to 60 °C, up to 7,000 kPa absolute (1,000 psig): within 0.02 % of the equation of state',
  source:
    'equation of state of Span et al. 2000, J. Phys. Chem. Ref. Data 29, 1361, by CoolProp 8.0.0; the law itself: achrnews.com/articles/153295',
  standing: 'computed',
  example: {
    inputs: { pressure: '150psi', from: '80F', to: '70F' },
    gives: { value: 146.868, unit: 'psi' },
    within: 0.03,
    source: 'the equation of state at constant density; the ideal law has 146.95',
    standing: 'computed',
  },
};
