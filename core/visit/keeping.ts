import type { Acknowledgement } from './acknowledgement.ts';
import type { EventBody } from './events.ts';

/** One thing to keep: the bodies to append, and how it is acknowledged. */
export interface Keeping {
  readonly bodies: readonly EventBody[];
  readonly acknowledgement: Acknowledgement | null;
}
