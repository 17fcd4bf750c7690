import { NO_NAMES } from '../../core/language/names/known-names.ts';
import type { EventLog } from '../offline/event-log.ts';
import type { Happening } from './happenings.ts';
import { knownNames } from './known-names.ts';
import { pastVisits } from './past-visits.ts';

/**
 * What earlier visits on this device tell, as it is read. Where it cannot be read, that is told: "no earlier visit" would be
 * an answer, and a wrong one. The parts that are carried are known all the same.
 */
export async function readEarlier(
  log: Pick<EventLog, 'visits' | 'readVisit'>,
  parts: readonly string[],
  send: (happening: Happening) => void,
): Promise<void> {
  send({ kind: 'namesKnown', names: { ...NO_NAMES, parts } });
  try {
    await Promise.all([
      knownNames(log, parts).then((names) => send({ kind: 'namesKnown', names })),
      pastVisits(log).then((past) => send({ kind: 'pastKnown', past })),
    ]);
  } catch (error) {
    console.error(error);
    send({ kind: 'unread', what: 'past' });
  }
}
