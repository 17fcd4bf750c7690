import { difference, temperature, temperatureDifference } from '../units/quantity-values.ts';
import type {
  AbsolutePressure,
  Temperature,
  TemperatureDifference,
} from '../units/quantity-values.ts';
import { andThen, known, refused } from './calculated.ts';
import type { Calculated } from './calculated.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';
import { waterBoilingPoint } from './water-vapour.ts';

const ICE_POINT = temperature(0);

/** One food authority's ±1 °C; another text has ±2 °F, which is 1.1 K. A shop may set its own. */
export const THERMOMETER_TOLERANCE = temperatureDifference(1);

export interface ThermometerCheck {
  readonly expected: Temperature;
  /** Reading less what it should be; null where nothing was read. */
  readonly error: TemperatureDifference | null;
  readonly verdict: 'within' | 'off' | 'notRead';
}

function judged(
  expected: Temperature,
  reading: Temperature | undefined,
  tolerance: TemperatureDifference,
): ThermometerCheck {
  if (reading === undefined) return { expected, error: null, verdict: 'notRead' };
  const error = difference(reading, expected);
  return { expected, error, verdict: Math.abs(error) <= tolerance + 1e-9 ? 'within' : 'off' };
}

/** A probe in crushed ice and water: 0 °C whatever the altitude (0.01 K at most). */
export function iceBathCheck(input: {
  readonly reading: Temperature;
  readonly tolerance?: TemperatureDifference;
}): Calculated<ThermometerCheck> {
  const { reading, tolerance = THERMOMETER_TOLERANCE } = input;
  if (!(tolerance > 0)) return refused('notPositive');
  return known(judged(ICE_POINT, reading, tolerance));
}

/** A thermometer in boiling water under the local air. */
export function boilingPointCheck(input: {
  readonly atmosphere: AbsolutePressure;
  readonly reading?: Temperature;
  readonly tolerance?: TemperatureDifference;
}): Calculated<ThermometerCheck> {
  const { atmosphere, reading, tolerance = THERMOMETER_TOLERANCE } = input;
  if (!(tolerance > 0)) return refused('notPositive');
  return andThen(waterBoilingPoint(atmosphere), (expected) =>
    known(judged(expected, reading, tolerance), 'steamBurns'),
  );
}

const TOLERANCE_SOURCE = 'cataptyltd.com: ±1 °C at ice and boiling point; blog.etundra.com: ±2 °F';

export const iceBathCheckFormula: Formula = {
  id: 'iceBathCheck',
  name: 'probe in an ice bath',
  equation: 'error = T − 0 °C',
  symbols: symbols(['T', 'reading in crushed ice and water, once steady', '°C']),
  range: 'any altitude; stirred, the probe off the ice and the walls; tolerance ±1 °C unless given',
  source: TOLERANCE_SOURCE,
  standing: 'published',
  example: {
    inputs: { reading: '33F' },
    gives: { value: 1, unit: 'dF' },
    within: 0.001,
    source: 'straighthealth.com: it should read 32 °F',
    standing: 'published',
  },
};

export const boilingPointCheckFormula: Formula = {
  id: 'boilingPointCheck',
  name: 'thermometer in boiling water',
  equation: 'pw(Tb) = p0; error = T − Tb',
  symbols: symbols(
    ['pw', 'vapour pressure of water', 'kPa'],
    ['p0', 'air pressure by altitude or barometer', 'kPa'],
    ['Tb', 'boiling point there', '°C'],
    ['T', 'reading', '°C'],
  ),
  range:
    'standard air at the altitude unless a barometer is given: the weather moves it by a degree or two; rolling boil, clean water',
  source: `IAPWS SR1-86(1992) and ISO 2533:1975; ${TOLERANCE_SOURCE}`,
  standing: 'published',
  example: {
    inputs: { altitude: '0ft' },
    gives: { value: 212, unit: 'degF' },
    within: 0.05,
    source: 'straighthealth.com, altitude adjustments: 212.0 °F at sea level',
    standing: 'published',
  },
};
