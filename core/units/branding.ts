/** Between an amount as it was said and the branded value a calculation takes: null when it is of another dimension. */
import type { Amount } from './amount.ts';
import { dimensionOf, fromBase, toBase } from './convert.ts';
import type { Dimension } from './dimensions.ts';
import {
  absolutePressure,
  capacitance,
  current,
  duration,
  gaugePressure,
  mass,
  power,
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
  GaugePressure,
  Mass,
  Power,
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
export const toMass = edge<Mass>('mass', mass);
export const toDuration = edge<Duration>('duration', duration);

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
export const fromTemperatureDifference = (
  d: TemperatureDifference,
  unit: UnitOf<'temperatureDifference'>,
): Amount => fromBase(d, unit);
