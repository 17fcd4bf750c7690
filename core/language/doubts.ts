import type { Amount } from '../units/amount.ts';
import type { Context } from './context.ts';
import { isPlausible, liesAbove } from './plausible.ts';
import type { Doubt, DoubtReason, Reading } from './utterance.ts';

interface Sorted {
  readonly readings: readonly Reading[];
  readonly doubts: readonly Doubt[];
}

const NONE: Sorted = { readings: [], doubts: [] };

/** Takes out of the readings those that must be confirmed before they are recorded. */
export function doubtful(all: readonly Reading[], context: Context): Sorted {
  if (all.length === 0) return NONE;
  const against = againstSibling(all, context);
  const readings: Reading[] = [];
  const doubts: Doubt[] = [];
  for (const reading of all) {
    const why = ownDoubt(reading, context) ?? (against.has(reading) ? 'againstSibling' : null);
    if (why === null) readings.push(reading);
    else doubts.push({ ...reading, why });
  }
  return { readings, doubts };
}

/** Whether this reading, said alone, would have to be confirmed. */
export function isDoubtful(reading: Reading, context: Context): boolean {
  return doubtful([reading], context).doubts.length > 0;
}

function ownDoubt(reading: Reading, { refrigerant }: Context): DoubtReason | null {
  const { unit, quantity } = reading;
  if (unit === null || reading.unitFrom === 'unknown') return 'noUnit';
  const values = [reading.value, reading.low, reading.high].filter((value) => value !== undefined);
  return values.every((value) => isPlausible(quantity, { value, unit }, refrigerant))
    ? null
    : 'outOfRange';
}

/** Of suction above head the later is doubted; said in one breath, both. */
function againstSibling(all: readonly Reading[], context: Context): ReadonlySet<Reading> {
  const head = lastOf(all, 'headPressure');
  const suction = lastOf(all, 'suctionPressure');
  const high = head === null ? context.headPressure : amountOf(head);
  const low = suction === null ? context.suctionPressure : amountOf(suction);
  const arrival = head?.when !== suction?.when && head !== null && suction !== null;
  if (high === null || low === null || arrival || !liesAbove(low, high)) return new Set();
  return new Set([head, suction].filter((reading) => reading !== null));
}

function lastOf(all: readonly Reading[], quantity: Reading['quantity']): Reading | null {
  return all.findLast((each) => each.quantity === quantity && amountOf(each) !== null) ?? null;
}

function amountOf({ value, unit }: Reading): Amount | null {
  return value === undefined || unit === null ? null : { value, unit };
}
