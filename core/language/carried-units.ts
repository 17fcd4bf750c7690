import type { UnitId } from '../units/units.ts';
import type { Context } from './context.ts';
import { withMore } from './measure.ts';
import { isPlausible } from './plausible.ts';
import type { Reading } from './utterance.ts';

const OTHER_SIDE: Partial<Record<Reading['quantity'], Reading['quantity']>> = {
  headPressure: 'suctionPressure',
  suctionPressure: 'headPressure',
};

/** A vacuum in inches and a pressure in pounds are read off one gauge. */
const isOfWholeGauge = (unit: UnitId | null): boolean => unit !== null && unit !== 'inHg';

/**
 * "Two point one bar on the low side, fourteen and a half on the high": the side without a unit takes the other's, where
 * it can be so high.
 *
 * @returns the readings themselves where none takes another's unit.
 */
export function withCarriedUnits(all: readonly Reading[], context: Context): readonly Reading[] {
  if (!all.some((reading) => reading.unitFrom === 'said' && OTHER_SIDE[reading.quantity]))
    return all;
  return all.map((reading) => carried(reading, unitOfOther(reading, all), context));
}

/** The same by the unit in which the other side was told before. */
export function withUnitBefore(reading: Reading, context: Context): Reading {
  const other = OTHER_SIDE[reading.quantity];
  const known =
    other === 'headPressure' || other === 'suctionPressure' ? context[other]?.unit : null;
  return carried(reading, known ?? null, context);
}

function unitOfOther({ quantity }: Reading, all: readonly Reading[]): UnitId | null {
  const other = OTHER_SIDE[quantity];
  const told = all.find((each) => each.quantity === other && each.unitFrom === 'said');
  return told?.unit ?? null;
}

function carried(reading: Reading, unit: UnitId | null, { refrigerant }: Context): Reading {
  const { quantity, value, unitFrom } = reading;
  if (unitFrom !== 'implied' || value === undefined || unit === reading.unit) return reading;
  if (unit === null || !isOfWholeGauge(unit)) return reading;
  return isPlausible(quantity, { value, unit }, refrigerant)
    ? withMore(reading, { unit })
    : reading;
}
