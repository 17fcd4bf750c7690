import type { DeviceLog } from './event-log.ts';

/** Whether the browser may clear the log by itself when the device runs short of room. */
export type StorageKeeping = 'persistent' | 'mayBeCleared' | 'unknown';

type Storage = Pick<StorageManager, 'persist' | 'persisted'>;

/**
 * Asks when the first thing is recorded: at the first look at the page there is nothing to keep yet, and whoever is asked
 * then says no.
 */
export function keepStorageOnceUsed(
  log: Pick<DeviceLog, 'onChange' | 'lastSeq'>,
  storage: Storage | undefined,
): void {
  const before = log.lastSeq;
  const stop = log.onChange(() => {
    // Becoming the tab that writes is a change too, and nothing recorded.
    if (log.lastSeq === before) return;
    stop();
    void keepStorage(storage);
  });
}

/** Asks at most once, and not where the log is safe already: Firefox puts a question to the person. */
export async function keepStorage(storage: Storage | undefined): Promise<StorageKeeping> {
  if (storage === undefined) return 'unknown';
  try {
    if (await storage.persisted()) return 'persistent';
    return (await storage.persist()) ? 'persistent' : 'mayBeCleared';
  } catch {
    return 'unknown';
  }
}
