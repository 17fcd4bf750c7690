import { figureText } from '../replies/amounts.ts';
import type { Amount } from '../units/amount.ts';
import { convert } from '../units/convert.ts';
import type { UnitId } from '../units/units.ts';
import type { VisitState } from '../visit/state.ts';
import { amountOf, refrigerantAccount, type ReadingEntry } from '../visit/views.ts';
import type { NoteSection } from './note.ts';
import { sentence, valueWritten } from './wording.ts';

/** Every movement as it was weighed, and the sums: each refrigerant keeps an account of its own. */
export function refrigerantSection(state: VisitState): Pick<NoteSection, 'lines' | 'table'> {
  const { added, recovered } = refrigerantAccount(state);
  const moved = [...added, ...recovered];
  const kinds = [...new Set(moved.map((entry) => kindOf(entry, state)))];
  if (kinds.length === 0) return { lines: nothingMoved(state) };
  return { lines: kinds.flatMap((kind) => accountLines(kind, state)) };
}

/** That none was moved is part of the record: the next leak calculation leans on it. */
function nothingMoved({ work, readings }: VisitState): readonly string[] {
  const isEmpty = work.length === 0 && readings.length === 0;
  return isEmpty ? [] : ['No refrigerant was recorded in or out.'];
}

const UNSTATED = 'refrigerant of a kind not stated';

function kindOf({ reading }: ReadingEntry, { unit }: VisitState): string {
  return reading.refrigerant ?? unit.refrigerant ?? UNSTATED;
}

function accountLines(kind: string, state: VisitState): readonly string[] {
  const { added, recovered } = refrigerantAccount(state);
  const own = (entries: readonly ReadingEntry[]): readonly ReadingEntry[] =>
    entries.filter((entry) => kindOf(entry, state) === kind);
  const [into, out] = [own(added), own(recovered)];
  return [
    ...into.map(({ reading }) => sentence(`Added ${valueWritten(reading)} of ${kind}`)),
    ...out.map(({ reading }) => sentence(`Recovered ${valueWritten(reading)} of ${kind}`)),
    ...balanceLines(kind, into, out),
  ];
}

/** One movement needs no sum; where one has no weight, the sum says that it leaves it out. */
function balanceLines(
  kind: string,
  into: readonly ReadingEntry[],
  out: readonly ReadingEntry[],
): readonly string[] {
  const all = [...into, ...out];
  const weighed = all.map(({ reading }) => amountOf(reading)).filter((amount) => amount !== null);
  const unit = weighed[0]?.unit;
  if (all.length < 2 || unit === undefined) return [];
  const [added, recovered] = [total(into, unit), total(out, unit)];
  const missing = weighed.length < all.length ? ', leaving out what has no weight' : '';
  return [
    sentence(
      `${kind}: in ${figureText(added)}, out ${figureText(recovered)}, net ${netWords(added, recovered)}${missing}`,
    ),
  ];
}

function total(entries: readonly ReadingEntry[], unit: UnitId): Amount {
  const sum = entries.reduce((so, { reading }) => {
    const amount = amountOf(reading);
    return so + ((amount && convert(amount, unit))?.value ?? 0);
  }, 0);
  return { value: sum, unit };
}

function netWords(added: Amount, recovered: Amount): string {
  const net = added.value - recovered.value;
  const shown = figureText({ value: Math.abs(net), unit: added.unit });
  if (net === 0) return 'nothing';
  return net > 0 ? `${shown} added` : `${shown} taken out`;
}
