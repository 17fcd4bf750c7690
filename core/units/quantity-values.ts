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
/** kPa between two points: a line's drop, a control's differential. */
export type PressureDifference = Branded<'PressureDifference'>;
/** V between two points. */
export type Voltage = Branded<'Voltage'>;
/** V from one point to ground: it says nothing about a switch, and never that a circuit is dead. */
export type VoltageToGround = Branded<'VoltageToGround'>;
/** A. */
export type Current = Branded<'Current'>;
/** Ω. */
export type Resistance = Branded<'Resistance'>;
/** W. */
export type Power = Branded<'Power'>;
/** VA: watts only once a power factor was measured. */
export type ApparentPower = Branded<'ApparentPower'>;
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
/** L. */
export type Volume = Branded<'Volume'>;
/** g of gas in a m³ of air. */
export type Concentration = Branded<'Concentration'>;
/** t of carbon dioxide that would warm as much. */
export type CarbonDioxideEquivalent = Branded<'CarbonDioxideEquivalent'>;
/** kg/m³. */
export type Density = Branded<'Density'>;
/** kJ/kg between two states of the same substance. */
export type SpecificEnthalpyDifference = Branded<'SpecificEnthalpyDifference'>;
/** A share of one: 0.02 is two percent, 8 is eight to one. */
export type Ratio = Branded<'Ratio'>;

export const gaugePressure = (kPa: number): GaugePressure => kPa as GaugePressure;
export const absolutePressure = (kPa: number): AbsolutePressure => kPa as AbsolutePressure;
export const temperature = (degC: number): Temperature => degC as Temperature;
export const temperatureDifference = (kelvin: number): TemperatureDifference =>
  kelvin as TemperatureDifference;
export const pressureDifference = (kPa: number): PressureDifference => kPa as PressureDifference;
export const voltage = (V: number): Voltage => V as Voltage;
export const voltageToGround = (V: number): VoltageToGround => V as VoltageToGround;
export const current = (A: number): Current => A as Current;
export const resistance = (ohm: number): Resistance => ohm as Resistance;
export const power = (W: number): Power => W as Power;
export const apparentPower = (VA: number): ApparentPower => VA as ApparentPower;
export const capacitance = (microfarad: number): Capacitance => microfarad as Capacitance;
export const frequency = (Hz: number): Frequency => Hz as Frequency;
export const mass = (g: number): Mass => g as Mass;
export const duration = (min: number): Duration => min as Duration;
export const length = (m: number): Length => m as Length;
export const volume = (litres: number): Volume => litres as Volume;
export const concentration = (gPerM3: number): Concentration => gPerM3 as Concentration;
export const carbonDioxideEquivalent = (tonnes: number): CarbonDioxideEquivalent =>
  tonnes as CarbonDioxideEquivalent;
export const density = (kgPerM3: number): Density => kgPerM3 as Density;
export const specificEnthalpyDifference = (kJPerKg: number): SpecificEnthalpyDifference =>
  kJPerKg as SpecificEnthalpyDifference;
export const ratio = (share: number): Ratio => share as Ratio;

declare const line: unique symbol;
/** A temperature on a saturation line: as good as any other, but dew is not bubble. */
export type SaturationTemperature<Line extends 'dew' | 'bubble'> = Temperature & {
  readonly [line]: Line;
};

export const saturationTemperature = <Line extends 'dew' | 'bubble'>(
  degC: number,
): SaturationTemperature<Line> => degC as SaturationTemperature<Line>;

/** Vapour is superheated by what it is above dew; above bubble would be the glide too much. */
export const aboveDew = (
  vapour: Temperature,
  dew: SaturationTemperature<'dew'>,
): TemperatureDifference => difference(vapour, dew);

/** Liquid is subcooled by what it is below bubble. */
export const belowBubble = (
  liquid: Temperature,
  bubble: SaturationTemperature<'bubble'>,
): TemperatureDifference => difference(bubble, liquid);

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

/** kPa for a written constant: controls are set in psi. */
export const differencePsi = (psi: number): PressureDifference =>
  pressureDifference(psi * 6.894757293168); // NIST SP 811, appendix B.8

/** °F for a written constant: the trade's tables are in Fahrenheit. */
export const degreesF = (degF: number): Temperature => temperature(((degF - 32) * 5) / 9);
export const differenceF = (degF: number): TemperatureDifference =>
  temperatureDifference((degF * 5) / 9);
