import Database from 'libsql';
import { z } from 'zod';
import { MIGRATIONS } from './migrations.ts';

export type OpenedDatabase =
  { readonly kind: 'opened'; readonly database: Database.Database } | Unopened;

/** Why a file was not opened. It is left exactly as it was found. */
export interface Unopened {
  readonly kind: 'damaged' | 'tooNew' | 'unreachable';
  readonly message: string;
}

/** How long a write waits for another process's write to end, in milliseconds. */
const BUSY_WAIT_MS = 5000;

/**
 * Opens the file, makes it when it is missing, and brings its shape up to date. WAL with synchronous=FULL:
 * what was answered as kept survives a power cut, one fsync a batch.
 */
export function openDatabase(path: string): OpenedDatabase {
  const found = reached(path);
  if (found.kind !== 'opened') return found;
  try {
    const unusable = checked(path, found.database);
    if (unusable === null) return found;
    found.database.close();
    return unusable;
  } catch (fault) {
    found.database.close();
    return failed(path, fault);
  }
}

function reached(path: string): OpenedDatabase {
  try {
    return { kind: 'opened', database: new Database(path, { timeout: BUSY_WAIT_MS }) };
  } catch (fault) {
    return failed(path, fault);
  }
}

function checked(path: string, database: Database.Database): Unopened | null {
  const version = userVersion(database);
  if (version > MIGRATIONS.length) return tooNew(path, version);
  const health = quickCheck(database);
  if (health !== 'ok') return damaged(path, health);
  database.pragma('journal_mode = WAL');
  database.pragma('synchronous = FULL');
  migrate(database);
  return null;
}

/** Under one lock, and the version read inside it: two servers started at once do not both take a step. */
function migrate(database: Database.Database): void {
  const bringUpToDate = database.transaction(() => {
    for (const step of MIGRATIONS.slice(userVersion(database))) database.exec(step);
    database.exec(`PRAGMA user_version = ${MIGRATIONS.length}`);
  });
  bringUpToDate.immediate();
}

function userVersion(database: Database.Database): number {
  const row = z.object({ user_version: z.number() });
  return row.parse(database.prepare('PRAGMA user_version').get()).user_version;
}

function quickCheck(database: Database.Database): string {
  const row = z.object({ quick_check: z.string() });
  return row.parse(database.prepare('PRAGMA quick_check(1)').get()).quick_check;
}

const DAMAGE_CODES = new Set(['SQLITE_NOTADB', 'SQLITE_CORRUPT']);

function failed(path: string, fault: unknown): Unopened {
  const why = fault instanceof Error ? fault.message : String(fault);
  if (fault instanceof Database.SqliteError && DAMAGE_CODES.has(fault.code)) {
    return damaged(path, why);
  }
  return {
    kind: 'unreachable',
    message: `cannot open ${path} (${oneLine(why)}); check that the folder exists and may be written`,
  };
}

const damaged = (path: string, why: string): Unopened => ({
  kind: 'damaged',
  message:
    `the visits in ${path} cannot be read (${oneLine(why)}). The file was left as it is: move it and its ` +
    `-wal and -shm neighbours aside to start afresh (phones send again what they still hold), or put a backup in its place`,
});

const tooNew = (path: string, version: number): Unopened => ({
  kind: 'tooNew',
  message: `${path} was written by a newer version (shape ${version}, this one knows ${MIGRATIONS.length}); update this installation, the file was left as it is`,
});

const oneLine = (text: string): string => text.replaceAll(/\s*\n\s*/g, ' ').trim();
