import type Database from 'libsql';
import { z } from 'zod';
import { visitEventSchema } from '../../core/wire/event-schema.ts';
import type { PushRequest } from '../../core/wire/event-schema.ts';
import type { VisitEvent } from '../../core/visit/events.ts';
import { canonicalJson } from './canonical-json.ts';
import type { AppendOutcome, EventStore, VisitRead, VisitSummary } from './event-store.ts';
import { openDatabase } from './open-database.ts';
import type { Unopened } from './open-database.ts';

/** The events of all devices in one SQLite file. */
export function openSqliteEventStore(
  path: string,
): { readonly kind: 'opened'; readonly store: EventStore } | Unopened {
  const opened = openDatabase(path);
  return opened.kind === 'opened'
    ? { kind: 'opened', store: createSqliteEventStore(opened.database) }
    : opened;
}

function createSqliteEventStore(database: Database.Database): EventStore {
  const append = createAppend(database);
  const visits = database.prepare(
    `SELECT visit, MIN(at) AS openedAt, MAX(type = 'visitFinished') AS finished, COUNT(*) AS events
     FROM events GROUP BY visit ORDER BY openedAt DESC`,
  );
  const ofVisit = database.prepare(
    'SELECT device, seq, event FROM events WHERE visit = ? ORDER BY device, seq',
  );
  return {
    append: (push) => settled(() => append(push)),
    visits: () => settled(() => visits.all().map(toSummary)),
    readVisit: (visit) => settled(() => toRead(ofVisit.all(visit))),
    close: () => settled(() => close(database)),
  };
}

/** The write-ahead log is emptied into the file first: a copy of a stopped server's file alone is whole. */
function close(database: Database.Database): void {
  database.pragma('wal_checkpoint(TRUNCATE)');
  database.close();
}

/** The driver answers at once or throws; the port promises. */
const settled = <Result>(work: () => Result): Promise<Result> =>
  new Promise((resolve) => resolve(work()));

/** A conflict leaves the transaction by this throw, so that the events before it are rolled back with it. */
class Conflict extends Error {
  readonly outcome: AppendOutcome;
  constructor(over: 'id' | 'place', index: number) {
    super(`conflict over ${over}`);
    this.outcome = { kind: 'conflict', over, index };
  }
}

function createAppend(database: Database.Database): (push: PushRequest) => AppendOutcome {
  const keep = createKeep(database);
  const advance = createAdvance(database);
  const inOneTransaction = database.transaction(
    ({ device, events }: PushRequest): AppendOutcome => {
      events.forEach(keep);
      return { kind: 'kept', confirmed: advance(device) };
    },
  );
  return (push) => {
    try {
      return inOneTransaction.immediate(push);
    } catch (fault) {
      if (fault instanceof Conflict) return fault.outcome;
      throw fault;
    }
  };
}

const heldRow = z.object({ id: z.string(), event: z.string() });

function createKeep(database: Database.Database): (event: VisitEvent, index: number) => void {
  const insert = database.prepare(
    `INSERT INTO events (id, device, seq, visit, at, type, event) VALUES (?, ?, ?, ?, ?, ?, ?)
     ON CONFLICT DO NOTHING`,
  );
  // The id's holder first: that is the one to name when both the id and the place are taken.
  const holder = database.prepare(
    'SELECT id, event FROM events WHERE id = ?1 OR (device = ?2 AND seq = ?3) ORDER BY id = ?1 DESC',
  );
  return (event, index) => {
    const { id, device, seq, visit, at, type } = event;
    const text = canonicalJson(event);
    if (insert.run(id, device, seq, visit, at, type, text).changes > 0) return;
    const held = heldRow.parse(holder.get(id, device, seq));
    if (held.event !== text) throw new Conflict(held.id === id ? 'id' : 'place', index);
  };
}

function createAdvance(database: Database.Database): (device: string) => number {
  const known = database.prepare('SELECT confirmed FROM devices WHERE device = ?');
  const holds = database.prepare('SELECT 1 FROM events WHERE device = ? AND seq = ?');
  const move = database.prepare(
    'INSERT INTO devices (device, confirmed) VALUES (?1, ?2) ON CONFLICT (device) DO UPDATE SET confirmed = ?2',
  );
  const row = z.object({ confirmed: z.number() }).optional();
  return (device) => {
    let last = row.parse(known.get(device))?.confirmed ?? 0;
    while (holds.get(device, last + 1) !== undefined) last += 1;
    move.run(device, last);
    return last;
  };
}

const summaryRow = z.object({
  visit: z.string(),
  openedAt: z.number(),
  finished: z.number(),
  events: z.number(),
});

function toSummary(row: unknown): VisitSummary {
  const summary = summaryRow.parse(row);
  return { ...summary, finished: summary.finished === 1 };
}

const eventRow = z.object({ device: z.string(), seq: z.number(), event: z.string() });

function toRead(rows: readonly unknown[]): VisitRead {
  const events: VisitEvent[] = [];
  const damaged: { device: string; seq: number; why: string }[] = [];
  for (const row of rows) {
    const { device, seq, event } = eventRow.parse(row);
    const read = readEvent(event);
    if (read.kind === 'event') events.push(read.event);
    else damaged.push({ device, seq, why: read.why });
  }
  return { events, damaged };
}

function readEvent(
  text: string,
): { kind: 'event'; event: VisitEvent } | { kind: 'unreadable'; why: string } {
  try {
    const parsed = visitEventSchema.safeParse(JSON.parse(text));
    return parsed.success
      ? { kind: 'event', event: parsed.data }
      : { kind: 'unreadable', why: z.prettifyError(parsed.error) };
  } catch {
    return { kind: 'unreadable', why: 'it is not JSON' };
  }
}
