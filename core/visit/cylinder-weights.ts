import type { Amount } from '../units/amount.ts';
import { convert } from '../units/convert.ts';
import type { VisitState } from './state.ts';
import { amountOf, latestReading, type ReadingEntry } from './views.ts';

/** What the weights of a cylinder tell of the gas in it. */
export interface CylinderWeights {
  /** Into it since it was weighed first, out of it where it is below zero; `null` where it was not weighed twice. */
  readonly gained: Amount | null;
  /** More than its tare; `null` where that was not told. */
  readonly holds: Amount | null;
}

export function cylinderWeights(state: VisitState): CylinderWeights {
  const weighed = ofOneCylinder(state.readings);
  const [first, last] = [weighed[0], weighed.at(-1)];
  const tare = latestReading(state, 'tareWeight');
  const holds = last && tare ? between(tare, last) : null;
  return {
    gained: first && last && first !== last ? between(first, last) : null,
    holds: holds !== null && holds.value >= 0 ? holds : null,
  };
}

const MOVED: ReadonlySet<string> = new Set(['refrigerantAdded', 'refrigerantRecovered']);

/** The weights since gas was last told by its weight, as long as they are called the same: a jug is not the tank. */
function ofOneCylinder(all: readonly ReadingEntry[]): readonly ReadingEntry[] {
  const told = all.findLastIndex(({ reading }) => MOVED.has(reading.quantity));
  const weighed = all
    .slice(told + 1)
    .filter(({ reading }) => reading.quantity === 'cylinderWeight');
  const name = weighed.map(nameOf).findLast((each) => each !== null) ?? null;
  const other = weighed.findLastIndex((each) => ![null, name].includes(nameOf(each)));
  return weighed.slice(other + 1);
}

const CALLED = /\b(?:recovery|virgin|jug|bottle|drum|tank)\b/i;
const nameOf = ({ reading }: ReadingEntry): string | null =>
  CALLED.exec(reading.words)?.[0].toLowerCase() ?? null;

/** In the finer of the units that the two were told in. */
function between(before: ReadingEntry, after: ReadingEntry): Amount | null {
  const [less, more] = [amountOf(before.reading), amountOf(after.reading)];
  if (less === null || more === null) return null;
  const unit = less.unit === 'oz' ? less.unit : more.unit;
  const from = convert(less, unit);
  const to = convert(more, unit);
  return from && to && { value: Number((to.value - from.value).toFixed(4)), unit };
}
