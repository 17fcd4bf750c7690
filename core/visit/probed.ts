import { productName } from '../terms/product-name.ts';
import type { Reading } from '../language/utterance.ts';
import type { Amount } from '../units/amount.ts';
import type { VisitState } from './state.ts';
import { amountOf, type ReadingEntry } from './views.ts';

/** A temperature of what is kept cold, with the name that it was told by. */
export interface Probed {
  readonly amount: Amount;
  /** Null where it was only called the product. */
  readonly name: string | null;
}

export const isProduct = ({ reading }: ReadingEntry): boolean => reading.quantity === 'productTemp';

/** What was measured before the work, since, or at all: the last of each thing, in the order they were first probed. */
export function probed(state: VisitState, when: 'before' | 'since' | 'ever'): readonly Probed[] {
  const last = new Map<string | null, Amount>();
  for (const entry of state.readings.filter(isProduct)) {
    const amount = amountOf(entry.reading);
    const isThen = when === 'ever' || (entry.phase === 'before') === (when === 'before');
    if (amount === null || entry.reported !== undefined || !isThen) continue;
    last.set(productName(entry.reading.words), amount);
  }
  return [...last].map(([name, amount]) => ({ name, amount }));
}

/** Milk that was warm says nothing of the lettuce that is cold. */
export function isOneProduct(state: VisitState): boolean {
  const lastOf = (isBefore: boolean): ReadingEntry | undefined =>
    state.readings.findLast((entry) => isProduct(entry) && (entry.phase === 'before') === isBefore);
  const [before, since] = [lastOf(true), lastOf(false)];
  if (before === undefined || since === undefined) return true;
  return isOfOneFood(before.reading, since.reading);
}

/** Of two readings of a quantity: milk that was cold has not warmed up because the lettuce is warm. */
export const isOfOneFood = (one: Reading, other: Reading): boolean =>
  one.quantity !== 'productTemp' || productName(one.words) === productName(other.words);
