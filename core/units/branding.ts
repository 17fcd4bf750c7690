/** Between an amount as it was said and the branded value a calculation takes: null when it is of another dimension. */
import type { Amount } from './amount.ts';
import { dimensionOf, fromBase, toBase } from './convert.ts';
import type { Dimension } from './dimensions.ts';
import {
  absolutePressure,
  capacitance,
  current,
  duration,
  frequency,
  gaugePressure,
  length,
  mass,
  power,
  ratio,
  resistance,
  temperature,
  temperatureDifference,
  voltage,
} from './quantity-values.ts';
import type {
  AbsolutePressure,
  Capacitance,
  Current,
  Duration,
  Frequency,
  GaugePressure,
  Length,
  Mass,
  Power,
  Ratio,
  Resistance,
  Temperature,
  TemperatureDifference,
  Voltage,
} from './quantity-values.ts';
import type { UnitOf } from './units.ts';

const edge =
  <Value>(dimension: Dimension, brand: (base: number) => Value) =>
  (amount: Amount): Value | null =>
    dimensionOf(amount) === dimension ? brand(toBase(amount)) : null;

export const toGaugePressure = edge<GaugePressure>('gaugePressure', gaugePressure);
export const toTemperature = edge<Temperature>('temperature', temperature);
export const toTemperatureDifference = edge<TemperatureDifference>(
  'temperatureDifference',
  temperatureDifference,
);
export const toVoltage = edge<Voltage>('voltage', voltage);
export const toCurrent = edge<Current>('current', current);
export const toResistance = edge<Resistance>('resistance', resistance);
export const toCapacitance = edge<Capacitance>('capacitance', capacitance);
export const toPower = edge<Power>('power', power);
export const toFrequency = edge<Frequency>('frequency', frequency);
export const toMass = edge<Mass>('mass', mass);
export const toDuration = edge<Duration>('duration', duration);
export const toLength = edge<Length>('length', length);
export const toRatio = edge<Ratio>('ratio', ratio);

const toAbsoluteReading = edge<AbsolutePressure>('absolutePressure', absolutePressure);

/** A dial reads against the air around it, so what it means depends on the local atmosphere. */
export function toAbsolutePressure(
  gauge: GaugePressure,
  atmosphere: AbsolutePressure,
): AbsolutePressure {
  return absolutePressure(gauge + atmosphere);
}

/** What a dial would read here at that absolute pressure. */
export function toGaugeReading(
  absolute: AbsolutePressure,
  atmosphere: AbsolutePressure,
): GaugePressure {
  return gaugePressure(absolute - atmosphere);
}

/** Any pressure, gauge or absolute by its unit. */
export function toAnyPressure(
  amount: Amount,
  atmosphere: AbsolutePressure,
): AbsolutePressure | null {
  const gauge = toGaugePressure(amount);
  return gauge === null ? toAbsoluteReading(amount) : toAbsolutePressure(gauge, atmosphere);
}

export const fromGaugePressure = (p: GaugePressure, unit: UnitOf<'gaugePressure'>): Amount =>
  fromBase(p, unit);
export const fromAbsolutePressure = (
  p: AbsolutePressure,
  unit: UnitOf<'absolutePressure'>,
): Amount => fromBase(p, unit);
export const fromTemperature = (t: Temperature, unit: UnitOf<'temperature'>): Amount =>
  fromBase(t, unit);
export const fromTemperatureDifference = (
  d: TemperatureDifference,
  unit: UnitOf<'temperatureDifference'>,
): Amount => fromBase(d, unit);
export const fromVoltage = (v: Voltage, unit: UnitOf<'voltage'>): Amount => fromBase(v, unit);
export const fromCurrent = (i: Current, unit: UnitOf<'current'>): Amount => fromBase(i, unit);
export const fromCapacitance = (c: Capacitance, unit: UnitOf<'capacitance'>): Amount =>
  fromBase(c, unit);
export const fromMass = (m: Mass, unit: UnitOf<'mass'>): Amount => fromBase(m, unit);
export const fromRatio = (r: Ratio, unit: UnitOf<'ratio'>): Amount => fromBase(r, unit);
