import type { LogDatabase } from './connection.ts';
import type { LogRead, VisitSummary } from './event-log.ts';
import { type Row, bySeq, readRow, readRows, rowsOfVisit, visitOf } from './log-rows.ts';

/** Every string: in IndexedDB's order of keys, arrays follow them (and binary, which no record of ours has). */
const anyText = () => IDBKeyRange.bound('', [], false, true);

export async function lastSeqOf(database: LogDatabase): Promise<number> {
  const cursor = await database.transaction('events').store.openKeyCursor(null, 'prev');
  return cursor?.primaryKey ?? 0;
}

export async function readAfter(
  database: LogDatabase,
  seq: number,
  limit?: number,
): Promise<readonly Row[]> {
  return readRange(database, IDBKeyRange.lowerBound(seq, true), limit);
}

async function readRange(
  database: LogDatabase,
  range: IDBKeyRange,
  limit?: number,
): Promise<readonly Row[]> {
  const { store } = database.transaction('events');
  const [keys, values] = await Promise.all([
    store.getAllKeys(range, limit),
    store.getAll(range, limit),
  ]);
  return keys.map((key, index) => ({ seq: key, value: values[index] }));
}

/** Reads only the stretch of the log that the visit takes up: the log of a year must not slow its last visit. */
export async function readVisit(database: LogDatabase, visit: string): Promise<LogRead> {
  const index = database.transaction('events').store.index('visit');
  const first = await index.openKeyCursor(visit, 'next');
  const last = await index.openKeyCursor(visit, 'prev');
  if (first === null || last === null) return { events: [], damaged: [] };
  const before = await claimedPlace(
    database,
    IDBKeyRange.upperBound(first.primaryKey, true),
    'prev',
  );
  const after = await claimedPlace(database, IDBKeyRange.lowerBound(last.primaryKey, true), 'next');
  const from = before === null ? 1 : first.primaryKey;
  const to = after === null ? await lastSeqOf(database) : after - 1;
  const rows = await readRange(database, IDBKeyRange.bound(from, to));
  return readRows(rowsOfVisit(visit, rows, { from, to }));
}

/** The first place in the range that a visit claims: damaged ones are passed over. */
async function claimedPlace(
  database: LogDatabase,
  range: IDBKeyRange,
  direction: 'next' | 'prev',
): Promise<number | null> {
  let cursor = await database.transaction('events').store.openCursor(range, direction);
  while (cursor !== null && visitOf(cursor.value) === null) cursor = await cursor.continue();
  return cursor?.primaryKey ?? null;
}

export async function readOpenVisit(database: LogDatabase): Promise<string | null> {
  let cursor = await database.transaction('events').store.openCursor(null, 'prev');
  while (cursor !== null && visitOf(cursor.value) === null) cursor = await cursor.continue();
  const visit = cursor === null ? null : visitOf(cursor.value);
  return visit === null || (await isFinished(database, visit)) ? null : visit;
}

/**
 * From each visit past all of its records to the next one. A cursor of unique keys would do that by itself, but over an
 * empty range, as in a log that is new, WebKit before July 2026 fails to open one (WebKit bug 319640).
 */
export async function readVisits(database: LogDatabase): Promise<readonly VisitSummary[]> {
  const index = database.transaction('events').store.index('visit');
  const firsts: Row[] = [];
  let cursor = await index.openCursor(anyText());
  while (cursor !== null) {
    firsts.push({ seq: cursor.primaryKey, value: cursor.value });
    cursor = await index.openCursor(IDBKeyRange.bound(cursor.key, [], true, true));
  }
  const newestFirst = firsts.toSorted(bySeq).reverse();
  return Promise.all(newestFirst.map((first) => summarise(database, first)));
}

async function summarise(database: LogDatabase, first: Row): Promise<VisitSummary> {
  const visit = visitOf(first.value) ?? '';
  const read = readRow(first);
  // A damaged opening leaves the next readable event to tell when the visit began.
  const openedAt =
    read.kind === 'event' ? read.event.at : ((await readVisit(database, visit)).events[0]?.at ?? 0);
  return {
    visit,
    openedAt,
    finished: await isFinished(database, visit),
    events: await database.countFromIndex('events', 'visit', visit),
  };
}

async function isFinished(database: LogDatabase, visit: string): Promise<boolean> {
  const ends = await database.countFromIndex('events', 'visitType', [visit, 'visitFinished']);
  return ends > 0;
}
