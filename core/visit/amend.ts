import type { Command, Reading } from '../language/utterance.ts';
import { QUANTITIES, type QuantityId, quantityTerm } from '../terms/quantities.ts';
import { UNITS } from '../units/units.ts';
import type { Keeping } from './keeping.ts';
import type { VisitState } from './state.ts';
import { factKept, timesTold } from './time-told.ts';
import { isNewer, openQuestion } from './views.ts';

type Amend = Extract<Command, { do: 'amend' }>;

/** "Make it eighty nine": the newest reading, or the newest of the quantity named, gets another value. */
export function amend(command: Amend, state: VisitState): Keeping {
  if (command.unit === 'min') return amendTime(command.value, state) ?? NOTHING_TO_AMEND;
  if (command.total === true) return restOfTotal(command, state);
  return (
    amendDoubt(command, state) ??
    amendLeftOver(command, state) ??
    amendReading(command, state) ??
    readAnew(command) ??
    NOTHING_TO_AMEND
  );
}

const NOTHING_TO_AMEND: Keeping = {
  bodies: [],
  acknowledgement: { kind: 'nothingToAmend' },
};

/** A value given in answer to a doubt replaces the doubted one. */
function amendDoubt(command: Amend, state: VisitState): Keeping | null {
  const open = state.doubts.at(-1);
  if (!open || !isAbout(command, open.doubt)) return null;
  const newestReading = state.readings.at(-1);
  if (newestReading && isNewer(state, newestReading.id, open.id)) return null;
  const { why, or, ...doubted } = open.doubt;
  const reading = amendedReading(doubted, command);
  return {
    bodies: [
      { type: 'doubtSettled', v: 1, target: open.id, kept: false },
      { type: 'readingTaken', v: 1, reading },
    ],
    acknowledgement: { kind: 'amended', from: doubted, to: reading },
  };
}

/** "Make that one fourteen", of a number that nobody knows what it is of: it is asked of the new one, and no reading changes. */
function amendLeftOver({ quantity, value, unit }: Amend, state: VisitState): Keeping | null {
  const open = openQuestion(state);
  if (quantity !== null || unit !== undefined || open?.kind !== 'leftOver') return null;
  const { id, words } = open.of;
  const newest = state.readings.at(-1);
  if (newest && isNewer(state, newest.id, id)) return null;
  const digits = String(value);
  return {
    bodies: [
      { type: 'leftOverDropped', v: 1, target: id },
      { type: 'numberLeftOver', v: 1, digits, words },
    ],
    acknowledgement: { kind: 'leftOver', digits },
  };
}

/** "Make that three hours": of the labor, the road or the time on site that was told last. */
function amendTime(value: number, state: VisitState): Keeping | null {
  const told = timesTold(state);
  const last = told.at(-1);
  if (last === undefined || last.fact.fact === 'hereSince') return null;
  const fact = { ...last.fact, value };
  return {
    bodies: [
      { type: 'entryTakenBack', v: 1, target: last.id },
      { type: 'factStated', v: 1, fact },
    ],
    acknowledgement: factKept(fact, told.slice(0, -1)),
  };
}

function amendReading(command: Amend, state: VisitState): Keeping | null {
  const entry = state.readings.findLast(({ reading }) => isAbout(command, reading));
  if (!entry) return null;
  const reading = amendedReading(entry.reading, command);
  return {
    bodies: [{ type: 'readingAmended', v: 1, target: entry.id, reading }],
    acknowledgement: { kind: 'amended', from: entry.reading, to: reading },
  };
}

/**
 * "That's eleven four total", behind six four that was kept: the rest went the same way. What was told before may as well
 * have been a little more than all of it, and then the last of it was less.
 */
function restOfTotal({ quantity, value, unit }: Amend, state: VisitState): Keeping {
  const parts = state.readings.filter(({ reading }) => reading.quantity === quantity);
  const last = parts.at(-1);
  if (last === undefined || unit === undefined) return NOTHING_TO_AMEND;
  const { factor } = UNITS[unit];
  const told = parts.reduce((sum, { reading }) => sum + toBase(reading) / factor, 0);
  const rest = Math.round((value - told) * PLACES) / PLACES;
  const ofLast = (amount: number): Reading => ({ ...last.reading, value: amount, unit });
  if (rest > 0) {
    const { words: _words, ...more } = ofLast(rest);
    const reading: Reading = {
      ...more,
      unitFrom: 'implied',
      words: `the rest of ${String(value)}`,
    };
    return {
      bodies: [{ type: 'readingTaken', v: 1, reading }],
      acknowledgement: { kind: 'reading', reading },
    };
  }
  const less = Math.round((toBase(last.reading) / factor + rest) * PLACES) / PLACES;
  if (rest === 0 || less <= 0)
    return { bodies: [], acknowledgement: { kind: 'reading', reading: ofLast(value) } };
  return {
    bodies: [{ type: 'readingAmended', v: 1, target: last.id, reading: ofLast(less) }],
    acknowledgement: { kind: 'amended', from: last.reading, to: ofLast(less) },
  };
}
/** Of an ounce, a hundredth. */
const PLACES = 100;
const toBase = ({ value = 0, unit }: Reading): number =>
  unit === null ? 0 : value * UNITS[unit].factor;

/** "Scratch that, head one ninety" where head was never read: it is a reading of its own. */
function readAnew({ quantity, value, unit }: Amend): Keeping | null {
  if (quantity === null || unit === undefined || isMetered(quantity)) return null;
  const words = `${quantityTerm(quantity).name} ${String(value)}`;
  const reading: Reading = { quantity, value, unit, unitFrom: 'implied', place: null, words };
  return {
    bodies: [{ type: 'readingTaken', v: 1, reading }],
    acknowledgement: { kind: 'reading', reading },
  };
}

/** What a meter shows belongs to a place, which was not told. */
const isMetered = (quantity: QuantityId): boolean => METERED.has(QUANTITIES[quantity].dimension);
const METERED: ReadonlySet<string> = new Set(['voltage', 'current', 'resistance', 'capacitance']);

/** The quantity, and the place where they are named; else what may be so much of that unit. */
const isAbout = ({ quantity, place, unit }: Amend, reading: Reading): boolean =>
  quantity === null
    ? unit === undefined || UNITS[unit].dimension === quantityTerm(reading.quantity).dimension
    : quantity === reading.quantity && (place === undefined || place === reading.place);

/** A range, a hedge or an over-limit mark belonged to the old value. */
function amendedReading(from: Reading, command: Amend): Reading {
  const { low, high, hedged, overlimit, ...rest } = from;
  return { ...rest, value: command.value, unit: command.unit ?? from.unit };
}
