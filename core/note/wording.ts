import type { Doubt, Reading } from '../language/utterance.ts';
import { PLACES } from '../terms/names.ts';
import { quantityTerm } from '../terms/quantities.ts';
import { figureText, heardNumber, poundsAndOunces, withSymbol } from '../replies/amounts.ts';
import { EVENT_WORDS } from '../replies/readings.ts';
import { unitRow, type UnitId } from '../units/units.ts';

/** A reading as it stands on paper: its full name, its value as said with its unit, and how it was taken. */
export function readingWritten(reading: Reading): string {
  return [nameWritten(reading), valueWritten(reading), ...circumstances(reading)].join(' ');
}

export function nameWritten({ quantity, place }: Pick<Reading, 'quantity' | 'place'>): string {
  const { name } = quantityTerm(quantity);
  return place === null ? name : `${name} at ${PLACES[place]}`;
}

export function valueWritten(reading: Reading | Doubt): string {
  const { value, low, high, unit, hedged, overlimit } = reading;
  if (overlimit) return 'over limit';
  const compound = poundsAndOunces(reading);
  if (compound) return `${hedged ? 'about ' : ''}${compound.text}`;
  if (value !== undefined) return `${hedged ? 'about ' : ''}${numberWritten(value, unit)}`;
  if (low === undefined || high === undefined) return 'without a number';
  return `${heardNumber(low)} to ${numberWritten(high, unit)}`;
}

function numberWritten(value: number, unit: UnitId | null): string {
  const digits = heardNumber(value);
  return unit === null ? `${digits} (no unit said)` : withSymbol(digits, unitRow(unit).symbol);
}

function circumstances({ event, when, afterMinutes, gasTemp, refrigerant }: Reading): string[] {
  return [
    refrigerant && `of ${refrigerant}`,
    gasTemp && `at ${figureText(gasTemp)}`,
    afterMinutes !== undefined && `after ${heardNumber(afterMinutes)} min`,
    event && EVENT_WORDS[event],
    when && 'on arrival',
  ].filter((piece) => typeof piece === 'string');
}

export function sentence(words: string): string {
  const trimmed = words.trim();
  const start = trimmed.charAt(0).toUpperCase() + trimmed.slice(1);
  return /[.?!]$/.test(start) ? start : `${start}.`;
}

export function listed(items: readonly string[]): string {
  const last = items.at(-1) ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} and ${last}`;
}
