import { SHORT_NAMES } from '../../core/replies/names.ts';
import { QUANTITIES, type QuantityId } from '../../core/terms/quantities.ts';
import { SHOWN_UNITS } from '../../core/units/shown-unit.ts';
import { UNITS } from '../../core/units/units.ts';
import type { VisitState } from '../../core/visit/state.ts';
import { latestAmount } from '../../core/visit/views.ts';
import { formatNumber } from '../../core/units/format-amount.ts';
import { ALWAYS_SHOWN } from './sheet-model.ts';

/** A reading that can be entered, and what it was last. */
export interface KeyedQuantity {
  readonly quantity: QuantityId;
  readonly name: string;
  readonly last: string;
}

/** What was asked for, then what a first look at a unit reads, then whatever else was read on this visit. */
export function keyedQuantities(visit: VisitState): readonly KeyedQuantity[] {
  const read = visit.readings.flatMap(({ reading }) =>
    reading.place === null ? [reading.quantity] : [],
  );
  const wanted = visit.wanted === null ? [] : [visit.wanted];
  return [...new Set([...wanted, ...ALWAYS_SHOWN, ...read])].map((quantity) => ({
    quantity,
    name: nameOf(quantity),
    last: lastOf(visit, quantity),
  }));
}

function lastOf(visit: VisitState, quantity: QuantityId): string {
  const last = latestAmount(visit, quantity);
  return last === null ? '' : `${formatNumber(last.value, 6)} ${UNITS[last.unit].symbol}`;
}

/** As short as it is said; "outdoor 80" alone is understood of nothing. */
export const nameOf = (quantity: QuantityId): string =>
  quantity === 'outdoorTemp' ? QUANTITIES[quantity].name : SHORT_NAMES[quantity];

/** What a gauge and a thermometer of that habit show; the rest is asked for where it is not plain. */
export function unitShown(visit: VisitState, quantity: QuantityId): string {
  const shown = SHOWN_UNITS[visit.settings.units];
  const { dimension } = QUANTITIES[quantity];
  return dimension === 'gaugePressure' || dimension === 'temperature'
    ? UNITS[shown[dimension]].symbol
    : '';
}

/** What would be said: a bare number answers what was asked for, wherever that is to be read. */
export function wordsOf(visit: VisitState, quantity: QuantityId, entered: string): string {
  const name = visit.wanted === quantity ? '' : nameOf(quantity);
  return [name, entered, unitShown(visit, quantity)].filter((part) => part !== '').join(' ');
}

export const KEYS = ['7', '8', '9', '4', '5', '6', '1', '2', '3', '.', '0', '−'] as const;
export type Key = (typeof KEYS)[number];

/** No gauge shows more. */
const MOST_DIGITS = 6;

/** What stands there after a key; a key that makes no number of it changes nothing. */
export function afterKey(entered: string, key: Key): string {
  if (key === '−') return entered.startsWith('-') ? entered.slice(1) : `-${entered}`;
  if (key === '.')
    return entered.includes('.') ? entered : `${/\d/.test(entered) ? entered : `${entered}0`}.`;
  return entered.replace(/\D/g, '').length < MOST_DIGITS ? entered + key : entered;
}

export const isNumber = (entered: string): boolean => /^-?\d+(\.\d+)?$/.test(entered);
