import type { AnswerableId } from '../terms/quantities.ts';
import type { Amount } from '../units/amount.ts';
import { convert } from '../units/convert.ts';
import { SHOWN_UNITS } from '../units/shown-unit.ts';
import { unitRow, type UnitId } from '../units/units.ts';
import type { VisitState } from '../visit/state.ts';
import type { Deviation, Direction } from './verdict.ts';

/** Nearer than this a reading is on its target: published tables themselves differ by 1 °F. */
const SAME_KELVIN = 5 / 9;

/** The unit a difference of two such values is given in. */
export function differenceUnit(unit: UnitId, state: VisitState): UnitId {
  return unitRow(unit).dimension === 'temperature'
    ? SHOWN_UNITS[state.settings.units].temperatureDifference
    : unit;
}

/** How far a reading lies from where it should be, in the reading's unit; null across dimensions. */
export function deviation(reading: Amount, target: Amount, state: VisitState): Deviation | null {
  const same = convert(reading, target.unit);
  if (!same) return null;
  const off = same.value - target.value;
  const unit = differenceUnit(target.unit, state);
  return { measured: same.value, value: Math.abs(off), unit, direction: directionOf(off, unit) };
}

/** By temperature alone: what a psi is worth in degrees depends on where on the curve it is. */
function directionOf(off: number, unit: UnitId): Direction {
  const { dimension, factor } = unitRow(unit);
  const near = dimension === 'temperatureDifference' ? SAME_KELVIN / factor : 0;
  if (Math.abs(off) <= near + 1e-9) return 'on';
  return off > 0 ? 'over' : 'under';
}

/** The saturated temperature that a pressure is judged by. */
export const COIL_OF: Partial<Record<AnswerableId, 'condensingTemp' | 'evaporatingTemp'>> = {
  headPressure: 'condensingTemp',
  suctionPressure: 'evaporatingTemp',
};
