import { sheetRows, type ReadingEntry, type SheetRow } from '../../core/visit/views.ts';
import type { VisitState } from '../../core/visit/state.ts';
import type { Reading } from '../../core/language/utterance.ts';
import { PLACES } from '../../core/terms/names.ts';
import { QUANTITIES, type QuantityId } from '../../core/terms/quantities.ts';
import { isNamedByUnit, placedName } from '../../core/replies/names.ts';
import type { Amount } from '../../core/units/amount.ts';
import { formatAmount, formatNumber } from '../../core/units/format-amount.ts';
import { SHOWN_UNITS, type UnitHabit } from '../../core/units/shown-unit.ts';
import type { Dimension } from '../../core/units/dimensions.ts';
import type { Comparison } from '../../core/advice/verdict.ts';
import { UNITS, type UnitId } from '../../core/units/units.ts';

/** One line of the ledger, ready to be shown. */
export interface LedgerLine {
  readonly id: string;
  readonly quantity: QuantityId;
  readonly name: string;
  /** Stands by the name, so that the columns are bare numbers; a cell in another unit carries its own. */
  readonly unit: string;
  readonly before: string | null;
  readonly after: string | null;
  readonly target: string | null;
  /** How far the newest reading is off: "21 over". */
  readonly off: string | null;
  readonly wanted: boolean;
  /** Read last: the eye is led to it. */
  readonly newest: boolean;
}

/** What a first look at a unit reads, in the order a person reads it (common practice). Blank until read. */
export const ALWAYS_SHOWN: readonly QuantityId[] = [
  'ambientTemp',
  'boxTemp',
  'headPressure',
  'suctionPressure',
  'suctionLineTemp',
  'liquidLineTemp',
];

/** What core says of one quantity of the visit as it stands. */
export interface Judged {
  readonly target: Amount | null;
  readonly off: Comparison | null;
}
export type Judge = (quantity: QuantityId) => Judged;

export function ledgerLines(visit: VisitState, judge: Judge): readonly LedgerLine[] {
  const newest = visit.readings.at(-1)?.id ?? null;
  return inOrder(sheetRows(visit)).map((row) => {
    const unit = unitOf(row) ?? usualUnit(row.quantity, visit.settings.units);
    const { target, off } = row.place === null ? judge(row.quantity) : NOTHING_KNOWN;
    return {
      id: row.place === null ? row.quantity : `${row.quantity}-${row.place}`,
      quantity: row.quantity,
      name: nameOf(row),
      unit: unit === null ? '' : UNITS[unit].symbol,
      before: row.before && cell(row.before, unit),
      after: row.after && cell(row.after, unit),
      target: target && targetCell(target, unit),
      off: off && offWords(off),
      wanted: visit.wanted === row.quantity,
      newest: newest !== null && (row.before?.id === newest || row.after?.id === newest),
    };
  });
}

const NOTHING_KNOWN: Judged = { target: null, off: null };

function unitOf({ before, after }: SheetRow): UnitId | null {
  return before?.reading.unit ?? after?.reading.unit ?? null;
}

function usualUnit(quantity: QuantityId, units: UnitHabit): UnitId | null {
  const { dimension } = QUANTITIES[quantity];
  const shown: Partial<Record<Dimension, UnitId>> = SHOWN_UNITS[units];
  return shown[dimension] ?? null;
}

/** The usual ones first, blanks included; then whatever else was read, in the trade's own order. */
function inOrder(rows: readonly SheetRow[]): readonly SheetRow[] {
  const usual = ALWAYS_SHOWN.flatMap((quantity) => {
    const read = rows.filter((row) => row.quantity === quantity);
    return read.length > 0 ? read : [blankRow(quantity)];
  });
  const order = Object.keys(QUANTITIES);
  const others = rows
    .filter((row) => !ALWAYS_SHOWN.includes(row.quantity))
    .toSorted((a, b) => order.indexOf(a.quantity) - order.indexOf(b.quantity));
  return [...usual, ...others];
}

function blankRow(quantity: QuantityId): SheetRow {
  return { quantity, place: null, before: null, after: null, afterIsMarked: false };
}

/** The unit beside it tells a voltage from a current: "contactor V". */
function nameOf({ quantity, place }: SheetRow): string {
  return place !== null && isNamedByUnit(quantity) ? PLACES[place] : placedName(quantity, place);
}

function cell({ reading }: ReadingEntry, rowUnit: UnitId | null): string {
  const unit = reading.unit === rowUnit ? null : reading.unit;
  return `${reading.hedged ? 'about ' : ''}${valueOf({ ...reading, unit })}`;
}

/** As said: nothing said is rounded away. */
function valueOf(reading: Reading): string {
  const { value, low, high, unit } = reading;
  if (reading.overlimit) return 'over limit';
  if (low !== undefined && high !== undefined) return withUnit(`${low} to ${high}`, unit);
  return value === undefined ? '?' : withUnit(formatNumber(value, 6), unit);
}

function withUnit(digits: string, unit: UnitId | null): string {
  return unit === null ? digits : `${digits} ${UNITS[unit].symbol}`;
}

function targetCell(target: Amount, rowUnit: UnitId | null): string {
  const { digits, symbol } = formatAmount(target);
  return target.unit === rowUnit ? digits : `${digits} ${symbol}`;
}

function offWords({ value, unit, direction }: Comparison): string {
  return direction === 'on' ? 'on target' : `${formatAmount({ value, unit }).digits} ${direction}`;
}
