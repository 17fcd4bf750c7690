import type { Fact } from '../language/utterance.ts';
import type { EventId } from './events.ts';
import type { VisitState } from './state.ts';

export interface FactTold {
  readonly id: EventId;
  readonly fact: Fact;
}

/** Every fact that still counts, in the order told: the unit's facts hold the last of each alone. */
export function factsTold({ history }: VisitState): readonly FactTold[] {
  const gone = new Set(
    history.flatMap((event) => (event.type === 'entryTakenBack' ? [event.target] : [])),
  );
  return history.flatMap((event) =>
    event.type === 'factStated' && !gone.has(event.id) ? [{ id: event.id, fact: event.fact }] : [],
  );
}
