import type { Reading } from '../language/utterance.ts';
import { figure, poundsAndOunces, readBack } from './amounts.ts';
import { designation } from './designation.ts';
import { isNamedByUnit, placedName, SHORT_NAMES } from './names.ts';
import { PLACES } from '../terms/names.ts';
import { productName } from '../terms/product-name.ts';
import { join, line, plain, type Said } from './said.ts';
import type { UnitHabit } from '../units/shown-unit.ts';

/** A reading said back: what it is of, its value, and whatever was said about how it was taken. */
export function readingSaid(reading: Reading, units: UnitHabit): Said {
  const moved = MOVED[reading.quantity];
  if (moved !== undefined && reading.value === 0) return plain(`no refrigerant ${moved}`);
  const pieces = [
    subject(reading),
    plain(reading.hedged ? ' about ' : ' '),
    valueSaid(reading, units),
    ...circumstances(reading).map((piece) => line` ${piece}`),
  ];
  return join(pieces, '');
}

/** Refrigerant is told as it was done: "added 8 ounces". */
const MOVED: Partial<Record<Reading['quantity'], string>> = {
  refrigerantAdded: 'added',
  refrigerantRecovered: 'recovered',
};

/** Electrical values carry their unit, which names them: "contactor 208 V" rather than "contactor voltage". */
function subject(reading: Reading): Said {
  const { quantity, place } = reading;
  const moved = MOVED[quantity];
  if (moved !== undefined) return plain(moved);
  if (place !== null && isNamedByUnit(quantity)) return plain(PLACES[place]);
  return plain(place === null ? readName(reading) : placedName(quantity, place));
}

/** What it is called: food by the name that it was told by, as there is more than one thing in a box. */
export function readName({ quantity, words }: Pick<Reading, 'quantity' | 'words'>): string {
  const name = quantity === 'productTemp' ? productName(words) : null;
  return name ?? SHORT_NAMES[quantity];
}

export function valueSaid(reading: Reading, units: UnitHabit): Said {
  const { value, low, high, unit } = reading;
  if (reading.overlimit) return plain('over limit');
  const compound = poundsAndOunces(reading);
  if (compound) return compound;
  if (low !== undefined && high !== undefined) {
    return line`${readBack({ value: low, unit }, units)} to ${readBack({ value: high, unit }, units)}`;
  }
  return value === undefined ? plain('without a number') : readBack({ value, unit }, units);
}

/** How a value was come by that is none of the unit as it runs. */
export const EVENT_WORDS: Record<NonNullable<Reading['event']>, string> = {
  tripped: 'as it tripped',
  standing: 'standing',
  drawnDown: 'drawn down',
};

function circumstances(reading: Reading): readonly Said[] {
  const { event, when, afterMinutes, gasTemp, refrigerant } = reading;
  return [
    refrigerant && line`of ${designation(refrigerant)}`,
    gasTemp && line`at ${figure(gasTemp)}`,
    afterMinutes !== undefined && line`after ${figure({ value: afterMinutes, unit: 'min' })}`,
    event && plain(EVENT_WORDS[event]),
    when && plain('on arrival'),
  ].filter((piece) => typeof piece === 'object');
}

/** A doubt's value as it was heard, for asking whether it was meant. */
export function heardSaid(reading: Reading, units: UnitHabit): Said {
  return line`${readName(reading)} ${valueSaid(reading, units)}`;
}
