import { toAbsolutePressure, toGaugePressure, toTemperature } from '../units/branding.ts';
import { convert } from '../units/convert.ts';
import type { AbsolutePressure, Temperature } from '../units/quantity-values.ts';
import { SHOWN_UNITS } from '../units/shown-unit.ts';
import type { UnitId } from '../units/units.ts';
import type { Amount } from '../units/amount.ts';
import type { EquipmentId, MeteringId } from '../terms/names.ts';
import {
  isSetting,
  quantityTerm,
  type AnswerableId,
  type QuantityId,
} from '../terms/quantities.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { VisitState } from '../visit/state.ts';
import { kindOf } from '../visit/unit-kind.ts';
import { amountOf, type ReadingEntry } from '../visit/views.ts';
import { needing, worked, type Found } from './found.ts';
import { localAirInput, localAir } from './local-air.ts';
import type { Input } from './verdict.ts';

/**
 * The reading that stands for now: the newest with a number. What was read as a control tripped is not how the
 * unit runs, and "when I got here" stands only until it is read again.
 */
export function currentReading(state: VisitState, quantity: QuantityId): ReadingEntry | null {
  const usable = state.readings.filter(
    ({ reading }) =>
      reading.quantity === quantity && reading.event === undefined && amountOf(reading) !== null,
  );
  const atItsEnd = quantity === 'suctionLineTemp' ? atValve(usable) : usable;
  const sinceArrival = atItsEnd.filter(({ reading }) => reading.when === undefined);
  return sinceArrival.at(-1) ?? atItsEnd.at(-1) ?? null;
}

/** Superheat is the valve's where the line was read at both of its ends: at the compressor it picks up more. */
function atValve(usable: readonly ReadingEntry[]): readonly ReadingEntry[] {
  const phase = usable.at(-1)?.phase;
  const valve = usable.filter(
    (entry) => entry.phase === phase && entry.reading.place !== 'compressor',
  );
  return valve.length > 0 ? valve : usable;
}

/** The unit that a quantity is answered in; null where it is answered in the unit it was read in. */
export function shownUnit(about: AnswerableId, state: VisitState): UnitId | null {
  const shown = SHOWN_UNITS[state.settings.units];
  switch (quantityTerm(about).dimension) {
    case 'gaugePressure':
      return shown.gaugePressure;
    case 'temperature':
      return shown.temperature;
    case 'temperatureDifference':
      return shown.temperatureDifference;
    case 'ratio':
      return 'ratio';
    default:
      return null;
  }
}

/** A reading's amount in the visit's unit, with the reading as its input. */
export function readAmount(state: VisitState, quantity: QuantityId): Found<Amount> {
  const entry = currentReading(state, quantity);
  const amount = entry && amountOf(entry.reading);
  if (!entry || !amount) return needing(quantity);
  const shown = convert(amount, shownUnit(quantity, state) ?? amount.unit) ?? amount;
  const input: Input = {
    name: quantity,
    ...shown,
    from: isSetting(quantity) ? 'set' : 'read',
    at: entry.at,
  };
  return worked(shown, { inputs: [input], at: entry.at });
}

export function absoluteOf(state: VisitState, quantity: QuantityId): Found<AbsolutePressure> {
  const found = branded(readAmount(state, quantity), quantity, toGaugePressure);
  if (found.kind !== 'known') return found;
  return {
    ...found,
    value: toAbsolutePressure(found.value, localAir(state)),
    inputs: [...found.inputs, ...localAirInput(state)],
  };
}

export function temperatureOf(state: VisitState, quantity: QuantityId): Found<Temperature> {
  return branded(readAmount(state, quantity), quantity, toTemperature);
}

/** A reading in a unit of another kind (a superheat "in psi") does not count: it is asked for again. */
function branded<Value>(
  found: Found<Amount>,
  quantity: QuantityId,
  brand: (amount: Amount) => Value | null,
): Found<Value> {
  if (found.kind !== 'known') return found;
  const value = brand(found.value);
  return value === null ? needing(quantity) : { ...found, value };
}

export function refrigerantOf({ unit: { refrigerant } }: VisitState): Found<RefrigerantId> {
  return stated('refrigerant', refrigerant);
}

export function equipmentOf({ unit }: VisitState): Found<EquipmentId> {
  return stated('equipment', kindOf(unit));
}

export function meteringOf({ unit: { metering } }: VisitState): Found<MeteringId> {
  return stated('metering', metering);
}

function stated<Value extends string>(
  name: 'refrigerant' | 'equipment' | 'metering',
  value: Value | null,
): Found<Value> {
  if (value === null) return needing(name);
  return worked(value, { inputs: [{ name, value, unit: null, from: 'set' }] });
}
