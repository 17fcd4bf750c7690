import type { VisitEvent } from '../../core/visit/events.ts';
import { canonicalJson } from '../../server/store/canonical-json.ts';
import type { AppendOutcome, EventStore, VisitSummary } from '../../server/store/event-store.ts';

/** An event store that forgets. */
export function createMemoryEventStore(): EventStore {
  let kept: readonly VisitEvent[] = [];
  return {
    append: ({ device, events }) => {
      const result = appended(kept, events);
      if ('outcome' in result) return Promise.resolve(result.outcome);
      kept = result.kept;
      return Promise.resolve({ kind: 'kept', confirmed: confirmed(kept, device) });
    },
    visits: () => Promise.resolve(summaries(kept)),
    readVisit: (visit) =>
      Promise.resolve({
        events: kept.filter((event) => event.visit === visit).sort(byDeviceAndPlace),
        damaged: [],
      }),
    close: () => Promise.resolve(),
  };
}

type Appended =
  | { readonly kept: readonly VisitEvent[] }
  | { readonly outcome: AppendOutcome & { kind: 'conflict' } };

function appended(before: readonly VisitEvent[], events: readonly VisitEvent[]): Appended {
  const kept = [...before];
  for (const [index, event] of events.entries()) {
    const sameId = kept.find((other) => other.id === event.id);
    const samePlace = kept.find(
      (other) => other.device === event.device && other.seq === event.seq,
    );
    const holder = sameId ?? samePlace;
    if (holder === undefined) kept.push(event);
    else if (canonicalJson(holder) !== canonicalJson(event)) {
      const over = sameId === undefined ? 'place' : 'id';
      return { outcome: { kind: 'conflict', over, index } };
    }
  }
  return { kept };
}

function confirmed(kept: readonly VisitEvent[], device: string): number {
  const places = new Set(kept.filter((event) => event.device === device).map((event) => event.seq));
  let last = 0;
  while (places.has(last + 1)) last += 1;
  return last;
}

function summaries(kept: readonly VisitEvent[]): readonly VisitSummary[] {
  const visits = [...new Set(kept.map((event) => event.visit))];
  return visits
    .map((visit) => {
      const events = kept.filter((event) => event.visit === visit);
      return {
        visit,
        openedAt: Math.min(...events.map((event) => event.at)),
        finished: events.some((event) => event.type === 'visitFinished'),
        events: events.length,
      };
    })
    .sort((a, b) => b.openedAt - a.openedAt);
}

const byDeviceAndPlace = (a: VisitEvent, b: VisitEvent): number =>
  a.device === b.device ? a.seq - b.seq : a.device < b.device ? -1 : 1;
