import { SETTINGS, type QuantityId } from '../terms/quantities.ts';
import type { VisitState } from '../visit/state.ts';
import type { ReadingEntry } from '../visit/views.ts';
import type { NoteSection, NoteTable } from './note.ts';
import { nameWritten, readingWritten, sentence, valueWritten } from './wording.ts';

/** What has a section of its own, or stands with the unit. */
const ELSEWHERE: ReadonlySet<QuantityId> = new Set<QuantityId>([
  'refrigerantAdded',
  'refrigerantRecovered',
  'refrigerantLost',
  'productTemp',
  ...SETTINGS,
]);

/** What was read in a column, every reading of it: a second look is part of the record. */
export function readingsSection(
  column: 'before' | 'after',
  state: VisitState,
): Pick<NoteSection, 'lines' | 'table'> {
  const entries = columnEntries(column, state);
  if (entries.length === 0) return { lines: absence(column, state) };
  return { lines: plainLines(column, entries), table: tableOf(entries) };
}

/** The after as it was marked; until then, whatever was read since the before. */
function columnEntries(column: 'before' | 'after', state: VisitState): readonly ReadingEntry[] {
  const of = (phase: ReadingEntry['phase']): readonly ReadingEntry[] =>
    state.readings.filter(
      (entry) =>
        entry.phase === phase &&
        entry.reading.event === undefined &&
        !ELSEWHERE.has(entry.reading.quantity),
    );
  if (column === 'before') return of('before');
  return [...of('work'), ...of('after')];
}

function absence(column: 'before' | 'after', state: VisitState): readonly string[] {
  if (column === 'before') return ['No readings before work were recorded.'];
  return state.work.length > 0 ? ['No readings after work were recorded.'] : [];
}

/** For the customer: the box first, it is what they bought. */
function plainLines(
  column: 'before' | 'after',
  entries: readonly ReadingEntry[],
): readonly string[] {
  const box = entries.findLast(({ reading }) => reading.quantity === 'boxTemp');
  if (!box) return [];
  const was = column === 'before' ? 'The box was at' : 'The box was last read at';
  return [sentence(`${was} ${valueWritten(box.reading)}`)];
}

function tableOf(entries: readonly ReadingEntry[]): NoteTable {
  return {
    columns: ['Reading', 'Value'],
    rows: entries.map(({ reading }) => [nameWritten(reading), valueOnly(reading)]),
  };
}

function valueOnly(reading: ReadingEntry['reading']): string {
  return readingWritten(reading).slice(nameWritten(reading).length + 1);
}

export function productLines({ readings }: VisitState): readonly string[] {
  const taken = readings.filter(({ reading }) => reading.quantity === 'productTemp');
  return taken.map(({ reading, phase }) =>
    sentence(`Product ${valueWritten(reading)}${WHEN[phase]}`),
  );
}

const WHEN: Record<ReadingEntry['phase'], string> = {
  before: ' before work',
  work: ' during the work',
  after: ' after work',
};
