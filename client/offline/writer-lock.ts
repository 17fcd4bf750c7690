import type { SyncedLog } from './event-log.ts';

/** One tab of a device writes its log; the others show it and wait their turn. */
export interface WriterLock {
  readonly held: boolean;
  release(): void;
}

/** The part of the page's `navigator.locks` used here. */
export interface Locks {
  request(
    name: string,
    options: LockOptions,
    run: (lock: Lock | null) => Promise<void> | undefined,
  ): Promise<unknown>;
}

/**
 * Takes the lock for the page's life, or queues for it when another tab has it and calls `onGranted` later.
 * Without Web Locks (they need a secure context) the tab writes: the log itself still refuses a taken place.
 */
export async function holdWriterLock(
  locks: Locks | undefined,
  name: string,
  onGranted: () => void,
): Promise<WriterLock> {
  if (locks === undefined) return { held: true, release: () => undefined };
  const waiting = new AbortController();
  const released = deferred();
  const lock = {
    held: await takeNow(locks, name, released.promise),
    release() {
      lock.held = false;
      waiting.abort();
      released.resolve();
    },
  };
  if (lock.held) return lock;
  const granted = () => {
    lock.held = true;
    onGranted();
    return released.promise;
  };
  locks.request(name, { mode: 'exclusive', signal: waiting.signal }, granted).catch(ignoreAbort);
  return lock;
}

/**
 * Resolves when a tab that opened while another one wrote becomes the writer; never where it was that from the
 * start. Ask before the log is first read: what the other tab wrote after that reading is missing from it.
 */
export function becomesWriter(log: Pick<SyncedLog, 'canWrite' | 'onChange'>): Promise<void> {
  return new Promise((resolve) => {
    if (log.canWrite) return;
    const stop = log.onChange(() => {
      if (!log.canWrite) return;
      stop();
      resolve();
    });
  });
}

function takeNow(locks: Locks, name: string, released: Promise<void>): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const take = (lock: Lock | null) => {
      resolve(lock !== null);
      return lock === null ? undefined : released;
    };
    locks.request(name, { mode: 'exclusive', ifAvailable: true }, take).catch(reject);
  });
}

function deferred() {
  let resolve = () => {};
  const promise = new Promise<void>((done) => {
    resolve = done;
  });
  return { promise, resolve: () => resolve() };
}

function ignoreAbort(): void {
  // The only way a queued request fails is that this tab gave up waiting.
}
