import { sheet } from '../advice/sheet.ts';
import type { Reading } from '../language/utterance.ts';
import { figureText } from '../replies/amounts.ts';
import { clockWords } from '../replies/dates.ts';
import { quantityTerm, SETTINGS, type QuantityId } from '../terms/quantities.ts';
import type { VisitState } from '../visit/state.ts';
import { isAltered, isSinceAlteration } from '../visit/alterations.ts';
import { isCompared, type ReadingEntry } from '../visit/views.ts';
import { productMemos } from './complaint.ts';
import { seenAfterLines } from './findings.ts';
import type { NoteSection, NoteTable } from './note.ts';
import { isProduct } from '../visit/probed.ts';
import { productName } from '../terms/product-name.ts';
import { verdictLines } from './verdicts.ts';
import { nameWritten, readingWritten, sentence, valueWritten } from './wording.ts';

/** What has a section of its own, or stands with the unit. */
const ELSEWHERE: ReadonlySet<QuantityId> = new Set<QuantityId>([
  'refrigerantAdded',
  'refrigerantRecovered',
  'refrigerantLost',
  'productTemp',
  ...SETTINGS,
]);

/** Taken once, to find the fault or to prove the work: they have no before and no after. */
const isTest = ({ reading: { quantity, place } }: ReadingEntry): boolean =>
  place !== null || !isCompared(quantity);

/** What was read in a column, a row for each quantity: a second look is part of the record. */
export function readingsSection(
  column: 'before' | 'after',
  state: VisitState,
): Pick<NoteSection, 'lines' | 'table'> {
  const entries = columnEntries(column, state);
  const seen = column === 'after' ? seenAfterLines(state) : [];
  if (entries.length === 0) return { lines: [...absence(column, state), ...seen] };
  const rows = [...onceEach(entries, state), ...(column === 'after' ? workedRows(state) : [])];
  return { lines: [...plainLines(column, entries), ...seen], table: { columns: COLUMNS, rows } };
}

/** The last of a quantity is what stands, with its time where it was read more than once, and behind it what came before. */
function onceEach(
  entries: readonly ReadingEntry[],
  state: VisitState,
): readonly (readonly string[])[] {
  const quantities = [...new Set(entries.map(({ reading }) => reading.quantity))];
  return quantities.flatMap((quantity) => {
    const own = entries.filter(({ reading }) => reading.quantity === quantity);
    const [last, ...earlier] = own.toReversed();
    if (last === undefined) return [];
    const before = earlier.toReversed().map(valueWithTeller);
    const shown =
      before.length === 0
        ? valueWithTeller(last)
        : `${valueWithTeller(last)}${timeOf(last, state)}, earlier ${before.join(', ')}`;
    return [[nameWritten(last.reading), shown]];
  });
}

/** Nothing where the device did not keep how its clock stood. */
function timeOf({ id, at }: ReadingEntry, { history }: VisitState): string {
  const offset = history.find((event) => event.id === id)?.utcOffset;
  return offset === undefined ? '' : ` at ${clockWords(at, offset)}`;
}

const WORKED: ReadonlySet<string> = new Set(['superheat', 'subcooling']);

/** What the readings after come to; where there was a before, it stands among what changed. */
function workedRows(state: VisitState): readonly (readonly string[])[] {
  return sheet(state).flatMap(({ about, isWorked, before, after, unit, target }) => {
    if (!isWorked || !WORKED.has(about) || before !== null || after === null) return [];
    const should = target ? `, should be ${figureText(target)}` : '';
    return [[quantityTerm(about).name, figureText({ value: after, unit }) + should]];
  });
}

const written = ({ readings }: VisitState): readonly ReadingEntry[] =>
  readings.filter(({ reading }) => reading.event === undefined && !ELSEWHERE.has(reading.quantity));

/** The after as it was marked; until then, whatever was read since the last change, or since the before. */
function columnEntries(column: 'before' | 'after', state: VisitState): readonly ReadingEntry[] {
  const own = written(state).filter((entry) => !isTest(entry));
  if (column === 'before') return own.filter(({ phase }) => phase === 'before');
  const marked = own.filter(({ phase }) => phase === 'after');
  if (marked.length > 0) return marked;
  const isSince = isSinceAlteration(state);
  return own.filter((entry) => entry.phase === 'work' && (isSince(entry) || !isAltered(state)));
}

/** What was measured on the way: the tests as sentences, the rest as it was read. */
export function testsSection(state: VisitState): Pick<NoteSection, 'lines' | 'table'> {
  const inColumns = new Set([...columnEntries('before', state), ...columnEntries('after', state)]);
  const entries = written(state).filter((entry) => !inColumns.has(entry));
  const tabled = entries.filter(({ reading }) => TESTS[reading.quantity] === undefined);
  const lines = Object.entries(TESTS).flatMap(([quantity, name]) => {
    const own = entries.filter(({ reading }) => reading.quantity === quantity);
    return own.length === 0
      ? []
      : [sentence(`${name}: ${own.map(({ reading }) => valueOnly(reading)).join(', then ')}`)];
  });
  const told = [...drawnDownLines(state), ...lines, ...verdictLines(state)];
  return { lines: told, ...(tabled.length === 0 ? {} : { table: tableOf(tabled) }) };
}

/** How low the low side was pumped down or recovered. */
function drawnDownLines({ readings }: VisitState): readonly string[] {
  const values = readings.flatMap(({ reading: { event, ...reading } }) =>
    event === 'drawnDown' ? [valueOnly(reading)] : [],
  );
  return values.length === 0 ? [] : [sentence(`Low side drawn down to ${values.join(', then ')}`)];
}

const TESTS: Partial<Record<QuantityId, string>> = {
  testPressure: 'Nitrogen test',
  vacuum: 'Vacuum',
};

function absence(column: 'before' | 'after', state: VisitState): readonly string[] {
  if (column === 'before') return ['No readings before work were recorded.'];
  return isAltered(state) ? ['No readings after work were recorded.'] : [];
}

/** For the customer: the box first, it is what they bought. */
function plainLines(
  column: 'before' | 'after',
  entries: readonly ReadingEntry[],
): readonly string[] {
  const box = entries.findLast(
    ({ reading, reported }) => reading.quantity === 'boxTemp' && reported === undefined,
  );
  if (!box) return [];
  const was = column === 'before' ? 'The box was at' : 'The box was last read at';
  return [sentence(`${was} ${valueWritten(box.reading)}`)];
}

function tableOf(entries: readonly ReadingEntry[]): NoteTable {
  return {
    columns: COLUMNS,
    rows: entries.map((entry) => [nameWritten(entry.reading), valueWithTeller(entry)]),
  };
}

const COLUMNS = ['Reading', 'Value'];

const valueWithTeller = (entry: ReadingEntry): string => valueOnly(entry.reading) + told(entry);

const told = ({ reported }: ReadingEntry): string =>
  reported === undefined ? '' : ', as reported';

function valueOnly(reading: Reading): string {
  return readingWritten(reading).slice(nameWritten(reading).length + 1);
}

export function productLines(state: VisitState): readonly string[] {
  return [
    ...state.readings.filter(isProduct).map((entry) => {
      const { reading, phase } = entry;
      const name = productName(reading.words) ?? 'product';
      return sentence(`${name} ${valueWritten(reading)}${WHEN[phase]}${told(entry)}`);
    }),
    ...productMemos(state).map(({ memo }) => sentence(memo)),
  ];
}

const WHEN: Record<ReadingEntry['phase'], string> = {
  before: ' before work',
  work: ' during the work',
  after: ' after work',
};
