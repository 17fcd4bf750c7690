import type { Question } from '../language/utterance.ts';
import { CLEANING, type FindingStateId, type WorkKindId } from '../terms/names.ts';
import type { CivilDate } from '../units/civil-date.ts';
import type { VisitState } from '../visit/state.ts';
import type { DoneRow, FoundRow, HistoryAnswer, PastRow } from './history-verdict.ts';
import { movedRows } from './moved.ts';
import type { Refusal } from './verdict.ts';

type HistoryQuestion = Extract<Question, { readonly ask: 'history' }>;
type HistoryRefusal = Extract<
  Refusal,
  { readonly reason: 'unitNotNamed' | 'whichSite' | 'noEarlierVisit' }
>;

/** An earlier visit to the unit, of which the day is known. */
type Past = VisitState & { readonly openedOn: CivilDate };

type Earlier =
  | { readonly kind: 'visits'; readonly last: Past; readonly all: readonly Past[] }
  | ({ readonly kind: 'none' } & HistoryRefusal);

/** What was done and found on earlier visits to this unit, or why that is not known. */
export function historyOf(
  question: HistoryQuestion,
  state: VisitState,
  past: readonly VisitState[],
): HistoryAnswer | HistoryRefusal {
  const earlier = earlierVisits(state, past);
  if (earlier.kind === 'none') return { reason: earlier.reason };
  const { last, all } = earlier;
  const today = state.openedOn;
  if (question.did !== undefined) return lastDone(question.did, question, { all, today });
  if (question.about === 'again') {
    const rows = repeated(state, last);
    return { answer: 'seenBefore', today, last: last.openedOn, rows, unasked: false };
  }
  return { answer: 'lastVisit', today, ...pastRow(last) };
}

/** What this sentence made come back: found today, and on the last visit to this unit too. */
export function cameBack(
  before: VisitState,
  after: VisitState,
  past: readonly VisitState[],
): HistoryAnswer | null {
  const earlier = earlierVisits(after, past);
  if (earlier.kind === 'none') return null;
  const told = seenBefore(before, past)?.rows ?? [];
  const rows = repeated(after, earlier.last).filter((row) => !told.some(isSameFound(row)));
  if (rows.length === 0) return null;
  const last = earlier.last.openedOn;
  return { answer: 'seenBefore', today: after.openedOn, last, rows, unasked: true };
}

export interface SeenBefore {
  readonly on: CivilDate;
  readonly rows: readonly FoundRow[];
  /** Recommended then, and not done today. */
  readonly left: VisitState['recommendations'];
}

/** For the office: what of today was there last time, and what was recommended then and is still to do. */
export function seenBefore(state: VisitState, past: readonly VisitState[]): SeenBefore | null {
  const earlier = earlierVisits(state, past);
  if (earlier.kind === 'none') return null;
  const { last } = earlier;
  const left = last.recommendations.filter(
    ({ recommendation: { do: kind, part } }) =>
      // Who came back has done that.
      kind !== 'comeBack' &&
      !state.work.some(({ work }) => isSameWork(kind, work.did) && part === work.part),
  );
  return { on: last.openedOn, rows: repeated(state, last), left };
}

/** Newest first. A unit is known by its name, at its site where both visits name one; a site alone by its own. */
function earlierVisits(state: VisitState, past: readonly VisitState[]): Earlier {
  const { name, site } = state.unit;
  if (name === null && site === null) return { kind: 'none', reason: 'unitNotNamed' };
  const all = past
    .filter(hasDay)
    .filter((visit) => visit.visit !== state.visit && isBefore(visit, state))
    .filter(({ unit }) => isSameUnit(state.unit, unit))
    .toSorted((a, b) => (b.openedAt ?? 0) - (a.openedAt ?? 0));
  const [last] = all;
  if (last === undefined) return { kind: 'none', reason: 'noEarlierVisit' };
  const sites = new Set(all.flatMap(({ unit }) => (unit.site === null ? [] : [plain(unit.site)])));
  return site === null && sites.size > 1
    ? { kind: 'none', reason: 'whichSite' }
    : { kind: 'visits', last, all };
}

const hasDay = (visit: VisitState): visit is Past => visit.openedOn !== null;

const isBefore = (visit: VisitState, { openedAt }: VisitState): boolean =>
  openedAt === null || (visit.openedAt ?? 0) <= openedAt;

type Named = Pick<VisitState['unit'], 'name' | 'site'>;

function isSameUnit(now: Named, then: Named): boolean {
  const isElsewhere = now.site !== null && then.site !== null && !isSame(now.site, then.site);
  if (isElsewhere) return false;
  if (now.name === null) return then.site !== null;
  return then.name !== null && isSame(now.name, then.name);
}

const isSame = (one: string, other: string): boolean => plain(one) === plain(other);

/** "The walk-in" is "walk in". */
const plain = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .replace(/^ ?the /, '')
    .trim();

/** As it should be, it has not come back. */
const SOUND: ReadonlySet<FindingStateId> = new Set(['ok', 'running', 'closed', 'cold']);

function repeated(state: VisitState, last: VisitState): readonly FoundRow[] {
  return foundOn(state)
    .filter(({ state: found }) => !SOUND.has(found))
    .filter((row) => foundOn(last).some(isSameFound(row)));
}

export const isSameFound =
  (one: FoundRow) =>
  (other: FoundRow): boolean =>
    one.part === other.part && one.state === other.state;

/** Each once, however often it was said. */
function foundOn({ findings }: VisitState): readonly FoundRow[] {
  const rows = findings.map(({ finding: { part, state } }) => ({ part, state }));
  return rows.filter((row, index) => rows.findIndex(isSameFound(row)) === index);
}

function pastRow(visit: Past): PastRow {
  const did = visit.work.map(({ work: { did: kind, part } }): DoneRow => ({ did: kind, part }));
  return {
    on: visit.openedOn,
    found: foundOn(visit),
    did,
    left: visit.recommendations,
    moved: movedRows(visit),
  };
}

function lastDone(
  did: WorkKindId,
  { part: at }: HistoryQuestion,
  { all, today }: { readonly all: readonly Past[]; readonly today: CivilDate | null },
): HistoryAnswer {
  const part = at ?? null;
  const done = all.find(({ work }) =>
    work.some(
      (each) => isSameWork(did, each.work.did) && (part === null || each.work.part === part),
    ),
  );
  const since = all.at(-1)?.openedOn ?? null;
  const on = done?.openedOn ?? null;
  return { answer: 'lastDone', today, did, part, on, since };
}

/** Washed and brushed is cleaned. */
const isSameWork = (wanted: WorkKindId, did: WorkKindId): boolean =>
  wanted === did || (CLEANING.has(wanted) && CLEANING.has(did));
