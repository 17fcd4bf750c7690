import type { VisitEvent } from '../../core/visit/events.ts';
import type { AppendResult } from './event-log.ts';
import { textField } from './log-rows.ts';

export type AppendFailure = Extract<AppendResult, { kind: 'failed' }>;

export type AppendPlan =
  | { readonly kind: 'write'; readonly events: readonly VisitEvent[] }
  | { readonly kind: 'refused'; readonly failure: AppendFailure };

/** What the log already holds, asked inside the transaction that will write. */
export interface Standing {
  readonly device: string;
  readonly lastSeq: number;
  /** What stands at the places the new events claim. */
  readonly taken: ReadonlyMap<number, unknown>;
}

/**
 * Decides what an append writes. The invariants it keeps:
 * 1. A device's places run from 1 without gaps.
 * 2. An event already at its place is not written again, so a repeated append is harmless.
 * 3. A place taken by another event is never written over.
 * 4. All events or none.
 */
export function planAppend(events: readonly VisitEvent[], standing: Standing): AppendPlan {
  const fresh: VisitEvent[] = [];
  for (const event of events) {
    if (event.device !== standing.device) return refuse('unknown', foreign(event));
    if (event.seq > standing.lastSeq) fresh.push(event);
    else if (textField(standing.taken.get(event.seq), 'id') !== event.id)
      return refuse('otherTabWrites', taken(event));
  }
  const gap = fresh.find((event, index) => event.seq !== standing.lastSeq + 1 + index);
  if (gap !== undefined) return refuse('unknown', misplaced(gap, standing.lastSeq));
  return { kind: 'write', events: fresh };
}

export function appendFailure(why: AppendFailure['why'], message: string): AppendFailure {
  return { kind: 'failed', why, message };
}

export const READ_ONLY = appendFailure(
  'otherTabWrites',
  'The visit is open in another tab. Close that tab to go on here.',
);

export const CLOSED = appendFailure('closed', 'The event log was closed. Reload the page.');

function refuse(why: AppendFailure['why'], message: string): AppendPlan {
  return { kind: 'refused', failure: appendFailure(why, message) };
}

const taken = (event: VisitEvent) =>
  `Place ${event.seq} of the log is taken by another event. Reload the page: another tab wrote to the log.`;
const foreign = (event: VisitEvent) => `Event ${event.id} was stamped for another device's log.`;
const misplaced = (event: VisitEvent, lastSeq: number) =>
  `Event ${event.id} claims place ${event.seq} of the log, which ends at ${lastSeq}.`;
