import type { Acknowledgement } from './acknowledgement.ts';
import type { EventBody, VisitEvent } from './events.ts';

/** One thing to keep: the bodies to append, and how it is acknowledged. */
export interface Keeping {
  readonly bodies: readonly EventBody[];
  /** A function where it tells of the moment that the events were given. */
  readonly acknowledgement:
    Acknowledgement | null | ((events: readonly VisitEvent[]) => Acknowledgement | null);
}
