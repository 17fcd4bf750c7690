import { absolutePressure, temperature } from '../units/quantity-values.ts';
import type { AbsolutePressure, Temperature } from '../units/quantity-values.ts';
import { known, outside } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import { KELVIN_AT_ZERO_C } from './nitrogen-pressure.ts';

export const TRIPLE_POINT = { kelvin: 273.16, kPa: 0.611657 } as const;
const CRITICAL_POINT = { kelvin: 647.096, kPa: 22064 } as const;
const RANGE = { low: -90, high: 200, unit: 'degC' } as const;

type Terms = readonly (readonly [coefficient: number, power: number])[];

/** Wagner and Pruß, IAPWS SR1-86(1992), equation 1. */
const OVER_WATER: Terms = [
  [-7.85951783, 1],
  [1.84408259, 1.5],
  [-11.7866497, 3],
  [22.6807411, 3.5],
  [-15.9618719, 4],
  [1.80122502, 7.5],
];
/** IAPWS R14-08(2011), equation 6. */
const OVER_ICE: Terms = [
  [-21.2144006, 0.00333333333],
  [27.3203819, 1.20666667],
  [-6.1059813, 1.70333333],
];

const sum = (terms: Terms, x: number): number =>
  terms.reduce((total, [coefficient, power]) => total + coefficient * x ** power, 0);

/** kPa, from K. */
function pressureAt(kelvin: number): number {
  if (kelvin < TRIPLE_POINT.kelvin) {
    const theta = kelvin / TRIPLE_POINT.kelvin;
    return TRIPLE_POINT.kPa * Math.exp(sum(OVER_ICE, theta) / theta);
  }
  const tau = 1 - kelvin / CRITICAL_POINT.kelvin;
  return CRITICAL_POINT.kPa * Math.exp((CRITICAL_POINT.kelvin / kelvin) * sum(OVER_WATER, tau));
}

const pressureAtC = (celsius: number): AbsolutePressure =>
  absolutePressure(pressureAt(celsius + KELVIN_AT_ZERO_C));

/** The pressure at which water boils, or ice sublimes, at a temperature. */
export function waterVapourPressure(at: Temperature): Calculated<AbsolutePressure> {
  return outside(at, RANGE) ?? known(pressureAtC(at));
}

const PRESSURES = {
  low: pressureAtC(RANGE.low),
  high: pressureAtC(RANGE.high),
  unit: 'kPaa',
} as const;

/** The temperature at which water boils at a pressure; below the triple point, the frost point. */
export function waterBoilingPoint(at: AbsolutePressure): Calculated<Temperature> {
  const beyond = outside(at, PRESSURES);
  if (beyond !== null) return beyond;
  let { low, high }: { low: number; high: number } = RANGE;
  // Half of 290 K forty times over: 3·10⁻¹⁰ K.
  for (let round = 0; round < 40; round += 1) {
    const middle = (low + high) / 2;
    if (pressureAtC(middle) < at) low = middle;
    else high = middle;
  }
  return known(temperature((low + high) / 2));
}

export const isIce = (at: Temperature): boolean => at + KELVIN_AT_ZERO_C < TRIPLE_POINT.kelvin;

const SYMBOLS = symbols(
  ['p', 'vapour pressure, absolute', 'kPa'],
  ['T', 'temperature', 'K'],
  ['Tc, pc', 'critical point, 647.096 and 22,064', 'K, kPa'],
  ['Tt, pt', 'triple point, 273.16 and 0.611657', 'K, kPa'],
  ['τ, θ', '1 − T/Tc, and T/Tt', '1'],
  ['ai, bi', 'coefficients and powers of the releases', '1'],
);
const EQUATION = 'water: ln(p/pc) = Tc/T · Σ ai τ^bi; ice: ln(p/pt) = 1/θ · Σ ai θ^bi';
const SOURCE =
  'IAPWS SR1-86(1992), equation 1 (Wagner and Pruß 1993), over water; IAPWS R14-08(2011), equation 6, over ice';

export const waterVapourPressureFormula: Formula = {
  id: 'waterVapourPressure',
  name: 'pressure at which water boils or ice sublimes',
  equation: EQUATION,
  symbols: SYMBOLS,
  range: '−90 to 200 °C; pure water, over ice below 0.01 °C',
  source: SOURCE,
  standing: 'published',
  example: {
    inputs: { temperature: '26.85C' },
    gives: { value: 26530, unit: 'micron' },
    within: 6,
    source: 'Perry’s Handbook, 9th edition, table 2-135: 0.003537 MPa at 300 K',
    standing: 'published',
  },
};

export const waterBoilingPointFormula: Formula = {
  id: 'waterBoilingPoint',
  name: 'temperature at which water boils or ice sublimes',
  equation: `${EQUATION}, solved for T`,
  symbols: SYMBOLS,
  range: '−90 to 200 °C; below 4,588 micron it is the frost point',
  source: SOURCE,
  standing: 'published',
  example: {
    inputs: { pressure: '6.231kPaa' },
    gives: { value: 36.85, unit: 'degC' },
    within: 0.003,
    source: 'Perry’s Handbook, 9th edition, table 2-135: 0.006231 MPa at 310 K',
    standing: 'published',
  },
};
