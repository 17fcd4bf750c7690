import { z } from 'zod';
import { MONTHS, PERIODS, WEEKDAYS } from '../terms/calendar.ts';
import { JUDGED } from '../terms/judged.ts';
import {
  CONDENSERS,
  CONDENSING_UNITS,
  EQUIPMENT,
  FINDING_STATES,
  HEAD_CONTROLS,
  METERING_DEVICES,
  PARTS,
  PLACES,
  SIGHT_GLASS_STATES,
  WORK_KINDS,
} from '../terms/names.ts';
import { CHARGE_DOUBTS, PROCEDURES, PROCEDURE_TASKS, VALVE_KINDS } from '../terms/procedures.ts';
import { CAUSES } from '../terms/causes.ts';
import { DERIVED_QUANTITIES, QUANTITIES } from '../terms/quantities.ts';
import { REFRIGERANTS } from '../terms/refrigerants.ts';
import { UNIT_HABITS } from '../units/shown-unit.ts';
import { UNITS } from '../units/units.ts';

/** The ids of a table, as a closed set: a name the table lacks is refused with its path. */
function idOf<Table extends object>(table: Table): z.ZodType<keyof Table & string> {
  return z.enum(Object.keys(table) as [keyof Table & string]);
}

export const unitSchema = idOf(UNITS);
export const quantitySchema = idOf(QUANTITIES);
export const answerableSchema = idOf({ ...QUANTITIES, ...DERIVED_QUANTITIES });
export const placeSchema = idOf(PLACES);
export const partSchema = idOf(PARTS);
export const findingStateSchema = idOf(FINDING_STATES);
export const workKindSchema = idOf(WORK_KINDS);
export const causeSchema = idOf(CAUSES);
export const equipmentSchema = idOf(EQUIPMENT);
export const meteringSchema = idOf(METERING_DEVICES);
export const condenserSchema = idOf(CONDENSERS);
export const condensingUnitSchema = idOf(CONDENSING_UNITS);
export const headControlSchema = idOf(HEAD_CONTROLS);
export const judgedSchema = idOf(JUDGED);
export const sightGlassSchema = idOf(SIGHT_GLASS_STATES);
export const procedureSchema = idOf(PROCEDURES);
export const procedureTaskSchema = z.enum(PROCEDURE_TASKS);
export const valveKindSchema = idOf(VALVE_KINDS);
export const chargeDoubtSchema = idOf(CHARGE_DOUBTS);
export const refrigerantSchema = z.enum(REFRIGERANTS);
export const weekdaySchema = idOf(WEEKDAYS);
export const monthSchema = idOf(MONTHS);
export const periodSchema = idOf(PERIODS);
export const unitHabitSchema = z.enum(UNIT_HABITS);
export const amountSchema = z.strictObject({ value: z.number(), unit: unitSchema });
