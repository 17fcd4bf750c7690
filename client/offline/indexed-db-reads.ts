import type { LogDatabase } from './connection.ts';
import type { LogRead, VisitSummary } from './event-log.ts';
import { type Row, bySeq, readRow, readRows, straysOf, visitOf } from './log-rows.ts';

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
  const { store } = database.transaction('events');
  const range = IDBKeyRange.lowerBound(seq, true);
  const [keys, values] = await Promise.all([
    store.getAllKeys(range, limit),
    store.getAll(range, limit),
  ]);
  return keys.map((key, index) => ({ seq: key, value: values[index] }));
}

export async function readVisit(database: LogDatabase, visit: string): Promise<LogRead> {
  const index = database.transaction('events').store.index('visit');
  const [keys, values] = await Promise.all([index.getAllKeys(visit), index.getAll(visit)]);
  const own = keys.map((seq, at) => ({ seq, value: values[at] }));
  const strays = await readStrays(database, visit);
  return readRows([...own, ...strays].toSorted(bySeq));
}

/** The whole log is walked only when the visit index does not account for every place. */
async function readStrays(database: LogDatabase, visit: string): Promise<readonly Row[]> {
  const lastSeq = await lastSeqOf(database);
  const claimed = await database.countFromIndex('events', 'visit', anyText());
  if (claimed === lastSeq) return [];
  return straysOf(visit, await readAfter(database, 0), lastSeq);
}

export async function readOpenVisit(database: LogDatabase): Promise<string | null> {
  let cursor = await database.transaction('events').store.openCursor(null, 'prev');
  while (cursor !== null && visitOf(cursor.value) === null) cursor = await cursor.continue();
  const visit = cursor === null ? null : visitOf(cursor.value);
  return visit === null || (await isFinished(database, visit)) ? null : visit;
}

export async function readVisits(database: LogDatabase): Promise<readonly VisitSummary[]> {
  const index = database.transaction('events').store.index('visit');
  const firsts: Row[] = [];
  let cursor = await index.openCursor(anyText(), 'nextunique');
  while (cursor !== null) {
    firsts.push({ seq: cursor.primaryKey, value: cursor.value });
    cursor = await cursor.continue();
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
