import type { Phase } from '../fluids/fluid.ts';
import { EQUIPMENT, METERING_DEVICES } from '../terms/names.ts';
import type { EquipmentId, MeteringId } from '../terms/names.ts';
import { REFRIGERANTS } from '../terms/refrigerants.ts';
import type { Dimension } from '../units/dimensions.ts';
import type { UnitId } from '../units/units.ts';

/** One input of a calculation as it is typed: `key=value`. */
export interface Key {
  readonly name: string;
  readonly optional: boolean;
  readonly accepts:
    | { readonly kind: 'choice'; readonly choices: readonly string[] }
    | {
        readonly kind: 'amount';
        readonly dimensions: readonly Dimension[];
        /** The unit of a number written without one. */
        readonly bare?: UnitId;
      }
    | {
        /** Readings one after another, each as `when:value`. */
        readonly kind: 'series';
        readonly at: SeriesPart;
        readonly value: SeriesPart;
        readonly example: string;
      };
}

export interface SeriesPart {
  readonly dimension: Dimension;
  readonly bare?: UnitId;
}

export const PHASES: readonly Phase[] = ['dew', 'bubble'];

const isEquipment = (id: string): id is EquipmentId => Object.hasOwn(EQUIPMENT, id);
export const EQUIPMENT_IDS: readonly EquipmentId[] = Object.keys(EQUIPMENT).filter(isEquipment);

const isMetering = (id: string): id is MeteringId => Object.hasOwn(METERING_DEVICES, id);
export const METERING_IDS: readonly MeteringId[] = Object.keys(METERING_DEVICES).filter(isMetering);

export const choice = (name: string, choices: readonly string[]): Key => ({
  name,
  optional: false,
  accepts: { kind: 'choice', choices },
});

const amount = (name: string, dimensions: readonly Dimension[]): Key => ({
  name,
  optional: false,
  accepts: { kind: 'amount', dimensions },
});

/** A number of its own with a usual unit: `days=180`, `frequency=60`. */
export const counted = (name: string, dimension: Dimension, bare: UnitId): Key => ({
  name,
  optional: false,
  accepts: { kind: 'amount', dimensions: [dimension], bare },
});

/** Gauge unless the unit ends in a (psia). */
export const pressure = (name: string): Key => amount(name, ['gaugePressure', 'absolutePressure']);
/** A drop or a differential: written as a pressure, but counted from no zero. */
export const pressureDrop = (name: string): Key => amount(name, ['gaugePressure']);
export const temperature = (name: string): Key => amount(name, ['temperature']);
export const temperatureDifference = (name: string): Key => amount(name, ['temperatureDifference']);
export const mass = (name: string): Key => amount(name, ['mass']);
export const voltage = (name: string): Key => amount(name, ['voltage']);
export const current = (name: string): Key => amount(name, ['current']);
export const power = (name: string): Key => amount(name, ['power']);
export const resistance = (name: string): Key => amount(name, ['resistance']);
export const capacitance = (name: string): Key => amount(name, ['capacitance']);
export const length = (name: string): Key => amount(name, ['length']);
export const volume = (name: string): Key => amount(name, ['volume']);

/** `0min:350micron,5min:420micron`: pairs in the order they were read. */
export const series = (
  name: string,
  parts: Record<'at' | 'value', SeriesPart>,
  example: string,
): Key => ({
  name,
  optional: false,
  accepts: { kind: 'series', ...parts, example },
});

export const optional = (key: Key): Key => ({ ...key, optional: true });

export const REFRIGERANT = choice('refrigerant', REFRIGERANTS);
export const PHASE = optional(choice('phase', PHASES));
export const ALTITUDE = optional(amount('altitude', ['length']));
/** Of the air itself, so 29.5 inHg and 1.01 bar are absolute although a gauge's are not. */
export const BAROMETER = optional(amount('barometer', ['absolutePressure', 'gaugePressure']));
export const EQUIPMENT_CLASS = optional(choice('equipment', EQUIPMENT_IDS));
export const METERING = choice('metering', METERING_IDS);
