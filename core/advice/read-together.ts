import type { VisitState } from '../visit/state.ts';
import { lastChange } from '../visit/changes.ts';
import { isNewer } from '../visit/views.ts';
import { currentReading } from './current.ts';
import { needing, type Found } from './found.ts';
import type { QuantityId } from '../terms/quantities.ts';

/** A line follows its pressure within minutes; a quarter of an hour later it is another state (common practice). */
const LONGEST_APART_MS = 15 * 60_000;

/**
 * Two readings that make one number describe the unit at one time: a line clamped before the fan was changed and a
 * suction read after it gave a superheat of minus 13 °F, and a false alarm. The older one is asked for again.
 */
export function readTogether<Value>(
  found: Found<Value>,
  [one, other]: readonly [QuantityId, QuantityId],
  state: VisitState,
): Found<Value> {
  const [first, second] = [currentReading(state, one), currentReading(state, other)];
  if (found.kind !== 'known' || !first || !second) return found;
  const [older, newer] = isNewer(state, first.id, second.id) ? [second, first] : [first, second];
  const change = lastChange(state);
  const isSplit =
    change !== null && isNewer(state, newer.id, change.id) && isNewer(state, change.id, older.id);
  const isStale = newer.at - older.at > LONGEST_APART_MS;
  return isSplit || isStale ? needing(older.reading.quantity) : found;
}
