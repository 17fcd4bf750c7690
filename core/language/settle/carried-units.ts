import { isOnScale, QUANTITIES } from '../../terms/quantities.ts';
import type { UnitId } from '../../units/units.ts';
import type { Context } from '../context.ts';
import { isPlausible } from '../numbers/plausible.ts';
import type { Reading } from '../utterance.ts';

const OTHER_SIDE: Partial<Record<Reading['quantity'], Reading['quantity']>> = {
  headPressure: 'suctionPressure',
  suctionPressure: 'headPressure',
};

/** A vacuum in inches and a pressure in pounds are read off one gauge. */
const isOfWholeGauge = (unit: UnitId | null): boolean => unit !== null && unit !== 'inHg';

/**
 * "Two point one bar on the low side, fourteen and a half on the high", "air off four celsius, air on nine": what is told
 * without a unit takes the one that was said beside it, where it can be so high.
 *
 * @returns the readings themselves where none takes another's unit.
 */
export function withCarriedUnits(all: readonly Reading[], context: Context): readonly Reading[] {
  if (all.length < 2 || !all.some(({ unitFrom }) => unitFrom === 'said')) return all;
  return all.map((reading) => carried(reading, unitBeside(reading, all), context));
}

/** The same by the unit in which the other side was told before. */
export function withUnitBefore(reading: Reading, context: Context): Reading {
  const other = OTHER_SIDE[reading.quantity];
  const known =
    other === 'headPressure' || other === 'suctionPressure' ? context[other]?.unit : null;
  return carried(reading, known ?? null, context);
}

function unitBeside(reading: Reading, all: readonly Reading[]): UnitId | null {
  const { quantity, unitFrom } = reading;
  if (unitFrom === 'unknown' && isOnScale(quantity)) return weightBeside(all);
  if (unitFrom !== 'implied') return null;
  const other = OTHER_SIDE[quantity];
  if (other !== undefined) {
    return all.find((each) => each.quantity === other && each.unitFrom === 'said')?.unit ?? null;
  }
  switch (QUANTITIES[quantity].dimension) {
    case 'gaugePressure':
      return (
        all.find((each) => each.quantity === quantity && each.unitFrom === 'said')?.unit ?? null
      );
    case 'temperature':
      return scaleBeside(reading, all);
    case 'temperatureDifference':
      return all.some(
        ({ unitFrom: from, unit }) => from === 'said' && (unit === 'degC' || unit === 'dC'),
      )
        ? 'dC'
        : null;
    default:
      return null;
  }
}

/** "Cylinder weighs thirty two pounds, tare is sixteen". Ounces may be those of pounds and ounces: a bare number is none of them. */
function weightBeside(all: readonly Reading[]): UnitId | null {
  const beside = all.find(({ quantity, unitFrom }) => isOnScale(quantity) && unitFrom === 'said');
  return beside?.unit === 'oz' ? null : (beside?.unit ?? null);
}

/** No two temperatures that are told in one breath on one scale lie further apart. Ours. */
const MOST_APART = 30;

/** No box that is kept cold is warmer, by the scale in which so few degrees are that warm. Ours. */
const WARMEST_BOX = 20;
const isTooWarm = ({ quantity, value = 0 }: Reading, unit: UnitId | null): boolean =>
  unit === 'degC' && IN_THE_COLD.has(quantity) && value > WARMEST_BOX;
const IN_THE_COLD: ReadonlySet<Reading['quantity']> = new Set([
  'boxTemp',
  'setpointTemp',
  'supplyAirTemp',
]);

/** "Air off four celsius, air on nine"; but a box at 38 beside air at 4 °C is on the other scale. */
function scaleBeside({ value }: Reading, all: readonly Reading[]): UnitId | null {
  const beside = all.find(
    (each) =>
      each.unitFrom === 'said' &&
      QUANTITIES[each.quantity].dimension === 'temperature' &&
      Math.abs((each.value ?? NaN) - (value ?? NaN)) < MOST_APART,
  );
  return beside?.unit ?? null;
}

function carried(reading: Reading, unit: UnitId | null, { refrigerant }: Context): Reading {
  if (isTooWarm(reading, unit)) return reading;
  const { quantity, value, unitFrom } = reading;
  if (unitFrom === 'said' || value === undefined || unit === reading.unit) return reading;
  if (unit === null || !isOfWholeGauge(unit)) return reading;
  return isPlausible(quantity, { value, unit }, refrigerant)
    ? { ...reading, unit, unitFrom: 'implied' }
    : reading;
}
