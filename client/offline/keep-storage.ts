/** Whether the browser may clear the log by itself when the device runs short of room. */
export type StorageKeeping = 'persistent' | 'mayBeCleared' | 'unknown';

/** Asks at most once, and not where the log is safe already: Firefox puts a question to the person. */
export async function keepStorage(
  storage: Pick<StorageManager, 'persist' | 'persisted'> | undefined,
): Promise<StorageKeeping> {
  if (storage === undefined) return 'unknown';
  try {
    if (await storage.persisted()) return 'persistent';
    return (await storage.persist()) ? 'persistent' : 'mayBeCleared';
  } catch {
    return 'unknown';
  }
}
