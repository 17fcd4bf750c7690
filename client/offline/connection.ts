import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** Events keep their place as an outside key, so that a record damaged beyond recognition still has one. */
export interface LogSchema extends DBSchema {
  events: {
    key: number;
    value: unknown;
    indexes: { id: string; visit: string; visitType: [string, string] };
  };
  about: { key: string; value: string | number };
}

export type LogDatabase = IDBPDatabase<LogSchema>;

export interface Connection {
  /** Runs the work on a live handle; when the handle turns out lost, reopens and runs it once more. */
  use<Result>(work: (database: LogDatabase) => Promise<Result>): Promise<Result>;
  close(): void;
}

export class ConnectionLost extends Error {
  override name = 'ConnectionLost';
}

/**
 * Safari drops the database's server process while a page is in the background; the handle then fails with
 * UnknownError ("Connection to Indexed Database server lost", WebKit bug 197050), InvalidStateError ("closing"),
 * or an abort of the running transaction.
 */
const LOSS_NAMES = new Set(['InvalidStateError', 'UnknownError', 'AbortError', 'VersionError']);

export function openConnection(name: string): Connection {
  let handle: Promise<LogDatabase> | null = null;
  let closed = false;

  const drop = () => {
    void handle?.then((database) => {
      database.close();
    }, ignore);
    handle = null;
  };
  const live = () => (handle ??= openLog(name, drop));

  async function attempt<Result>(work: (database: LogDatabase) => Promise<Result>) {
    if (closed) throw new ConnectionLost('The event log was closed.');
    try {
      return { kind: 'done', result: await work(await live()) } as const;
    } catch (error) {
      if (!isLoss(error)) throw error;
      drop();
      return { kind: 'lost', error } as const;
    }
  }

  return {
    async use(work) {
      const first = await attempt(work);
      if (first.kind === 'done') return first.result;
      const second = await attempt(work);
      if (second.kind === 'done') return second.result;
      throw new ConnectionLost('The connection to the event log was lost. Reload the page.', {
        cause: second.error,
      });
    },
    close() {
      closed = true;
      drop();
    },
  };
}

function openLog(name: string, drop: () => void): Promise<LogDatabase> {
  return openDB<LogSchema>(name, 1, {
    upgrade(database) {
      const events = database.createObjectStore('events');
      events.createIndex('id', 'id', { unique: true });
      events.createIndex('visit', 'visit');
      events.createIndex('visitType', ['visit', 'type']);
      database.createObjectStore('about');
    },
    blocking: drop,
    terminated: drop,
  });
}

export function isLoss(error: unknown): boolean {
  return error instanceof Error && LOSS_NAMES.has(error.name);
}

function ignore(): void {
  // The failure to open reached whoever asked for the handle.
}
