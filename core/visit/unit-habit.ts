import type { Reading } from '../language/utterance.ts';
import { isSetting } from '../terms/quantities.ts';
import { habitWith, SHOWN_UNITS, type UnitHabit } from '../units/shown-unit.ts';
import type { UnitId } from '../units/units.ts';
import type { VisitState } from './state.ts';

/**
 * The habit once this reading is kept: whoever reads one pressure in bar reads the next one in bar too. It follows from
 * the readings alone, so that it goes with the one that is taken back.
 */
export function habitAfter({ readings, settings }: VisitState, reading: Reading): UnitHabit {
  const { unit, unitFrom } = reading;
  const habit = settings.units;
  if (unitFrom !== 'said' || unit === null) return habit;
  const told = habitWith(habit, unit);
  const isBare = (other: Reading): boolean =>
    other.unitFrom === 'implied' && habitWith(told, other.unit ?? unit) === habit;
  const others = readings.some((entry) => isBare(entry.reading));
  return told !== habit && isOnItsOwnDial(reading) && others ? habit : told;
}

/** What is printed on a control, or read off a nitrogen regulator, may be in the other unit than the gauges. */
const isOnItsOwnDial = ({ quantity }: Reading): boolean =>
  isSetting(quantity) || quantity === 'testPressure';

/** The habit with each of these units in it. */
export const habitOf = (habit: UnitHabit, units: readonly UnitId[]): UnitHabit =>
  units.reduce(habitWith, habit);

/** The units in which bare numbers are taken now, and were not before. */
export function unitsTurned(before: UnitHabit, after: UnitHabit): readonly UnitId[] {
  const was = SHOWN_UNITS[before];
  const { gaugePressure, temperature } = SHOWN_UNITS[after];
  return [
    ...(gaugePressure === was.gaugePressure ? [] : [gaugePressure]),
    ...(temperature === was.temperature ? [] : [temperature]),
  ];
}
