import { resistance, temperature, temperatureDifference } from '../units/quantity-values.ts';
import type { Resistance, Temperature, TemperatureDifference } from '../units/quantity-values.ts';
import { known, outside, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

/** IEC 60751:2008, clause 4.2. */
const A = 3.9083e-3;
const B = -5.775e-7;
const C = -4.183e-12;
const RANGE = { low: -200, high: 850, unit: 'degC' } as const;

export const NOMINAL = resistance(100);

/** R/R0 at °C. */
const relative = (t: number): number =>
  1 + A * t + B * t ** 2 + (t < 0 ? C * (t - 100) * t ** 3 : 0);

/** What a platinum sensor shows at a temperature. */
export function platinumResistance(input: {
  readonly at: Temperature;
  readonly nominal?: Resistance;
}): Calculated<Resistance> {
  const { at, nominal = NOMINAL } = input;
  if (!(nominal > 0)) return refused('notPositive');
  return outside(at, RANGE) ?? known(resistance(nominal * relative(at)));
}

/** The temperature of a platinum sensor by its resistance. */
export function platinumTemperature(input: {
  readonly resistance: Resistance;
  readonly nominal?: Resistance;
}): Calculated<Temperature> {
  const { nominal = NOMINAL } = input;
  if (!(nominal > 0)) return refused('notPositive');
  const ohms = {
    low: nominal * relative(RANGE.low),
    high: nominal * relative(RANGE.high),
    unit: 'ohm',
  } as const;
  const beyond = outside(input.resistance, ohms);
  if (beyond !== null) return beyond;
  const share = input.resistance / nominal;
  // Exact above zero; below it a start 2.5 K off at −200 °C, which five Newton steps take under 1e-9 K.
  let t = (-A + Math.sqrt(A ** 2 - 4 * B * (1 - share))) / (2 * B);
  for (let round = 0; round < 5 && t < 0; round += 1) {
    const slope = A + 2 * B * t + C * (4 * t ** 3 - 300 * t ** 2);
    t -= (relative(t) - share) / slope;
  }
  return known(temperature(t));
}

export const PLATINUM_CLASSES = ['AA', 'A', 'B', 'C'] as const;
export type PlatinumClass = (typeof PLATINUM_CLASSES)[number];

/** IEC 60751:2008, table 2: kelvins at zero, kelvins for each degree from it, and where it holds for wire-wound. */
const TOLERANCES: Record<
  PlatinumClass,
  { readonly at0: number; readonly per: number; readonly low: number; readonly high: number }
> = {
  AA: { at0: 0.1, per: 0.0017, low: -50, high: 250 },
  A: { at0: 0.15, per: 0.002, low: -100, high: 450 },
  B: { at0: 0.3, per: 0.005, low: -196, high: 600 },
  C: { at0: 0.6, per: 0.01, low: -196, high: 600 },
};

/** How far a sensor of a class may be off, either way. */
export function platinumTolerance(
  of: PlatinumClass,
  at: Temperature,
): Calculated<TemperatureDifference> {
  const { at0, per, low, high } = TOLERANCES[of];
  const beyond = outside(at, { low, high, unit: 'degC' });
  return beyond ?? known(temperatureDifference(at0 + per * Math.abs(at)));
}

const SYMBOLS = symbols(
  ['R', 'resistance', 'Ω'],
  ['R0', 'resistance at 0 °C, 100 unless given', 'Ω'],
  ['t', 'temperature', '°C'],
  ['A, B, C', '3.9083·10⁻³, −5.775·10⁻⁷, −4.183·10⁻¹² (C below 0 °C only)', '°C⁻¹, °C⁻², °C⁻⁴'],
);
const SOURCE =
  'IEC 60751:2008, clause 4.2, as printed at sensingtemp.com and dwmai.com; the leads’ resistance is not in it';
const EQUATION = 'R = R0 · (1 + A·t + B·t² + C·(t − 100)·t³)';

export const platinumResistanceFormula: Formula = {
  id: 'platinumResistance',
  name: 'resistance of a platinum sensor',
  equation: EQUATION,
  symbols: SYMBOLS,
  range: '−200 to 850 °C',
  source: SOURCE,
  standing: 'published',
  example: {
    inputs: { temperature: '100C' },
    gives: { value: 138.51, unit: 'ohm' },
    within: 0.005,
    source: 'IEC 60751 table as printed at sensorsci.com',
    standing: 'published',
  },
};

export const platinumTemperatureFormula: Formula = {
  id: 'platinumTemperature',
  name: 'temperature of a platinum sensor',
  equation: `${EQUATION}, solved for t`,
  symbols: SYMBOLS,
  range: '−200 to 850 °C (18.52 to 390.48 Ω for 100 Ω)',
  source: SOURCE,
  standing: 'published',
  example: {
    inputs: { resistance: '84.27ohm' },
    gives: { value: -40, unit: 'degF' },
    within: 0.024,
    source: 'IEC 60751 table as printed at sensorsci.com: 84.27 Ω at −40 °C, to 0.005 Ω',
    standing: 'published',
  },
};

export const platinumToleranceFormula: Formula = {
  id: 'platinumTolerance',
  name: 'tolerance of a platinum sensor',
  equation:
    'AA ±(0.1 + 0.0017·|t|), A ±(0.15 + 0.002·|t|), B ±(0.3 + 0.005·|t|), C ±(0.6 + 0.01·|t|)',
  symbols: symbols(['t', 'temperature', '°C']),
  range: 'wire-wound: AA −50 to 250, A −100 to 450, B and C −196 to 600 °C',
  source:
    'IEC 60751:2008, table 2: A and B as printed at dwmai.com; AA, C and the ranges from memory',
  standing: 'published',
  example: {
    inputs: { class: 'A', temperature: '100C' },
    gives: { value: 0.35, unit: 'dC' },
    within: 0.001,
    source: 'sensorsci.com: class A ±0.35 °C at 100 °C',
    standing: 'published',
  },
};
