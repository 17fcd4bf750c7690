import { applyEvents } from '../../core/visit/apply.ts';
import type { VisitState } from '../../core/visit/state.ts';
import type { EventLog } from '../offline/event-log.ts';

/** As many as names are read of: a unit that was not seen in the last fifty visits is looked up, not talked of. */
const MOST_VISITS = 50;

/** What this device's visits came to, newest first; the one that is open is among them. */
export async function pastVisits(
  log: Pick<EventLog, 'visits' | 'readVisit'>,
): Promise<readonly VisitState[]> {
  const visits = (await log.visits()).slice(0, MOST_VISITS);
  const past: VisitState[] = [];
  // One after another: the page is answering meanwhile.
  for (const { visit } of visits) past.push(applyEvents((await log.readVisit(visit)).events));
  return past;
}

/** With the visit that ends now, in the place of what was read of it while it was open. */
export function withVisit(past: readonly VisitState[], ended: VisitState): readonly VisitState[] {
  return ended.visit === null
    ? past
    : [ended, ...past.filter(({ visit }) => visit !== ended.visit)];
}
