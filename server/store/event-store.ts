import type { VisitEvent } from '../../core/visit/events.ts';
import type { PushRequest } from '../../core/wire/event-schema.ts';

/**
 * Where the events of every device are kept. Adapters: SQLite, and one in memory for tests. What every
 * adapter promises (tests/contracts/event-store.ts holds them to it):
 * 1. an event is kept once however often it arrives, and never changed;
 * 2. a batch is kept whole or not at all;
 * 3. an id, or a place in a device's log, that already holds another event is a conflict, not an update;
 * 4. what was answered as kept is there after a restart.
 */
export interface EventStore {
  append(push: PushRequest): Promise<AppendOutcome>;
  /** Visits by their first event's moment, newest first. */
  visits(): Promise<readonly VisitSummary[]>;
  /** One visit's events; those of one device in the order of that device's log. Empty when unknown. */
  readVisit(visit: string): Promise<VisitRead>;
  close(): Promise<void>;
}

/** What could be read, and the places whose event no longer can: they stay where they are, untouched. */
export interface VisitRead {
  readonly events: readonly VisitEvent[];
  readonly damaged: readonly {
    readonly device: string;
    readonly seq: number;
    readonly why: string;
  }[];
}

export type AppendOutcome =
  | {
      readonly kind: 'kept';
      /** Every event of the device up to and including this place is here; 0 while its first is missing. */
      readonly confirmed: number;
    }
  | {
      readonly kind: 'conflict';
      /** `id`: the id is taken by another event. `place`: the device's place in its log is. */
      readonly over: 'id' | 'place';
      /** Where in the batch the refused event stands. */
      readonly index: number;
    };

export interface VisitSummary {
  readonly visit: string;
  readonly openedAt: number;
  readonly finished: boolean;
  readonly events: number;
}
