import { ulid } from 'ulid';
import type { After } from './back-off.ts';
import type { DeviceLog } from './event-log.ts';
import { inTime } from './in-time.ts';
import { type OpenLogResult, openIndexedDbLog } from './indexed-db-log.ts';
import { keepStorageOnceUsed } from './keep-storage.ts';
import { createMemoryDisk, createMemoryLog } from './memory-log.ts';
import { createPostEvents, EVENTS_PATH } from './post-events.ts';
import { type OfflinePage, keepPageOffline } from './service-worker.ts';
import type { StorageFault } from './storage-fault.ts';
import { type Sync, type SyncState, createSync } from './sync.ts';

export interface Offline {
  readonly log: DeviceLog;
  readonly sync: Sync;
  /** Null where nothing is stored here, and so no page either. */
  readonly page: OfflinePage | null;
  /** Why the log is in memory only; null where it is stored. */
  readonly unstored: StorageFault | null;
}

/** Opens the device's log and starts everything that keeps the page working without the network. */
export async function startOffline(onSync: (state: SyncState) => void): Promise<Offline> {
  const opened = await openLog();
  const log = opened.kind === 'opened' ? opened.log : createPassingLog();
  const sync = createSync({
    log,
    post: createPostEvents((url, init) => fetch(url, init)),
    after: afterDelay,
    onState: onSync,
  });
  wakeWithThePage(sync);
  sendAsThePageGoes(sync);
  if (opened.kind === 'failed') return { log, sync, page: null, unstored: opened.why };
  const page = keepPageOffline({
    isSecureContext,
    // The development server rebuilds files one by one: a worker that keeps them would show old ones.
    serviceWorker: import.meta.env.DEV ? undefined : offered('serviceWorker'),
    reload: () => location.reload(),
  });
  keepStorageOnceUsed(log, offered('storage'));
  return { log, sync, page, unstored: null };
}

/**
 * As long as the page lives, and sent to the server like any other. A device of its own: the places of one id are taken
 * once, and what the stored log may hold under its id is not known here.
 */
function createPassingLog(): DeviceLog {
  return createMemoryLog(createMemoryDisk(ulid()));
}

/** One that opens after all, too late, must not hold the lock of the tab that writes. */
async function openLog(): Promise<OpenLogResult> {
  const opening = openIndexedDbLog({ locks: offered('locks') });
  try {
    return await inTime(opening, afterDelay);
  } catch (error) {
    void opening.then((late) => late.kind === 'opened' && late.log.close());
    return { kind: 'failed', why: 'broken', message: String(error) };
  }
}

export const afterDelay: After = (delayMs, run) => {
  const timer = setTimeout(run, delayMs);
  return () => clearTimeout(timer);
};

/** Background sync exists in Chromium alone: opening, coming back into view and the network's return are everywhere. */
function wakeWithThePage(sync: Sync): void {
  void sync.wake();
  addEventListener('online', () => void sync.wake());
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void sync.wake();
  });
}

/**
 * A request of the page ends with it; a beacon does not. Whatever becomes of it the log here has all of it, and sends it
 * again: the server takes nothing twice.
 */
function sendAsThePageGoes(sync: Sync): void {
  addEventListener('pagehide', () => {
    const request = sync.parting();
    if (request === null) return;
    try {
      const body = new Blob([JSON.stringify(request)], { type: 'application/json' });
      navigator.sendBeacon(EVENTS_PATH, body);
    } catch {
      // Browsers have refused JSON in a beacon: it goes when the page opens again.
    }
  });
}

/** The types promise these everywhere; outside a secure context browsers leave them out. */
function offered<Name extends 'locks' | 'serviceWorker' | 'storage'>(
  name: Name,
): Navigator[Name] | undefined {
  return name in navigator ? navigator[name] : undefined;
}
