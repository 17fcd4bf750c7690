import type { SightGlassId } from '../terms/names.ts';
import type { EventId } from './events.ts';
import { factsTold } from './facts-told.ts';
import type { VisitState } from './state.ts';

export interface SightGlassSeen {
  readonly id: EventId;
  readonly value: SightGlassId;
}

/** Every look at the sight glass that still counts: the unit's facts hold the last one alone. */
export const sightGlassSeen = (state: VisitState): readonly SightGlassSeen[] =>
  factsTold(state).flatMap(({ id, fact }) =>
    fact.fact === 'sightGlass' ? [{ id, value: fact.value }] : [],
  );
