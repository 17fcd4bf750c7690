import type { VisitEvent } from '../../core/visit/events.ts';
import type { PushRequest } from '../../core/wire/event-schema.ts';

/** Browsers take 64 KiB from a page that goes (Fetch, "inflight keepalive bytes"): the rest is for the envelope. */
const MOST_BYTES = 60_000;

/** What this page knows that the server may lack, at hand at once: a page that goes waits for no storage. */
export interface Unsent {
  add(events: readonly VisitEvent[]): void;
  /** The server holds all up to here. */
  confirmed(seq: number): void;
  /** The first of them, as many as a page that goes may send; null where there are none. */
  parting(device: string): PushRequest | null;
}

export function createUnsent(): Unsent {
  let unsent: ReadonlyMap<number, VisitEvent> = new Map();
  return {
    add(events) {
      unsent = new Map([...unsent, ...events.map((event) => [event.seq, event] as const)]);
    },
    confirmed(seq) {
      unsent = new Map([...unsent].filter(([place]) => place > seq));
    },
    parting(device) {
      const events = thatFit([...unsent.values()].toSorted((a, b) => a.seq - b.seq));
      return events.length === 0 ? null : { device, events: [...events] };
    },
  };
}

function thatFit(events: readonly VisitEvent[]): readonly VisitEvent[] {
  const encoder = new TextEncoder();
  let bytes = 0;
  const over = events.findIndex((event) => {
    bytes += encoder.encode(JSON.stringify(event)).length + 1;
    return bytes > MOST_BYTES;
  });
  return over < 0 ? events : events.slice(0, over);
}
