import type { NameplateItem } from '../../language/utterance.ts';
import type { PlaceId } from '../../terms/names.ts';
import type { QuantityId } from '../../terms/quantities.ts';
import type { Amount } from '../../units/amount.ts';
import { amountOf, type ReadingEntry } from '../../visit/views.ts';
import type { VisitState } from '../../visit/state.ts';
import { worked, type Found } from '../found.ts';
import type { Input, Needs } from '../verdict.ts';

/** The newest reading of a quantity at one of these places; null stands for a reading without a place. */
export function readingAt(
  state: VisitState,
  quantity: QuantityId,
  places: readonly (PlaceId | null)[],
): ReadingEntry | null {
  return (
    state.readings.findLast(
      ({ reading }) =>
        reading.quantity === quantity &&
        places.includes(reading.place) &&
        (reading.overlimit === true || amountOf(reading) !== null),
    ) ?? null
  );
}

/** Its amount, or where the leads go for it. */
export function amountAt(
  state: VisitState,
  quantity: QuantityId,
  places: readonly (PlaceId | null)[],
): Found<Amount> {
  const entry = readingAt(state, quantity, places);
  const amount = entry && amountOf(entry.reading);
  return entry && amount
    ? worked(amount, { inputs: [inputOf(entry, amount)], at: entry.at })
    : needAt(quantity, places);
}

export function needAt(quantity: QuantityId, places: readonly (PlaceId | null)[]): Needs {
  const place = places.find((one) => one !== null);
  return { kind: 'needs', about: null, need: quantity, ...(place ? { place } : {}) };
}

export function inputOf({ reading, at }: ReadingEntry, amount: Amount): Input {
  return {
    name: reading.quantity,
    ...amount,
    from: 'read',
    at,
    ...(reading.place === null ? {} : { place: reading.place }),
  };
}

const NEEDED = {
  charge: 'nameplateCharge',
  voltage: 'nameplateVoltage',
  ratedLoadAmps: 'nameplateAmps',
  highSide: 'nameplateHighSide',
  lowSide: 'nameplateLowSide',
} as const satisfies Partial<Record<NameplateItem, Needs['need'] & Input['name']>>;
type PlateItem = keyof typeof NEEDED;

export const needPlate = (need: (typeof NEEDED)[PlateItem]): Needs => ({
  kind: 'needs',
  about: null,
  need,
});

/** What the plate says, or that it is to be read off. */
export function plateOf({ unit: { nameplate } }: VisitState, item: PlateItem): Found<Amount> {
  const amount = nameplate[item];
  const name = NEEDED[item];
  if (amount === undefined) return needPlate(name);
  return worked(amount, { inputs: [{ name, ...amount, from: 'set' }] });
}

/** A branded value, or that it is asked for again: "ten volts" is no resistance. */
export function brandedAs<Value>(
  found: Found<Amount>,
  brand: (amount: Amount) => Value | null,
  otherwise: Needs,
): Found<Value> {
  if (found.kind !== 'known') return found;
  const value = brand(found.value);
  return value === null ? otherwise : { ...found, value };
}
