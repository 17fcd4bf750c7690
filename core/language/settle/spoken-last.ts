import { isPowerPart, type PartId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import type { Context } from '../context.ts';
import { partId } from '../slots.ts';

/** What is metered with the power off. */
const METERED_DEAD: readonly (QuantityId | null)[] = [
  'resistance',
  'insulationResistance',
  'capacitance',
];

export const wasMeteredDead = ({ lastQuantity }: Context): boolean =>
  METERED_DEAD.includes(lastQuantity);

/**
 * The part that "it" is said of in the next sentence. "Breaker's off. Top heater thirty three ohms. Middle one's open":
 * the power was taken off for the meter's sake, and what is told behind it is of what the leads are on.
 */
export function spokenOfLast(context: Context): PartId | null {
  const { lastPart, lastPlace } = context;
  const metered = partId(lastPlace ?? undefined);
  const isOff = lastPart !== null && isPowerPart(lastPart);
  return isOff && wasMeteredDead(context) && metered !== null ? metered : (lastPart ?? metered);
}
