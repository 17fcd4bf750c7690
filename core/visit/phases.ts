import type { Reading } from '../language/utterance.ts';
import { isAltered, lastAlteration } from './alterations.ts';
import type { EventId } from './events.ts';
import type { Phase, VisitState } from './state.ts';

/**
 * The column a reading belongs to as it is taken. "When I got here" is before whatever was done since; until
 * the unit is changed or the before is marked, everything read is the baseline.
 */
export function phaseOf(reading: Reading, state: VisitState): Phase {
  if (reading.when === 'arrival') return 'before';
  if (state.afterMarkedAt !== null) return 'after';
  return state.beforeMarkedAt === null && !isAltered(state) ? 'before' : 'work';
}

/** Marking the before claims what was read so far, unless the unit was changed: that cannot be a baseline. */
export function markBefore(state: VisitState, at: number): VisitState {
  const readings = isAltered(state)
    ? state.readings
    : state.readings.map((entry) => ({ ...entry, phase: 'before' as const }));
  return { ...state, readings, beforeMarkedAt: at };
}

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
