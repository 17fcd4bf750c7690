import { absolutePressure, gaugePressure } from './quantity-values.ts';
import type { AbsolutePressure, GaugePressure } from './quantity-values.ts';
import { toBase } from './convert.ts';

/** 101.325 kPa: ISO 2533:1975 (ICAO standard atmosphere), sea level. */
export const STANDARD_ATMOSPHERE = absolutePressure(101.325);

const SEA_LEVEL_KELVIN = 288.15;
const LAPSE_K_PER_M = 0.0065;
/** g/(R·L) = 9.80665 / (287.05287 × 0.0065) */
const EXPONENT = 5.25588;

/** The standard's layers count geopotential metres: 2 m fewer than the map's at 3,600 m. */
const EARTH_RADIUS_M = 6_356_766;

/** Where the atmosphere's lowest layer holds and people work, in metres. */
export const ALTITUDE_RANGE_M = { low: -500, high: 6000 } as const;

/**
 * The standard air pressure at an altitude in metres; the weather moves it by a few percent.
 * ISO 2533:1975 (= ICAO Doc 7488), lowest layer:
 * p = p0·(1 − L·h/T0)^(g/RL) with h = r·z/(r + z).
 */
export function atmosphereAt(altitudeM: number): AbsolutePressure {
  const geopotentialM = (EARTH_RADIUS_M * altitudeM) / (EARTH_RADIUS_M + altitudeM);
  const warmth = 1 - (LAPSE_K_PER_M * geopotentialM) / SEA_LEVEL_KELVIN;
  return absolutePressure(STANDARD_ATMOSPHERE * warmth ** EXPONENT);
}

/** What a barometer can show where people work: the standard air there, a few percent either way. */
export const BAROMETER_RANGE_KPA = { low: 45, high: 112 } as const;

/**
 * The air around the gauge: what is usual at its altitude, or what a barometer beside it reads. A forecast's
 * pressure is neither: it is reduced to sea level, and at 5,000 ft that is 17 kPa (2.5 psi) too much.
 */
export type LocalAir =
  | { readonly by: 'altitude'; readonly altitudeM: number }
  | { readonly by: 'barometer'; readonly pressure: AbsolutePressure };

export const localAtmosphere = (air: LocalAir): AbsolutePressure =>
  air.by === 'barometer' ? air.pressure : atmosphereAt(air.altitudeM);

/** Inches of mercury below the local atmosphere, as a dial shows vacuum; zero at or above it. */
export function inchesOfVacuum(p: GaugePressure): number {
  return Math.max(0, (0 - p) / toBase({ value: 1, unit: 'inHg' }));
}

/** A vacuum that a dial shows as so many inches, as a (negative) gauge pressure. */
export function vacuumOfInches(inches: number): GaugePressure {
  return gaugePressure(toBase({ value: -inches, unit: 'inHg' }));
}
