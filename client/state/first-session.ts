import { applyEvents } from '../../core/visit/apply.ts';
import { DEFAULT_SETTINGS, type VisitSettings } from '../../core/visit/events.ts';
import type { VisitState } from '../../core/visit/state.ts';
import type { After } from '../offline/back-off.ts';
import type { EventLog } from '../offline/event-log.ts';
import { inTime } from '../offline/in-time.ts';
import type { StorageFault } from '../offline/storage-fault.ts';
import type { Happening } from './happenings.ts';
import type { Notice } from './notice.ts';
import { freshVisit, sleepingSession, type Session } from './session.ts';

export interface VisitRead {
  readonly visit: VisitState;
  readonly notice: Notice | null;
}

/** As a page without a log begins. */
export function unstoredSession(why: StorageFault): Session {
  const session = sleepingSession(freshVisit(DEFAULT_SETTINGS));
  return { ...session, unstored: why, notice: { kind: 'unstored', why } };
}

/** A log that opens and cannot be read is written on to: what it will not take either is held, and that is told. */
export async function firstSessionOrFresh(log: EventLog, after: After): Promise<Session> {
  try {
    return await inTime(firstSession(log), after);
  } catch (error) {
    console.error(error);
    return {
      ...sleepingSession(freshVisit(DEFAULT_SETTINGS)),
      notice: { kind: 'unread', what: 'all' },
    };
  }
}

/** Where the page goes on: the visit that was open when it last lived, or none with the last one's habits. */
export async function firstSession(log: EventLog): Promise<Session> {
  const open = await log.openVisit();
  if (open === null) return sleepingSession(freshVisit(await lastSettings(log)));
  const { visit, notice } = await readVisit(log, open);
  return { ...sleepingSession(visit), notice };
}

export async function readVisit(log: EventLog, id: string): Promise<VisitRead> {
  const { events, damaged } = await log.readVisit(id);
  const visit = applyEvents(events);
  if (damaged.length > 0) return { visit, notice: { kind: 'damaged', entries: damaged.length } };
  const goesOn = visit.finishedAt === null;
  return { visit, notice: goesOn ? { kind: 'resumed', readings: visit.readings.length } : null };
}

/** What came of pressing an earlier visit: whatever goes wrong is told, and the visit in front stays. */
export async function earlierVisit(log: EventLog, id: string, after: After): Promise<Happening> {
  try {
    return { kind: 'visitRead', ...(await inTime(readVisit(log, id), after)) };
  } catch (error) {
    console.error(error);
    return { kind: 'unread', what: 'visit' };
  }
}

async function lastSettings(log: EventLog): Promise<VisitSettings> {
  const [last] = await log.visits();
  if (!last) return DEFAULT_SETTINGS;
  const { events } = await log.readVisit(last.visit);
  return applyEvents(events).settings;
}
