import { isOneProduct } from '../visit/probed.ts';
import type { VisitState } from '../visit/state.ts';
import { isToReadAgain } from '../visit/to-read-again.ts';
import type { AnswerableId } from '../terms/quantities.ts';
import { READ } from './carried.ts';
import { beforeRows, latestRows, sheet, type SheetLine } from './sheet.ts';
import type { BeforeAfterRow, Known, Needs, Refused, Verdict, Working } from './verdict.ts';

export const NOTHING_RECORDED: Refused = {
  kind: 'refused',
  about: null,
  reason: 'nothingRecorded',
};

/** Where the one that was asked for was not read before, all that was shows that it was not. */
export function beforeOf(state: VisitState, about?: AnswerableId): Verdict {
  const all = beforeRows(state);
  const asked = all.filter((row) => row.about === about);
  const rows = asked.length > 0 ? asked : all;
  return rows.length === 0 ? NEEDS_BEFORE : { ...READ, answer: 'before', rows };
}

export function beforeAfterOf(state: VisitState): Verdict {
  const lines = sheet(state).filter(
    ({ about, before }) => before !== null && (about !== 'productTemp' || isOneProduct(state)),
  );
  if (lines.length === 0) return NEEDS_BEFORE;
  const moved = lines.filter((line) => line.after !== null && isSpoken(line));
  if (moved.length === 0) return NEEDS_AFTER;
  // A voltage traced the fault: that nobody took it again is no gap in the record.
  const blank = lines.filter(
    (line) =>
      line.after === null &&
      !line.isWorked &&
      line.place === null &&
      isToReadAgain(line.about, state),
  );
  const rows = [...moved, ...blank];
  return { ...READ, answer: 'beforeAfter', rows: rows.map(toRow) };
}

/** Heard in one go: what was read, and of what follows from it what a colleague would ask after. */
function isSpoken({ about, isWorked }: SheetLine): boolean {
  return !isWorked || about === 'split' || about === 'superheat' || about === 'subcooling';
}

/** The verdict's row is what was asked for; the line's target belongs to the sheet. */
function toRow({
  about,
  place,
  before,
  after,
  unit,
  change,
  changeUnit,
}: SheetLine): BeforeAfterRow {
  return { about, place, before, after, unit, change, changeUnit };
}

const NEEDS_BEFORE: Needs = { kind: 'needs', about: null, need: 'before' };
const NEEDS_AFTER: Needs = { kind: 'needs', about: null, need: 'after' };

export function readbackOf(state: VisitState): Verdict {
  const rows = latestRows(state);
  return rows.length === 0 ? NOTHING_RECORDED : { ...READ, answer: 'readback', rows };
}

export function workingOf(lastAnswer: Known | null, state: VisitState): Verdict {
  if (!lastAnswer) return { kind: 'refused', about: null, reason: 'nothingAnsweredYet' };
  const of = lastAnswer.answer === 'working' ? lastAnswer.of : lastAnswer;
  const { formula, equation, inputs, source } = of;
  const shown = equation === undefined ? {} : { equation };
  return {
    ...READ,
    formula,
    ...shown,
    inputs,
    source,
    answer: 'working',
    of,
    ages: agesOf(inputs, state),
  };
}

const MS_A_MINUTE = 60_000;

/** By the moment of the question: core has no clock. A device's clock set back makes no reading younger than now. */
function agesOf(inputs: Working['inputs'], { history }: VisitState): readonly (number | null)[] {
  const now = history.at(-1)?.at ?? null;
  return inputs.map(({ from, at }) =>
    from !== 'read' || at === undefined || now === null
      ? null
      : Math.max(0, Math.floor((now - at) / MS_A_MINUTE)),
  );
}
