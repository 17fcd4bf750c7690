import type { Stamp } from '../../core/turn/turn.ts';
import type { EventBody, VisitEvent, VisitSettings } from '../../core/visit/events.ts';
import type { VisitState } from '../../core/visit/state.ts';
import type { EventLog } from '../offline/event-log.ts';
import type { Clock } from './clock.ts';

/** Makes ids that sort by the moment they were made. */
export interface Ids {
  next(now: number): string;
}

/** Stamps of one sentence: they all belong to one visit, a new one where none is open. */
export type StampFor = (visit: VisitState) => Stamp;

/** The place in the log is only foreseen here: the keeper gives the one that is free when it appends. */
export function createStamps(ports: {
  readonly log: Pick<EventLog, 'device' | 'lastSeq'>;
  readonly clock: Clock;
  readonly ids: Ids;
}): StampFor {
  const { log, clock, ids } = ports;
  return (state) => {
    const visit = state.visit ?? ids.next(clock.now());
    let seq = log.lastSeq;
    return (body): VisitEvent => {
      const at = clock.now();
      seq += 1;
      return {
        id: ids.next(at),
        device: log.device,
        seq,
        visit,
        at,
        utcOffset: clock.utcOffset(at),
        ...withHabits(body, state.settings),
      };
    };
  };
}

/** A visit opened by its first sentence keeps the units and the altitude the device was last set to. */
function withHabits(body: EventBody, settings: VisitSettings): EventBody {
  return body.type === 'visitOpened' ? { ...body, settings } : body;
}
