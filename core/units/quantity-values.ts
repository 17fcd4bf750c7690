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

export const gaugePressure = (kPa: number): GaugePressure => kPa as GaugePressure;
export const absolutePressure = (kPa: number): AbsolutePressure => kPa as AbsolutePressure;
export const temperature = (degC: number): Temperature => degC as Temperature;
export const temperatureDifference = (kelvin: number): TemperatureDifference =>
  kelvin as TemperatureDifference;
