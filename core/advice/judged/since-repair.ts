import type { PartId, PlaceId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import { isAlteration } from '../../visit/alterations.ts';
import type { ReadingEntry } from '../../visit/views.ts';
import type { VisitState } from '../../visit/state.ts';

/** What carries the supply to the motor: work on one of these makes other volts and amps of it. */
const CARRIES_POWER: ReadonlySet<PartId> = new Set<PartId>([
  ...(['fuse', 'terminal', 'wiring', 'contactor', 'breaker', 'disconnect', 'plug'] as const),
  ...(['compressor', 'overload', 'transformer'] as const),
]);

/**
 * The state without readings of these places from before something that carries the power was repaired: they are none
 * of the legs as they are now.
 */
export function sinceRepair(
  state: VisitState,
  quantity: QuantityId,
  places: readonly PlaceId[],
): VisitState {
  const order = state.history.map(({ id }) => id);
  const repaired = state.work.filter(
    ({ work }) => isAlteration(work) && work.part !== null && CARRIES_POWER.has(work.part),
  );
  const since = Math.max(NEVER, ...repaired.map(({ id }) => order.indexOf(id)));
  if (since === NEVER) return state;
  const isOld = ({ id, reading }: ReadingEntry): boolean =>
    reading.quantity === quantity &&
    reading.place !== null &&
    places.includes(reading.place) &&
    order.indexOf(id) < since;
  return { ...state, readings: state.readings.filter((entry) => !isOld(entry)) };
}
const NEVER = -1;
