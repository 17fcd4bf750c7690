/** Why nothing can be stored: switched off here, no room, or it does not answer. */
export type StorageFault = 'off' | 'full' | 'broken';

/** Of what opening the log rejects with; a page without IndexedDB fails at its name. */
const FAULT_OF: Readonly<Record<string, StorageFault>> = {
  SecurityError: 'off',
  NotAllowedError: 'off',
  InvalidStateError: 'off',
  ReferenceError: 'off',
  QuotaExceededError: 'full',
};

/** What was tried twice tells of both only, and carries the second. */
export function storageFault(error: unknown): StorageFault {
  if (!(error instanceof Error)) return 'broken';
  return FAULT_OF[error.name] ?? (error.cause === undefined ? 'broken' : storageFault(error.cause));
}
