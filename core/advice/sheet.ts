import type { AnswerableId } from '../terms/quantities.ts';
import type { PlaceId } from '../terms/names.ts';
import type { Amount } from '../units/amount.ts';
import { convert } from '../units/convert.ts';
import { formatAmount } from '../units/format-amount.ts';
import { probed } from '../visit/probed.ts';
import type { Phase, VisitState } from '../visit/state.ts';
import {
  amountOf,
  isCompared,
  sheetRows,
  type ReadingEntry,
  type SheetRow,
} from '../visit/views.ts';
import { shownUnit } from './current.ts';
import { deviationNow } from './compare.ts';
import { differenceUnit } from './deviation.ts';
import { measured } from './measured.ts';
import { wanted, type Wanted } from './targets.ts';
import type { BeforeAfterRow, Deviation, ReadRow, Refused } from './verdict.ts';

/** One line of the ledger: before, since, and what it should be as things now stand. */
export interface SheetLine extends BeforeAfterRow {
  readonly target: Wanted | null;
  readonly deviation: Deviation | null;
  /** Worked out from other readings rather than read. */
  readonly isWorked: boolean;
}

/** Worked out beside the readings, where both columns' readings allow it. */
const ALSO_WORKED: readonly AnswerableId[] = [
  'condensingTemp',
  'split',
  'evaporatingTemp',
  'temperatureDifference',
  'superheat',
  'subcooling',
  'compressionRatio',
];

/** Every quantity that has a before and an after, as read and as worked out from each column's own readings. */
export function sheet(state: VisitState): readonly SheetLine[] {
  const read = sheetRows(state).filter(({ quantity }) => isCompared(quantity));
  const isRead = new Set<AnswerableId>(read.map(({ quantity }) => quantity));
  const also = ALSO_WORKED.filter((about) => !isRead.has(about));
  return [
    ...read.flatMap((row) => readLine(row, state)),
    ...also.flatMap((about) => workedLine(about, state)),
  ];
}

function readLine(row: SheetRow, state: VisitState): readonly SheetLine[] {
  const { quantity, place } = row;
  const [before, after] = [shownAmount(row.before, state), shownAmount(row.after, state)];
  const line = lineOf({ about: quantity, place }, { before, after }, state);
  return line ? [line] : [];
}

function shownAmount(entry: ReadingEntry | null, state: VisitState): Amount | null {
  const amount = entry && amountOf(entry.reading);
  if (!entry || !amount) return null;
  return convert(amount, shownUnit(entry.reading.quantity, state) ?? amount.unit);
}

function workedLine(about: AnswerableId, state: VisitState): readonly SheetLine[] {
  const value = (...phases: readonly Phase[]): Amount | null => {
    const column = only(state, phases);
    return isStandingStill(column) ? null : workedIn(about, column);
  };
  const after = value('after') ?? value('work', 'after');
  const line = lineOf({ about, place: null }, { before: value('before'), after }, state);
  return line ? [{ ...line, isWorked: true }] : [];
}

/** Of the newest readings that belong together: a head read once more leaves the liquid line with the one before. */
function workedIn(about: AnswerableId, column: VisitState): Amount | null {
  const found = measured(about, column);
  if (found.kind === 'known') return found.value;
  if (found.kind === 'refused') return belowZero(found);
  if (!OF_TWO.has(about) || column.readings.length === 0) return null;
  return workedIn(about, { ...column, readings: column.readings.slice(0, -1) });
}

const OF_TWO: ReadonlySet<AnswerableId> = new Set<AnswerableId>(['superheat', 'subcooling']);

/** A liquid line above bubble is what the sheet is looked at for: it stands there as it was read. */
const belowZero = (refused: Refused): Amount | null =>
  refused.reason === 'belowZeroSubcooling' ? { value: refused.value, unit: refused.unit } : null;

/** Condensing below the air it gives its heat to: it stands, and its pressures say nothing of split or superheat. */
function isStandingStill(state: VisitState): boolean {
  const split = measured('split', state);
  return split.kind === 'known' && split.value.value < 0;
}

/** The visit as if only these columns had been read; what the unit is set to stays. */
export function only(state: VisitState, phases: readonly Phase[]): VisitState {
  return {
    ...state,
    readings: state.readings.filter(
      ({ phase, reading }) => phases.includes(phase) || !isCompared(reading.quantity),
    ),
  };
}

interface Named {
  readonly about: AnswerableId;
  readonly place: PlaceId | null;
}
interface Columns {
  readonly before: Amount | null;
  readonly after: Amount | null;
}

function lineOf(
  { about, place }: Named,
  { before, after }: Columns,
  state: VisitState,
): SheetLine | null {
  const unit = before?.unit ?? after?.unit;
  if (unit === undefined) return null;
  const since = after && convert(after, unit);
  const changeUnit = differenceUnit(unit, state);
  const target = place === null ? wanted(about, state) : null;
  return {
    about,
    place,
    before: before?.value ?? null,
    after: since?.value ?? null,
    unit,
    change: before && since ? shownChange(before, since) : null,
    changeUnit,
    target: target?.kind === 'known' ? target.value : null,
    deviation: target?.kind === 'known' ? deviationNow(about, target.value, state) : null,
    isWorked: false,
  };
}

/** By the values as they are shown: 127.7 less 114.8 is 12.9 on paper, whatever the third digits were. */
function shownChange(before: Amount, after: Amount): number {
  return shownValue(after) - shownValue(before);
}

function shownValue(amount: Amount): number {
  return Number(formatAmount(amount).digits);
}

/** The latest of every quantity at its place, in the order they were first read. */
export function latestRows(state: VisitState): readonly ReadRow[] {
  return sheetRows(state).flatMap(({ quantity, place, before, after }) => {
    if (quantity === 'productTemp') return productRows(state, 'ever');
    const shown = shownAmount(after, state) ?? shownAmount(before, state);
    return shown ? [{ about: quantity, place, ...shown }] : [];
  });
}

export function beforeRows(state: VisitState): readonly ReadRow[] {
  return sheetRows(state).flatMap(({ quantity, place, before }) => {
    if (quantity === 'productTemp') return productRows(state, 'before');
    const shown = shownAmount(before, state);
    return shown && isCompared(quantity) ? [{ about: quantity, place, ...shown }] : [];
  });
}

/** A row for each food that was probed: the last of it. */
export function productRows(
  state: VisitState,
  when: Parameters<typeof probed>[1],
): readonly ReadRow[] {
  return probed(state, when).flatMap(({ name, amount }) => {
    const shown = convert(amount, shownUnit('productTemp', state) ?? amount.unit);
    const of = name === null ? {} : { of: name };
    return shown ? [{ about: 'productTemp' as const, place: null, ...of, ...shown }] : [];
  });
}
