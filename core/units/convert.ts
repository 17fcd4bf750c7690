import type { Amount } from './amount.ts';
import type { Dimension } from './dimensions.ts';
import { unitRow } from './units.ts';
import type { UnitId } from './units.ts';

/** The value in its dimension's base unit (kPa, °C, K, V, A, Ω, µF, W, VA, g, min, Hz, m, L, g/m³, t CO₂e). */
export function toBase({ value, unit }: Amount): number {
  const { factor, offset } = unitRow(unit);
  return value * factor + offset;
}

export function fromBase(base: number, unit: UnitId): Amount {
  const { factor, offset } = unitRow(unit);
  return { value: (base - offset) / factor, unit };
}

export function dimensionOf(amount: Amount): Dimension {
  return unitRow(amount.unit).dimension;
}

/** The same amount in another unit; null across dimensions: gauge is not absolute, a point not a difference. */
export function convert(amount: Amount, unit: UnitId): Amount | null {
  if (amount.unit === unit) return amount;
  if (dimensionOf(amount) !== unitRow(unit).dimension) return null;
  return fromBase(toBase(amount), unit);
}
