import type { Reading } from '../language/utterance.ts';
import { isOfRun } from '../terms/reading-events.ts';
import type { PlaceId } from '../terms/names.ts';
import { type QuantityId, SETTINGS } from '../terms/quantities.ts';
import type { Amount } from '../units/amount.ts';
import type { EventId } from './events.ts';
import type { Phase, VisitState } from './state.ts';

export type ReadingEntry = VisitState['readings'][number];

/** The newest reading of a quantity, at a place if one is named, in a phase if one is asked for. */
export function latestReading(
  state: VisitState,
  quantity: QuantityId,
  where: { readonly place?: PlaceId | null; readonly phase?: Phase } = {},
): ReadingEntry | null {
  return (
    state.readings.findLast(
      ({ reading, phase }) =>
        reading.quantity === quantity &&
        (where.place === undefined || reading.place === where.place) &&
        (where.phase === undefined || phase === where.phase),
    ) ?? null
  );
}

/** The number and unit of a reading that has both; a range and an over-limit reading have none. */
export function amountOf(reading: Reading): Amount | null {
  return reading.value === undefined || reading.unit === null
    ? null
    : { value: reading.value, unit: reading.unit };
}

export function latestAmount(state: VisitState, quantity: QuantityId): Amount | null {
  const entry = latestReading(state, quantity);
  return entry && amountOf(entry.reading);
}

/** Kept with the unit, with the account of refrigerant or with the tests: work makes none of it better or worse. */
const STANDS_APART: ReadonlySet<QuantityId> = new Set<QuantityId>([
  ...SETTINGS,
  'refrigerantAdded',
  'refrigerantRecovered',
  'refrigerantLost',
  'refrigerantCharge',
  'cylinderWeight',
  'testPressure',
  'vacuum',
]);

/** Whether it is read before and after, to be held against each other. */
export const isCompared = (quantity: QuantityId): boolean => !STANDS_APART.has(quantity);

/** One row of the sheet: a quantity at a place, with its newest entry in each column. */
export interface SheetRow {
  readonly quantity: QuantityId;
  readonly place: PlaceId | null;
  readonly before: ReadingEntry | null;
  /** The newest since the before: marked as after, or still while working. */
  readonly after: ReadingEntry | null;
  readonly afterIsMarked: boolean;
}

/** The sheet's rows, in the order their quantities were first read. */
export function sheetRows(state: VisitState): readonly SheetRow[] {
  const keys = new Map(
    state.readings.map(({ reading }) => [
      `${reading.quantity}@${reading.place ?? ''}`,
      { quantity: reading.quantity, place: reading.place },
    ]),
  );
  return [...keys.values()].map(({ quantity, place }) => sheetRow(state, quantity, place));
}

const isOfItsRun = ({ reading }: VisitState['readings'][number]): boolean => isOfRun(reading);

/** What was read as a control tripped stands in a column only where nothing was read as it ran. */
function sheetRow(all: VisitState, quantity: QuantityId, place: PlaceId | null): SheetRow {
  const running = all.readings.filter(
    ({ reading }) => reading.quantity === quantity && reading.event === undefined,
  );
  const readings = running.length > 0 ? running : all.readings.filter(isOfItsRun);
  const state = { ...all, readings };
  const after = latestReading(state, quantity, { place, phase: 'after' });
  return {
    quantity,
    place,
    before: latestReading(state, quantity, { place, phase: 'before' }),
    after: after ?? latestReading(state, quantity, { place, phase: 'work' }),
    afterIsMarked: after !== null,
  };
}

/** By place in the log: a device's clock may have been set back between two ids. */
export function isNewer(state: VisitState, one: EventId, other: EventId): boolean {
  const place = (id: EventId): number => state.history.findIndex((event) => event.id === id);
  return place(one) > place(other);
}

/** Something the technician still has to settle, newest first. */
export type OpenQuestion =
  | { readonly kind: 'doubt'; readonly of: VisitState['doubts'][number] }
  | { readonly kind: 'leftOver'; readonly of: VisitState['leftOver'][number] };

export function openQuestion(state: VisitState): OpenQuestion | null {
  const doubt = state.doubts.at(-1);
  const leftOver = state.leftOver.at(-1);
  if (doubt && (!leftOver || isNewer(state, doubt.id, leftOver.id)))
    return { kind: 'doubt', of: doubt };
  return leftOver ? { kind: 'leftOver', of: leftOver } : null;
}
