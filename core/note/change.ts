import { sheet, type SheetLine } from '../advice/sheet.ts';
import { figureText } from '../replies/amounts.ts';
import { PLACES } from '../terms/names.ts';
import { quantityTerm } from '../terms/quantities.ts';
import { formatAmount } from '../units/format-amount.ts';
import type { Amount } from '../units/amount.ts';
import { convert } from '../units/convert.ts';
import type { UnitId } from '../units/units.ts';
import type { VisitState } from '../visit/state.ts';
import { isOneProduct } from '../visit/probed.ts';
import type { NoteSection } from './note.ts';
import { sentence } from './wording.ts';

/** Before beside after, with the difference and what it should be, for what was read in both columns. */
export function changeSection(state: VisitState): Pick<NoteSection, 'lines' | 'table'> {
  const moved = sheet(state).filter(
    ({ about, before, after }) =>
      before !== null && after !== null && (about !== 'productTemp' || isOneProduct(state)),
  );
  if (moved.length === 0) return { lines: [] };
  return {
    lines: moved.filter(isForTheCustomer).map((line) => sentence(movedWords(line))),
    table: {
      columns: ['', 'Before', 'After', 'Change', 'Should be'],
      rows: moved.map((line) => [
        nameOf(line),
        shown(line.before, line),
        shown(line.after, line),
        changeWords(line),
        line.target ? figureText(line.target) : '',
      ]),
    },
  };
}

/** What can be told without a gauge. */
const FOR_THE_CUSTOMER = new Set(['boxTemp', 'productTemp']);

function isForTheCustomer({ about, place }: SheetLine): boolean {
  return place === null && FOR_THE_CUSTOMER.has(about);
}

function nameOf({ about, place }: SheetLine): string {
  const { name } = quantityTerm(about);
  return place === null ? name : `${name} at ${PLACES[place]}`;
}

function shown(value: number | null, { unit }: SheetLine): string {
  return value === null ? '' : figureText(asMegohms({ value, unit }));
}

/** Insulation is in ohms where it failed and in megohms where it is sound: each as a meter shows it. */
function asMegohms(amount: Amount): Amount {
  return amount.unit === 'ohm' && amount.value >= MEGOHM
    ? (convert(amount, 'Mohm') ?? amount)
    : amount;
}
const MEGOHM = 1e6;

function changeWords({ change, changeUnit }: SheetLine): string {
  if (change === null) return '';
  if (change === 0) return 'same';
  if (changeUnit === 'ohm' && Math.abs(change) >= MEGOHM) return change > 0 ? 'up' : 'down';
  return `${change > 0 ? 'up' : 'down'} ${changeText(Math.abs(change), changeUnit)}`;
}

/** A ratio goes down by 1, not by "1:1". */
function changeText(value: number, unit: UnitId): string {
  return unit === 'ratio' ? formatAmount({ value, unit }).digits : figureText({ value, unit });
}

function movedWords(line: SheetLine): string {
  const name = line.about === 'boxTemp' ? 'The box' : `The ${nameOf(line)}`;
  const [before, after] = [shown(line.before, line), shown(line.after, line)];
  if (line.change === 0) return `${name} stayed at ${after}`;
  const way = (line.change ?? 0) > 0 ? 'went up' : 'came down';
  return `${name} ${way} from ${before} to ${after}${targetWords(line)}`;
}

function targetWords({ target, deviation }: SheetLine): string {
  if (!target || !deviation) return '';
  const { measured, value, unit, direction } = deviation;
  if (direction === 'on') return ', where it should be';
  if (isWithin(target, measured)) return ', within the usual range';
  return `; it should be about ${figureText(target)}, so it is ${figureText({ value, unit })} ${direction}`;
}

function isWithin({ low, high }: NonNullable<SheetLine['target']>, measured: number): boolean {
  return low !== undefined && high !== undefined && measured >= low && measured <= high;
}
