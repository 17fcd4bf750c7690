import type { Reading } from '../language/utterance.ts';
import type { QuantityId } from '../terms/quantities.ts';
import { isAltered, lastAlteration } from './alterations.ts';
import type { EventId } from './events.ts';
import type { Phase, VisitState } from './state.ts';
import { isCompared } from './views.ts';

/**
 * The column a reading belongs to as it is taken. "When I got here" is before whatever was done since; until
 * the unit is changed or the before is marked, everything read is the baseline.
 */
export function phaseOf(reading: Reading, state: VisitState): Phase {
  if (reading.when === 'arrival') return 'before';
  if (state.afterMarkedAt !== null) return 'after';
  return state.beforeMarkedAt === null && !isAltered(state) ? 'before' : 'work';
}

/**
 * Marking the before claims what was read so far. Once the unit was changed it claims what was read since for the first
 * time: that is the before of the work to come, and takes nothing from what was read of the unit as it was found.
 */
export function markBefore(state: VisitState, at: number): VisitState {
  const isAsFound = !isAltered(state);
  const known = new Set(
    state.readings.filter(({ phase }) => phase === 'before').map(({ reading }) => nameOf(reading)),
  );
  const isClaimed = ({ phase, reading }: VisitState['readings'][number]): boolean =>
    isAsFound || (phase === 'work' && isOfRunning(reading) && !known.has(nameOf(reading)));
  const readings = state.readings.map((entry) =>
    isClaimed(entry) ? { ...entry, phase: 'before' as const } : entry,
  );
  return { ...state, readings, beforeMarkedAt: at };
}

/** Parts are metered as they are, whatever is worked on: nobody reads their ohms again for the after. */
const OF_PARTS: ReadonlySet<QuantityId> = new Set<QuantityId>([
  'resistance',
  'insulationResistance',
  'capacitance',
]);
const isOfRunning = ({ quantity }: Reading): boolean =>
  isCompared(quantity) && !OF_PARTS.has(quantity);

const nameOf = ({ quantity, place }: Reading): string => `${quantity}@${place ?? ''}`;

/** Marking the after claims what was read since the last change, or since the before where none was reported. */
export function markAfter(state: VisitState, at: number): VisitState {
  const settled = sinceLastChange(state);
  const readings = state.readings.map((entry) =>
    entry.phase === 'work' && settled.has(entry.id) ? { ...entry, phase: 'after' as const } : entry,
  );
  return { ...state, readings, afterMarkedAt: at };
}

function sinceLastChange(state: VisitState): ReadonlySet<EventId> {
  const working = state.readings.filter((entry) => entry.phase === 'work').map((entry) => entry.id);
  const order = state.history.map((event) => event.id);
  const last = lastAlteration(state);
  if (last === null) return new Set(working);
  const after = new Set(order.slice(order.indexOf(last) + 1));
  const recent = working.filter((id) => after.has(id));
  return new Set(recent.length > 0 ? recent : working);
}
