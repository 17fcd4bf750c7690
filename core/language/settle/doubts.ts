import { isOfRun } from '../../terms/reading-events.ts';
import type { Amount } from '../../units/amount.ts';
import { withCarriedUnits, withUnitBefore } from './carried-units.ts';
import type { Context } from '../context.ts';
import { withMore } from '../numbers/measure.ts';
import { isPlausible, liesAbove } from '../numbers/plausible.ts';
import { asTwoTold } from './two-told.ts';
import type { Doubt, DoubtReason, Reading } from '../utterance.ts';

interface Sorted {
  readonly readings: readonly Reading[];
  readonly doubts: readonly Doubt[];
}

const NONE: Sorted = { readings: [], doubts: [] };

/** Takes out of the readings those that must be confirmed before they are recorded. */
export function doubtful(said: readonly Reading[], context: Context): Sorted {
  if (said.length === 0) return NONE;
  const carried = withCarriedUnits(said, context);
  const all = againstSibling(carried, context) === NOTHING_AGAINST ? carried : said;
  if (areAllSure(all, context)) return { readings: all, doubts: [] };
  const otherwise = all.map((each) => asTwoTold(withUnitBefore(each, context), context));
  if (areAllSure(otherwise, context)) return { readings: otherwise, doubts: [] };
  const against = againstSibling(all, context);
  const readings: Reading[] = [];
  const doubts: Doubt[] = [];
  for (const reading of all) {
    const why = ownDoubt(reading, context) ?? (against.includes(reading) ? 'againstSibling' : null);
    if (why === null) readings.push(reading);
    else doubts.push(withMore(reading, { why }));
  }
  return { readings, doubts };
}

function areAllSure(all: readonly Reading[], context: Context): boolean {
  if (againstSibling(all, context) !== NOTHING_AGAINST) return false;
  for (const reading of all) if (ownDoubt(reading, context) !== null) return false;
  return true;
}

/** Whether this reading, said alone, would have to be confirmed. */
export function isDoubtful(reading: Reading, context: Context): boolean {
  return doubtful([reading], context).doubts.length > 0;
}

function ownDoubt(reading: Reading, { refrigerant }: Context): DoubtReason | null {
  const { unit, quantity, value, low, high } = reading;
  if (unit === null || reading.unitFrom === 'unknown') return 'noUnit';
  const canBe =
    (value === undefined || isPlausible(quantity, { value, unit }, refrigerant)) &&
    (low === undefined || isPlausible(quantity, { value: low, unit }, refrigerant)) &&
    (high === undefined || isPlausible(quantity, { value: high, unit }, refrigerant));
  return canBe ? null : 'outOfRange';
}

/** Of suction above head the later is doubted; said in one breath, both. */
function againstSibling(all: readonly Reading[], context: Context): readonly Reading[] {
  const head = lastOf(all, 'headPressure');
  const suction = lastOf(all, 'suctionPressure');
  if (head === null && suction === null) return NOTHING_AGAINST;
  const high = head === null ? context.headPressure : amountOf(head);
  const low = suction === null ? context.suctionPressure : amountOf(suction);
  const arrival = head?.when !== suction?.when && head !== null && suction !== null;
  if (high === null || low === null || arrival || !liesAbove(low, high)) return NOTHING_AGAINST;
  return [head, suction].filter((reading) => reading !== null);
}

const NOTHING_AGAINST: readonly Reading[] = [];

function lastOf(all: readonly Reading[], quantity: Reading['quantity']): Reading | null {
  let last: Reading | null = null;
  for (const each of all)
    if (each.quantity === quantity && isOfRun(each) && amountOf(each) !== null) last = each;
  return last;
}

function amountOf({ value, unit }: Reading): Amount | null {
  return value === undefined || unit === null ? null : { value, unit };
}
