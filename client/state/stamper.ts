import type { Stamp } from '../../core/turn/turn.ts';
import type { EventBody, VisitEvent, VisitSettings } from '../../core/visit/events.ts';
import type { VisitState } from '../../core/visit/state.ts';
import type { Clock } from './clock.ts';

/** Makes ids that sort by the moment they were made. */
export interface Ids {
  next(now: number): string;
}

/** Places taken in the log by one sentence; given up unless they are claimed, so that no gap is left. */
export interface Draft {
  readonly stamp: Stamp;
  claim(): void;
}

export interface Stamper {
  draft(visit: VisitState): Draft;
}

export function createStamper(ports: {
  readonly device: string;
  readonly lastSeq: number;
  readonly clock: Clock;
  readonly ids: Ids;
}): Stamper {
  let taken = ports.lastSeq;
  return {
    draft(state) {
      let seq = taken;
      const visit = state.visit ?? ports.ids.next(ports.clock.now());
      return {
        stamp(body) {
          const at = ports.clock.now();
          seq += 1;
          const envelope = { id: ports.ids.next(at), device: ports.device, seq, visit, at };
          return { ...envelope, ...withHabits(body, state.settings) } satisfies VisitEvent;
        },
        claim() {
          taken = seq;
        },
      };
    },
  };
}

/** A visit opened by its first sentence keeps the units and the altitude the device was last set to. */
function withHabits(body: EventBody, settings: VisitSettings): EventBody {
  return body.type === 'visitOpened' ? { ...body, settings } : body;
}
