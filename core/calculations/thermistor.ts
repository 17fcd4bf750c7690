import { resistance, temperature } from '../units/quantity-values.ts';
import type { Resistance, Temperature, TemperatureDifference } from '../units/quantity-values.ts';
import { known, outside, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import { KELVIN_AT_ZERO_C } from './nitrogen-pressure.ts';

/** Where thermistors of refrigeration controls live; outside it the formulas are extrapolated. */
const TEMPERATURES = { low: -80, high: 200, unit: 'degC' } as const;
const RATED_AT = temperature(25);

export interface BetaSensor {
  /** Resistance at `ratedAt`, 25 °C unless given. */
  readonly rated: Resistance;
  readonly ratedAt?: Temperature;
  /** K. */
  readonly beta: TemperatureDifference;
}

const kelvinOf = (at: Temperature): number => at + KELVIN_AT_ZERO_C;

const isSensor = ({ rated, beta }: BetaSensor): boolean => rated > 0 && beta > 0;

/** What an NTC sensor shows at a temperature, by its beta. */
export function thermistorResistance(
  input: BetaSensor & { readonly at: Temperature },
): Calculated<Resistance> {
  const { rated, beta, at, ratedAt = RATED_AT } = input;
  if (!isSensor(input)) return refused('notPositive');
  const beyond = outside(at, TEMPERATURES) ?? outside(ratedAt, TEMPERATURES);
  if (beyond !== null) return beyond;
  const ohms = rated * Math.exp(beta * (1 / kelvinOf(at) - 1 / kelvinOf(ratedAt)));
  return Number.isFinite(ohms) ? known(resistance(ohms)) : refused('readingsDoNotFit');
}

/** The temperature of an NTC sensor by its beta. */
export function thermistorTemperature(
  input: BetaSensor & { readonly resistance: Resistance },
): Calculated<Temperature> {
  const { rated, beta, ratedAt = RATED_AT } = input;
  if (!isSensor(input) || !(input.resistance > 0)) return refused('notPositive');
  const beyond = outside(ratedAt, TEMPERATURES);
  if (beyond !== null) return beyond;
  const inverse = 1 / kelvinOf(ratedAt) + Math.log(input.resistance / rated) / beta;
  return inRange(1 / inverse - KELVIN_AT_ZERO_C);
}

function inRange(celsius: number): Calculated<Temperature> {
  return outside(celsius, TEMPERATURES) ?? known(temperature(celsius));
}

export interface SensorPoint {
  readonly at: Temperature;
  readonly resistance: Resistance;
}

interface Coefficients {
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

/** Steinhart–Hart through three points of a maker's table; null where they do not make an NTC's curve. */
function coefficientsOf(points: readonly SensorPoint[]): Coefficients | null {
  const [first, second, third] = points.map(({ at, resistance: ohms }) => ({
    log: Math.log(ohms),
    inverse: 1 / kelvinOf(at),
  }));
  if (first === undefined || second === undefined || third === undefined) return null;
  const slope2 = (second.inverse - first.inverse) / (second.log - first.log);
  const slope3 = (third.inverse - first.inverse) / (third.log - first.log);
  const c = (slope3 - slope2) / (third.log - second.log) / (first.log + second.log + third.log);
  const b = slope2 - c * (first.log ** 2 + first.log * second.log + second.log ** 2);
  const a = first.inverse - (b + c * first.log ** 2) * first.log;
  const falls = ({ log }: { log: number }): boolean => b + 3 * c * log ** 2 > 0;
  return Number.isFinite(a) && [first, second, third].every(falls) ? { a, b, c } : null;
}

export interface SteinhartHart {
  readonly temperature: Temperature;
  readonly points: 'between' | 'beyond';
}

/** The temperature of an NTC sensor from three points of its maker's table. */
export function steinhartHart(input: {
  readonly points: readonly SensorPoint[];
  readonly resistance: Resistance;
}): Calculated<SteinhartHart> {
  const { points, resistance: ohms } = input;
  if (points.length < 3) return refused('tooFewReadings');
  if (points.length > 3) return refused('readingsDoNotFit');
  if (!(ohms > 0) || points.some((point) => !(point.resistance > 0))) return refused('notPositive');
  const beyond = points.map(({ at }) => outside(at, TEMPERATURES)).find((each) => each !== null);
  if (beyond !== undefined) return beyond;
  const found = coefficientsOf(points);
  if (found === null) return refused('readingsDoNotFit');
  const log = Math.log(ohms);
  const at = inRange(1 / (found.a + found.b * log + found.c * log ** 3) - KELVIN_AT_ZERO_C);
  if (at.kind === 'refused') return at;
  const all = points.map((point) => point.resistance);
  const between = ohms <= Math.max(...all) && ohms >= Math.min(...all);
  return known({ temperature: at.value, points: between ? 'between' : 'beyond' });
}

const BETA_SYMBOLS = symbols(
  ['R, R0', 'resistance, and rated resistance at T0', 'Ω'],
  ['T, T0', 'temperature, and rated temperature (25 °C unless given)', 'K'],
  ['β', 'maker’s constant between two temperatures', 'K'],
);
const BETA_RANGE =
  '−80 to 200 °C; exact at the two temperatures that β was made from, a degree or two off elsewhere';
const BETA_SOURCE =
  'definition of β as printed in an air conditioner maker’s manual (manualshive.com PLH-P3AAH, page 48)';

export const thermistorResistanceFormula: Formula = {
  id: 'thermistorResistance',
  name: 'resistance of a thermistor by beta',
  equation: 'R = R0 · e^(β·(1/T − 1/T0))',
  symbols: BETA_SYMBOLS,
  range: BETA_RANGE,
  source: BETA_SOURCE,
  standing: 'published',
  example: {
    inputs: { rated: '15000ohm', ratedAt: '0C', beta: '3480', temperature: '20C' },
    gives: { value: 6300, unit: 'ohm' },
    within: 50,
    source: 'the same page: 15 kΩ at 0 °C, 6.3 kΩ at 20 °C',
    standing: 'published',
  },
};

export const thermistorTemperatureFormula: Formula = {
  id: 'thermistorTemperature',
  name: 'temperature of a thermistor by beta',
  equation: '1/T = 1/T0 + ln(R/R0)/β',
  symbols: BETA_SYMBOLS,
  range: BETA_RANGE,
  source: BETA_SOURCE,
  standing: 'published',
  example: {
    inputs: { rated: '7465ohm', ratedAt: '120C', beta: '4057', resistance: '13000ohm' },
    gives: { value: 100, unit: 'degC' },
    within: 0.15,
    source:
      'an air conditioner maker’s manual PCH-2.5, page 54: 7.465 kΩ at 120 °C, 13.0 kΩ at 100 °C, to 0.05 kΩ',
    standing: 'published',
  },
};

export const steinhartHartFormula: Formula = {
  id: 'steinhartHart',
  name: 'temperature of a thermistor from three points',
  equation: '1/T = a + b·ln R + c·(ln R)³ through three points',
  symbols: symbols(
    ['R', 'resistance', 'Ω'],
    ['T', 'temperature', 'K'],
    ['a, b, c', 'solved from three points of the maker’s table', 'K⁻¹'],
  ),
  range:
    '−80 to 200 °C; best between the three points, which should lie around the temperature wanted',
  source: 'Steinhart and Hart 1968; manualsdump.com, LDT-5525 manual, appendix A',
  standing: 'published',
  example: {
    inputs: { points: '0C:32128ohm,20C:12262ohm,50C:3542ohm', resistance: '9814ohm' },
    gives: { value: 25, unit: 'degC' },
    within: 0.01,
    source: 'manualsdump.com, LDT-5525 manual, table A.1: 9,814 Ω at 25 °C, fit within 0.01 °C',
    standing: 'published',
  },
};
