import type { HeadControlId } from '../terms/names.ts';
import type { VisitState } from './state.ts';
import { latestReading } from './views.ts';

/** What holds head up in the cold; a head pressure valve where its setting alone was told. */
export function headControlOf(state: VisitState): HeadControlId | null {
  if (state.unit.headControl !== null) return state.unit.headControl;
  return latestReading(state, 'heldHeadPressure') === null ? null : 'floodingValve';
}
