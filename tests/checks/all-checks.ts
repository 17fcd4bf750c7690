/**
 * Every value from outside the project that the tests hold the numbers to. A new file of rows is added here: the
 * rows are then run by all-checks.test.ts and counted by coverage.test.ts.
 */
import { listCalculations } from '../../core/calculations/catalogue.ts';
import { isCatalogueCheck, isValueCheck } from './check-row.ts';
import type { CheckRow } from './check-row.ts';
import { CONSTANT_CHECKS } from './constant-checks.ts';
import { EVACUATION_CHECKS } from './evacuation.ts';
import { PROPERTY_CHECKS } from './property-checks.ts';
import { CONTROL_CHECKS } from './controls.ts';
import { ELECTRICAL_CHECKS } from './electrical.ts';
import { MOTOR_AND_SWITCH_CHECKS } from './motors-and-switches.ts';
import { REFRIGERANT_CHECKS } from './refrigerant.ts';
import { SAFETY_CHECKS } from './safety.ts';
import { SATURATION_CHECKS } from './saturation-checks.ts';
import { TEMPERATURE_CHECKS } from './temperature.ts';
import { WORKED_EXAMPLES } from './worked-examples.ts';

/** The example that each entry of the catalogue carries for whoever reads `calc --list`. */
export const OWN_EXAMPLES: readonly CheckRow[] = listCalculations().map(({ name, example }) => ({
  name,
  ...example,
}));

const ROWS: readonly CheckRow[] = [
  ...OWN_EXAMPLES,
  ...WORKED_EXAMPLES,
  ...SATURATION_CHECKS,
  ...CONTROL_CHECKS,
  ...ELECTRICAL_CHECKS,
  ...MOTOR_AND_SWITCH_CHECKS,
  ...PROPERTY_CHECKS,
  ...CONSTANT_CHECKS,
  ...EVACUATION_CHECKS,
  ...REFRIGERANT_CHECKS,
  ...SAFETY_CHECKS,
  ...TEMPERATURE_CHECKS,
];

const keyOf = (row: CheckRow): string =>
  isValueCheck(row)
    ? JSON.stringify([row.title, row.source])
    : JSON.stringify([row.name, row.inputs, isCatalogueCheck(row) ? row.gives : row.refused]);

/** An entry's own example is often a row of its subject's file too: it counts once. */
export const ALL_CHECKS: readonly CheckRow[] = [
  ...new Map(ROWS.map((row) => [keyOf(row), row])).values(),
];
