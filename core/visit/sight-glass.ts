import type { SightGlassId } from '../terms/names.ts';
import type { EventId } from './events.ts';
import type { VisitState } from './state.ts';

export interface SightGlassSeen {
  readonly id: EventId;
  readonly value: SightGlassId;
}

/** Every look at the sight glass that still counts: the unit's facts hold the last one alone. */
export function sightGlassSeen({ history }: VisitState): readonly SightGlassSeen[] {
  const gone = new Set(
    history.flatMap((event) => (event.type === 'entryTakenBack' ? [event.target] : [])),
  );
  return history.flatMap((event) =>
    event.type === 'factStated' && event.fact.fact === 'sightGlass' && !gone.has(event.id)
      ? [{ id: event.id, value: event.fact.value }]
      : [],
  );
}
