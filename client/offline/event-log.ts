import type { VisitEvent } from '../../core/visit/events.ts';

/** The device's own log of visits: the page's only memory. Adapters: IndexedDB, and memory where that does not open. */
export interface EventLog {
  readonly device: string;
  /** The highest place taken in this device's log; 0 when it is empty. */
  readonly lastSeq: number;
  /** Resolves once the events are on the disk (strict durability), all of them or none. */
  append(events: readonly VisitEvent[]): Promise<AppendResult>;
  readVisit(visit: string): Promise<LogRead>;
  /** The visit that was open when the page last lived; null when none was or it was finished. */
  openVisit(): Promise<string | null>;
  /** Visits on this device, newest first. */
  visits(): Promise<readonly VisitSummary[]>;
  /** How many events the server has not confirmed yet. */
  unsynced(): Promise<number>;
  close(): void;
}

/** What the sync needs of a log besides. */
export interface SyncedLog {
  readonly device: string;
  /** False while another tab of this device writes: this one shows and waits. */
  readonly canWrite: boolean;
  unsynced(): Promise<number>;
  /** The highest place the server is known to hold, with all before it; 0 when none. */
  confirmedSeq(): Promise<number>;
  /** `leftOut`: damaged places up to there, which the server does not hold and never will. */
  confirm(seq: number, leftOut?: readonly number[]): Promise<void>;
  /** How many places were left out so far. */
  leftOut(): Promise<number>;
  /** At most `limit` places that follow `seq`. */
  readAfter(seq: number, limit: number): Promise<LogRead>;
  /** Called after each append, with its events, and when this tab becomes the one that writes; returns how to stop it. */
  onChange(listener: (appended: readonly VisitEvent[]) => void): () => void;
}

/** A log as the adapters give it. */
export interface DeviceLog extends EventLog, SyncedLog {
  /** Everything recorded, damaged records included, as JSON lines in log order. */
  exportLog(): Promise<string>;
}

export type AppendResult =
  | { readonly kind: 'kept' }
  | {
      readonly kind: 'failed';
      readonly why: 'storageFull' | 'closed' | 'otherTabWrites' | 'unknown';
      readonly message: string;
    };

/** Events in log order, and what could not be read: counted and kept aside, never thrown away. */
export interface LogRead {
  readonly events: readonly VisitEvent[];
  readonly damaged: readonly { readonly seq: number; readonly why: string }[];
}

export interface VisitSummary {
  readonly visit: string;
  readonly openedAt: number;
  readonly finished: boolean;
  readonly events: number;
}
