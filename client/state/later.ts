import type { Effect, Happening } from './happenings.ts';
import type { Session } from './session.ts';

/** What is decided on the visit as it stands: a choice still on its way to the log must stand there first. */
const ON_THE_VISIT: ReadonlySet<Happening['kind']> = new Set<Happening['kind']>([
  'typed',
  'heard',
  'readingWanted',
  'settingsChosen',
  'newVisitChosen',
  'visitRead',
]);

const isSentence = ({ kind }: Happening): boolean => kind === 'typed' || kind === 'heard';

export interface Later {
  /** Takes the happening in to be sent again, when this is not its moment. */
  holds(happening: Happening): boolean;
  began(effect: Effect): void;
  /** Sends the first that waits, once its moment has come. */
  release(send: (happening: Happening) => void): void;
}

/**
 * Keeps happenings in their order around what takes a moment. A sentence typed within milliseconds of setting the
 * barometer was answered by the old air, and could open a second visit; a height typed while a sentence was being
 * kept was lost.
 */
export function createLater(session: () => Session): Later {
  const waiting: Happening[] = [];
  let committing = 0;
  const isBusy = (): boolean => committing > 0 || session().mode.kind === 'thinking';
  return {
    holds(happening) {
      if (happening.kind === 'committed') committing -= 1;
      // Words said while thinking are the reducer's own business: it queues the typed ones.
      const held =
        ON_THE_VISIT.has(happening.kind) && (isSentence(happening) ? committing > 0 : isBusy());
      if (held) waiting.push(happening);
      return held;
    },
    began(effect) {
      if (effect.kind === 'commit') committing += 1;
    },
    release(send) {
      const next = isBusy() ? undefined : waiting.shift();
      if (next) send(next);
    },
  };
}
