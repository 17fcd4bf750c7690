import type { QuantityId } from '../../terms/quantities.ts';
import type { UnitId } from '../../units/units.ts';
import type { Context } from '../context.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { type Amounted, measured, unitFor } from '../numbers/measure.ts';
import type { Frame } from '../rule.ts';
import type { Command, Reading } from '../utterance.ts';

/** Without a quantity the number keeps only the unit that was said: what it amends decides the rest. */
export function amendLast(amount: Amounted, frame: Frame): Command | null {
  if (amount.value === null) return null;
  const { unit, value } = amount;
  const { lastQuantity, units } = frame.context;
  const bare: Command = { do: 'amend', quantity: null, value };
  if (unit === null) return bare;
  const found = lastQuantity === null ? null : measured(lastQuantity, amount, units);
  if (found?.unit != null) return { ...bare, value: found.value ?? value, unit: found.unit };
  const known =
    unitFor(unit, 'temperature', units) ??
    unitFor(unit, 'gaugePressure', units) ??
    (unit === 'degrees' || unit === 'pounds' || unit === 'inches' ? null : unit);
  if (known === null) return bare;
  return { ...bare, value: known === 'inHg' ? 0 - Math.abs(value) : value, unit: known };
}

/** What the amended value would be as a reading; `null` where nothing tells its quantity or its unit. */
export function amendedReading(
  quantity: QuantityId | null,
  amount: Amounted,
  frame: Frame,
): Reading | null {
  if (quantity === null) return null;
  const { units, lastPlace } = frame.context;
  const unit = amount.unit ?? settledUnit(quantity, frame.context);
  const found = measured(quantity, { ...amount, unit }, units);
  if (found?.unit == null) return null;
  const place = isElectrical(quantity) ? lastPlace : null;
  return { ...found, place, words: frame.wordsOf(frame.span) };
}

/** Inches, bar: the unit that a pressure was last given in, where it is not the habit's. */
function settledUnit(quantity: QuantityId, context: Context): UnitId | null {
  const settled =
    quantity === 'headPressure' || quantity === 'suctionPressure' ? context[quantity] : null;
  return settled === null || settled.unit === 'psi' ? null : settled.unit;
}

/** Of the quantity that was named, in its own unit. */
export function amendNamed(quantity: QuantityId, amount: Amounted, frame: Frame): Command | null {
  const found = measured(quantity, amount, frame.context.units);
  if (found?.value === undefined) return null;
  const { value, unit } = found;
  return { do: 'amend', quantity: found.quantity, value, ...(unit === null ? {} : { unit }) };
}
