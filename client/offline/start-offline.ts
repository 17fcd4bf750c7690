import type { After } from './back-off.ts';
import type { DeviceLog } from './event-log.ts';
import { inTime } from './in-time.ts';
import { type OpenLogResult, openIndexedDbLog } from './indexed-db-log.ts';
import { keepStorageOnceUsed } from './keep-storage.ts';
import { createPostEvents } from './post-events.ts';
import { type OfflinePage, keepPageOffline } from './service-worker.ts';
import { type Sync, type SyncState, createSync } from './sync.ts';

export interface Offline {
  readonly log: DeviceLog;
  readonly sync: Sync;
  readonly page: OfflinePage;
}

export type OfflineStart =
  | { readonly kind: 'started'; readonly offline: Offline }
  | Extract<OpenLogResult, { kind: 'failed' }>;

/** Opens the device's log and starts everything that keeps the page working without the network. */
export async function startOffline(onSync: (state: SyncState) => void): Promise<OfflineStart> {
  const opened = await openLog();
  if (opened.kind === 'failed') return opened;
  const { log } = opened;
  const sync = createSync({
    log,
    post: createPostEvents((url, init) => fetch(url, init)),
    after: afterDelay,
    onState: onSync,
  });
  wakeWithThePage(sync);
  const page = keepPageOffline({
    isSecureContext,
    // The development server rebuilds files one by one: a worker that keeps them would show old ones.
    serviceWorker: import.meta.env.DEV ? undefined : offered('serviceWorker'),
    reload: () => location.reload(),
  });
  keepStorageOnceUsed(log, offered('storage'));
  return { kind: 'started', offline: { log, sync, page } };
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

/** The types promise these everywhere; outside a secure context browsers leave them out. */
function offered<Name extends 'locks' | 'serviceWorker' | 'storage'>(
  name: Name,
): Navigator[Name] | undefined {
  return name in navigator ? navigator[name] : undefined;
}
