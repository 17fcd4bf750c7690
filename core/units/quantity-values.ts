/**
 * Branded numbers in base units. A plain number becomes one only through a constructor here, and two brands
 * never meet in one sum: gauge is not absolute pressure, a temperature is not a temperature difference.
 */
declare const brand: unique symbol;
type Branded<Name extends string> = number & { readonly [brand]: Name };

/** kPa above the local atmosphere. */
export type GaugePressure = Branded<'GaugePressure'>;
/** kPa above nothing. */
export type AbsolutePressure = Branded<'AbsolutePressure'>;
/** °C, a point on the scale. */
export type Temperature = Branded<'Temperature'>;
/** K, a distance between two points. */
export type TemperatureDifference = Branded<'TemperatureDifference'>;
/** V between two points. */
export type Voltage = Branded<'Voltage'>;
/** A. */
export type Current = Branded<'Current'>;
/** µF. */
export type Capacitance = Branded<'Capacitance'>;
/** Hz. */
export type Frequency = Branded<'Frequency'>;
/** g. */
export type Mass = Branded<'Mass'>;
/** min. */
export type Duration = Branded<'Duration'>;
/** m. */
export type Length = Branded<'Length'>;
/** A share of one: 0.02 is two percent, 8 is eight to one. */
export type Ratio = Branded<'Ratio'>;

export const gaugePressure = (kPa: number): GaugePressure => kPa as GaugePressure;
export const absolutePressure = (kPa: number): AbsolutePressure => kPa as AbsolutePressure;
export const temperature = (degC: number): Temperature => degC as Temperature;
export const temperatureDifference = (kelvin: number): TemperatureDifference =>
  kelvin as TemperatureDifference;
export const voltage = (V: number): Voltage => V as Voltage;
export const current = (A: number): Current => A as Current;
export const capacitance = (microfarad: number): Capacitance => microfarad as Capacitance;
export const frequency = (Hz: number): Frequency => Hz as Frequency;
export const mass = (g: number): Mass => g as Mass;
export const duration = (min: number): Duration => min as Duration;
export const length = (m: number): Length => m as Length;
export const ratio = (share: number): Ratio => share as Ratio;

/** How far `a` lies above `b`. */
export function difference(a: Temperature, b: Temperature): TemperatureDifference {
  return temperatureDifference(a - b);
}

export function raise(point: Temperature, by: TemperatureDifference): Temperature {
  return temperature(point + by);
}

export function lower(point: Temperature, by: TemperatureDifference): Temperature {
  return temperature(point - by);
}

/** °F for a written constant: the trade's tables are in Fahrenheit. */
export const degreesF = (degF: number): Temperature => temperature(((degF - 32) * 5) / 9);
export const differenceF = (degF: number): TemperatureDifference =>
  temperatureDifference((degF * 5) / 9);
