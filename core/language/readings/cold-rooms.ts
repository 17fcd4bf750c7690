import type { EquipmentId } from '../../terms/names.ts';
import type { Context } from '../context.ts';
import { canBeColdBox } from '../numbers/plausible.ts';
import type { Reading } from '../utterance.ts';

/** What tells which air it is. */
export const NAMES_AMBIENT = /\b(?:ambient|condenser)\b/i;

/**
 * "Room's at four": of a walk-in that is the box, and of a unit that is not known yet it may be, where the value is a box's.
 * A reach-in stands in its room, which is the air that its condenser breathes.
 */
export function isOfColdRoom(
  { quantity, value, unit, words }: Reading,
  { equipment, asked }: Context,
  units: readonly (EquipmentId | null)[],
): boolean {
  const isRoom =
    quantity === 'ambientTemp' && /\broom\b/i.test(words) && !NAMES_AMBIENT.test(words);
  if (!isRoom || value === undefined || !units.includes(equipment)) return false;
  return asked !== 'ambientTemp' && canBeColdBox(value, unit === 'degC' ? 'si' : 'us');
}
