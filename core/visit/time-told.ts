import type { Fact } from '../language/utterance.ts';
import type { Acknowledgement } from './acknowledgement.ts';
import type { EventId } from './events.ts';
import type { VisitState } from './state.ts';

type Timed = Extract<Fact, { fact: 'timeOnSite' | 'labor' | 'travel' | 'hereSince' }>;

/** The technician's own word for how long it took. */
export interface TimeTold {
  /** In minutes: the last that was told, as it is told of the whole. */
  readonly onSite: number | null;
  /** In minutes: each that is billed, in the order told. */
  readonly labor: readonly number[];
  /** The same on the road. */
  readonly travel: readonly number[];
  /** By the clock on the wall, as it was said: "9:30". */
  readonly since: string | null;
}

export const timeTold = (state: VisitState): TimeTold => timeIn(timesTold(state));

const timeIn = (told: readonly Pick<TimeEntry, 'fact'>[]): TimeTold =>
  told.map(({ fact }) => fact).reduce(withFact, NO_TIME);

const NO_TIME: TimeTold = { onSite: null, labor: [], travel: [], since: null };

/** What adds to labor or travel is said back with the sum, so that what was only said again is heard to count twice. */
export function factKept(fact: Fact, told: readonly TimeEntry[]): Acknowledgement {
  const time = isTimed(fact) ? timeIn([...told, { fact }]) : NO_TIME;
  const added = fact.fact === 'labor' || fact.fact === 'travel' ? time[fact.fact] : [];
  return { kind: 'fact', fact, ...(added.length > 1 ? { inAll: sumOf(added) } : {}) };
}

/** "Labor comes to five hours" tells of all of it; "two hours labor" is one of what is billed. */
const OF_ALL =
  /\b(?:total|in all|all told|all ?together|comes to|(?:labor|travel|drive)(?: time)?(?: (?:is|was)|['’]s))\b/i;

function withFact(so: TimeTold, fact: Timed): TimeTold {
  switch (fact.fact) {
    case 'timeOnSite':
      return { ...so, onSite: fact.value };
    case 'labor':
    case 'travel': {
      const before = OF_ALL.test(fact.words) ? [] : so[fact.fact];
      return { ...so, [fact.fact]: [...before, fact.value] };
    }
    case 'hereSince':
      return { ...so, since: fact.value };
  }
}

export const sumOf = (minutes: readonly number[]): number =>
  minutes.reduce((sum, each) => sum + each, 0);

interface TimeEntry {
  readonly id: EventId;
  readonly fact: Timed;
}

/** Without what was taken back. */
export function timesTold({ history }: VisitState): readonly TimeEntry[] {
  const gone = new Set(
    history.flatMap((event) => (event.type === 'entryTakenBack' ? [event.target] : [])),
  );
  return history.flatMap((event) =>
    event.type === 'factStated' && !gone.has(event.id) && isTimed(event.fact)
      ? [{ id: event.id, fact: event.fact }]
      : [],
  );
}

const isTimed = (fact: Fact): fact is Timed =>
  fact.fact === 'timeOnSite' ||
  fact.fact === 'labor' ||
  fact.fact === 'travel' ||
  fact.fact === 'hereSince';
