import { applyEvents } from '../../core/visit/apply.ts';
import { DEFAULT_SETTINGS, type VisitSettings } from '../../core/visit/events.ts';
import type { VisitState } from '../../core/visit/state.ts';
import type { EventLog } from '../offline/event-log.ts';
import type { Notice } from './notice.ts';
import { freshVisit, sleepingSession, type Session } from './session.ts';

export interface VisitRead {
  readonly visit: VisitState;
  readonly notice: Notice | null;
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

async function lastSettings(log: EventLog): Promise<VisitSettings> {
  const [last] = await log.visits();
  if (!last) return DEFAULT_SETTINGS;
  const { events } = await log.readVisit(last.visit);
  return applyEvents(events).settings;
}
