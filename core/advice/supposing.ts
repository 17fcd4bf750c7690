import type { Supposed } from '../language/utterance.ts';
import type { QuantityId } from '../terms/quantities.ts';
import type { VisitState } from '../visit/state.ts';
import type { ReadingEntry } from '../visit/views.ts';

/** What is read of the air counts no more. */
const OF_THE_AIR: readonly QuantityId[] = ['ambientTemp', 'outdoorTemp'];

/** The visit as it would be with that read: asked of once, and never kept. */
export function supposing(state: VisitState, { quantity, value, unit }: Supposed): VisitState {
  const read: ReadingEntry = {
    id: 'supposed',
    at: state.history.at(-1)?.at ?? 0,
    phase: 'before',
    reading: { quantity, value, unit, unitFrom: 'said', place: null, words: '' },
  };
  const others = state.readings.filter(({ reading }) => !OF_THE_AIR.includes(reading.quantity));
  return { ...state, readings: [...others, read] };
}
