import { ulid } from 'ulid';
import type { VisitEvent } from '../../core/visit/events.ts';
import { type AppendPlan, CLOSED, READ_ONLY, appendFailure, planAppend } from './append-plan.ts';
import {
  type Connection,
  ConnectionLost,
  type LogDatabase,
  isLoss,
  openConnection,
} from './connection.ts';
import type { AppendResult, DeviceLog } from './event-log.ts';
import { lastSeqOf, readAfter, readOpenVisit, readVisit, readVisits } from './indexed-db-reads.ts';
import { createListeners } from './listeners.ts';
import { readRows, toExportLine } from './log-rows.ts';
import { type StorageFault, storageFault } from './storage-fault.ts';
import { type Locks, type WriterLock, holdWriterLock } from './writer-lock.ts';

export interface IndexedDbLogOptions {
  /** The database's name; the writer's lock is named after it. */
  readonly name?: string;
  /** Web Locks of the page; absent outside a secure context. */
  readonly locks?: Locks | undefined;
  readonly newDeviceId?: () => string;
}

export type OpenLogResult =
  | { readonly kind: 'opened'; readonly log: DeviceLog }
  | { readonly kind: 'failed'; readonly why: StorageFault; readonly message: string };

/**
 * Opens the device's log, making the device's id on first use. The browser's storage may be switched off (a
 * private window, a managed device): that is the `failed` outcome. Reads of an opened log reject only when the
 * database stays unreachable after it was reopened once.
 */
export async function openIndexedDbLog(options: IndexedDbLogOptions = {}): Promise<OpenLogResult> {
  const { name = 'gloveside', locks, newDeviceId = () => ulid() } = options;
  const connection = openConnection(name);
  try {
    const device = await connection.use((database) => deviceId(database, newDeviceId));
    const log = createLog(connection, device);
    await log.start((granted) => holdWriterLock(locks, `${name} event log`, granted));
    return { kind: 'opened', log: log.port };
  } catch (error) {
    connection.close();
    return { kind: 'failed', why: storageFault(error), message: messageOf(error) };
  }
}

function createLog(connection: Connection, device: string) {
  let lastSeq = 0;
  let closed = false;
  let lock: WriterLock | null = null;
  const { tell, onChange } = createListeners();
  const refresh = async () => {
    lastSeq = await connection.use(lastSeqOf);
  };
  const tellOfLock = () => tell([]);
  const port: DeviceLog = {
    device,
    get lastSeq() {
      return lastSeq;
    },
    get canWrite() {
      return lock?.held ?? false;
    },
    async append(events) {
      if (closed) return CLOSED;
      if (!port.canWrite) return READ_ONLY;
      const result = await append(connection, events, device);
      // Without a lock two tabs write: whoever tries again must know where the log ends by now.
      if (result.kind === 'failed' && result.why === 'otherTabWrites')
        await refresh().catch(ignore);
      if (result.kind === 'failed') return result;
      lastSeq = Math.max(lastSeq, ...events.map((event) => event.seq));
      tell(events);
      return result;
    },
    readVisit: (visit) => connection.use((database) => readVisit(database, visit)),
    openVisit: () => connection.use(readOpenVisit),
    visits: () => connection.use(readVisits),
    unsynced: () => connection.use(countUnsynced),
    confirmedSeq: () => connection.use(confirmedSeq),
    confirm: (seq, leftOut = []) => connection.use((database) => confirm(database, seq, leftOut)),
    leftOut: async () => (await connection.use(placesLeftOut)).length,
    readAfter: async (seq, limit) =>
      readRows(await connection.use((database) => readAfter(database, seq, limit))),
    exportLog: async () => {
      const rows = await connection.use((database) => readAfter(database, 0));
      return rows.map(toExportLine).join('');
    },
    onChange,
    close() {
      closed = true;
      lock?.release();
      connection.close();
    },
  };
  return {
    port,
    async start(takeLock: (onGranted: () => void) => Promise<WriterLock>) {
      // The other tab may have written since this one opened: its events move the end of the log.
      lock = await takeLock(() => void refresh().then(tellOfLock, tellOfLock));
      await refresh();
    },
  };
}

async function append(
  connection: Connection,
  events: readonly VisitEvent[],
  device: string,
): Promise<AppendResult> {
  try {
    const plan = await connection.use((database) => write(database, events, device));
    return plan.kind === 'write' ? { kind: 'kept' } : plan.failure;
  } catch (error) {
    return failureOf(error);
  }
}

/** One transaction reads the end of the log, decides and writes; it is kept only when `done` resolves. */
async function write(
  database: LogDatabase,
  events: readonly VisitEvent[],
  device: string,
): Promise<AppendPlan> {
  const transaction = database.transaction('events', 'readwrite', { durability: 'strict' });
  const { store } = transaction;
  const lastKey = (await store.openKeyCursor(null, 'prev'))?.primaryKey ?? 0;
  const taken = new Map<number, unknown>();
  for (const { seq } of events) if (seq <= lastKey) taken.set(seq, await store.get(seq));
  const plan = planAppend(events, { device, lastSeq: lastKey, taken });
  const writes = plan.kind === 'write' ? plan.events : [];
  await Promise.all([...writes.map((event) => store.add(event, event.seq)), transaction.done]);
  return plan;
}

async function deviceId(database: LogDatabase, newDeviceId: () => string): Promise<string> {
  const transaction = database.transaction('about', 'readwrite', { durability: 'strict' });
  const known = await transaction.store.get('device');
  const device = typeof known === 'string' ? known : newDeviceId();
  if (known !== device) await transaction.store.put(device, 'device');
  await transaction.done;
  return device;
}

async function confirmedSeq(database: LogDatabase): Promise<number> {
  const kept = await database.get('about', 'confirmedSeq');
  return typeof kept === 'number' ? kept : 0;
}

async function confirm(
  database: LogDatabase,
  seq: number,
  leftOut: readonly number[],
): Promise<void> {
  const places = new Set([...(await placesLeftOut(database)), ...leftOut]);
  const transaction = database.transaction('about', 'readwrite');
  await transaction.store.put(seq, 'confirmedSeq');
  if (leftOut.length > 0) await transaction.store.put([...places].join(' '), 'leftOut');
  await transaction.done;
}

async function placesLeftOut(database: LogDatabase): Promise<readonly number[]> {
  const kept = await database.get('about', 'leftOut');
  return kept === undefined ? [] : String(kept).split(' ').map(Number);
}

/** By subtraction, as the places have no gaps: counting 20,000 records took Chromium 130 ms. */
async function countUnsynced(database: LogDatabase): Promise<number> {
  return Math.max(0, (await lastSeqOf(database)) - (await confirmedSeq(database)));
}

function ignore(): void {
  // What the append came to is told; the next one tries again.
}

function failureOf(error: unknown): AppendResult {
  if (error instanceof ConnectionLost || isLoss(error))
    return appendFailure('closed', messageOf(error));
  if (error instanceof Error && error.name === 'QuotaExceededError')
    return appendFailure(
      'storageFull',
      'This device has no room left. Free some space, then say it again.',
    );
  return appendFailure('unknown', messageOf(error));
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
