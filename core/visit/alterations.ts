import type { QuantityId } from '../terms/quantities.ts';
import type { WorkKindId } from '../terms/names.ts';
import type { Reading, Work } from '../language/utterance.ts';
import type { EventId } from './events.ts';
import type { VisitState } from './state.ts';

/**
 * Looking for a leak, locking out, pushing a reset to see it run: the unit is as faulty as before, and what is
 * read then is still its baseline. Counting a reset as work threw the whole before of a tripped unit away.
 */
const LEAVES_IT_AS_IT_WAS: ReadonlySet<WorkKindId> = new Set<WorkKindId>([
  'reset',
  'isolate',
  'restore',
  'leakCheck',
  'pressureTest',
  'bypass',
  'disable',
  'connect',
  'setForTest',
  'open',
]);

const MOVES_REFRIGERANT: ReadonlySet<QuantityId> = new Set<QuantityId>([
  'refrigerantAdded',
  'refrigerantRecovered',
  'refrigerantLost',
]);

export const isAlteration = ({ did }: Work): boolean => !LEAVES_IT_AS_IT_WAS.has(did);

export const movesRefrigerant = (quantity: QuantityId): boolean => MOVES_REFRIGERANT.has(quantity);

/** "Recovered nothing" left it as it was. */
const movedSome = ({ quantity, value }: Reading): boolean =>
  movesRefrigerant(quantity) && value !== 0;

/** Everything that made another unit of it, refrigerant in or out among them, in the order of the log; a restart is none. */
export function alterations({ history, work, readings }: VisitState): readonly EventId[] {
  const ids = new Set([
    ...work.filter((entry) => isAlteration(entry.work)).map(({ id }) => id),
    ...readings.filter(({ reading }) => movedSome(reading)).map(({ id }) => id),
  ]);
  return history.map(({ id }) => id).filter((id) => ids.has(id));
}

/** Whether an entry was kept after the last alteration: it tells of the unit as it was left. */
export function isSinceAlteration(state: VisitState): (entry: { readonly id: EventId }) => boolean {
  const last = lastAlteration(state);
  const order = state.history.map(({ id }) => id);
  const from = last === null ? order.length : order.indexOf(last);
  return ({ id }) => order.indexOf(id) > from;
}

/** Whether an entry was kept before the first alteration: it tells of the unit as it was found. */
export function isBeforeAlteration(
  state: VisitState,
): (entry: { readonly id: EventId }) => boolean {
  const first = firstAlteration(state);
  const order = state.history.map(({ id }) => id);
  const until = first === null ? order.length : order.indexOf(first);
  return ({ id }) => order.indexOf(id) < until;
}

export const isAltered = (state: VisitState): boolean => alterations(state).length > 0;

export const firstAlteration = (state: VisitState): EventId | null => alterations(state)[0] ?? null;

export const lastAlteration = (state: VisitState): EventId | null =>
  alterations(state).at(-1) ?? null;
